// SPDX-License-Identifier: MIT
// vowelway tract: the resonances of measured or modelled vocal tracts.
#include "vowelway/acoustics/tract.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/remarks.hpp"
#include "vowelway/io/areas/read_areas.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    Outputs outputs;
    std::string areas, loss = "closed-glottis";
    double up_to = 5000;
};

struct Result {
    std::string vowel;
    Length length;
    std::vector<acoustics::TractResonance> resonances;
    std::vector<acoustics::Band> compliant;
};

Result solve(io::MeasuredTract const& measured, acoustics::TractLoss loss, Frequency up_to) {
    acoustics::AreaFunction tract;
    for (auto const& section : measured.sections) tract.push_back({section.length, section.area});
    return {measured.vowel, length_of(tract), resonances(tract, loss, up_to),
            compliant_bands(tract, loss, up_to)};
}

double tenths(Frequency f) { return std::round(in_hertz(f) * 10) / 10 + 0.0; }

std::string json_of(std::vector<Result> const& results, Settings const& settings) {
    nlohmann::ordered_json out{
        {"vowelway", 1}, {"loss", settings.loss}, {"tracts", nlohmann::ordered_json::array()}};
    for (auto const& result : results) {
        nlohmann::ordered_json tract;
        tract["vowel"] =
            result.vowel.empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(result.vowel);
        tract["length_cm"] = std::round(in_centimetres(result.length) * 1e4) / 1e4;
        tract["resonances"] = nlohmann::ordered_json::array();
        for (auto const& r : result.resonances)
            tract["resonances"].push_back({{"hz", tenths(r.centre)}, {"bandwidth_hz", tenths(r.bandwidth)}});
        tract["compliant_bands_hz"] = nlohmann::ordered_json::array();
        for (auto const& band : result.compliant)
            tract["compliant_bands_hz"].push_back({tenths(band.from), tenths(band.to)});
        out["tracts"].push_back(std::move(tract));
    }
    return out.dump(2) + "\n";
}

std::string text_of(std::vector<Result> const& results) {
    std::string out;
    for (auto const& result : results) {
        if (!out.empty()) out += "\n";
        out += (result.vowel.empty() ? "" : result.vowel + ", ") +
               fmt::format("{:.1f} cm\n", in_centimetres(result.length));
        report::Table table({{"resonance", report::Table::Align::left},
                             {"Hz", report::Table::Align::right},
                             {"bandwidth Hz", report::Table::Align::right}});
        for (std::size_t k = 0; k < result.resonances.size(); ++k) {
            auto const& r = result.resonances[k];
            table.row({fmt::format("fR{}", k + 1), fmt::format("{:.0f}", in_hertz(r.centre)),
                       fmt::format("{:.0f}", in_hertz(r.bandwidth))});
        }
        if (table.empty())
            out += "no resonance below the limit\n";
        else
            out += table.str();
        std::string bands;
        for (auto const& band : result.compliant)
            bands += fmt::format("{}{:.0f}..{:.0f}", bands.empty() ? "" : ", ", in_hertz(band.from),
                                 in_hertz(band.to));
        out += "compliant load, Hz: " + (bands.empty() ? "nowhere" : bands) + "\n";
    }
    return out;
}

void run(Settings const& settings) {
    settings.outputs.check({settings.areas});
    auto const loss = *acoustics::parse_tract_loss(settings.loss);
    auto const read = io::read_areas(settings.areas);
    print_remarks(read.remarks);
    std::vector<Result> results;
    for (auto const& measured : read.tracts) results.push_back(solve(measured, loss, hertz(settings.up_to)));
    settings.outputs.write({{Form::table, [&] { return text_of(results); }},
                            {Form::json, [&] { return json_of(results, settings); }}});
}

} // namespace

void add_tract(Command& program) {
    auto command =
        program.add("tract", "Resonances, bandwidths and load on the folds of measured vocal tracts");
    auto settings = std::make_shared<Settings>();
    command
        .value("AREAS", settings->areas,
               "a .csv with the columns section_length_cm, section_index_from_glottis, area_cm2 and, "
               "for several tracts, vowel")
        .required();
    settings->outputs.add_to(command, {Form::table, Form::json});
    command
        .value("--loss", settings->loss,
               "none (hard walls, ideally open mouth), radiation (hard walls), closed-glottis "
               "(yielding walls, friction; the default) or voiced (the same, bandwidths as while singing)")
        .one_of({"none", "radiation", "closed-glottis", "voiced"});
    command.value("--up-to", settings->up_to, "highest frequency, Hz (100 to 8000; 5000)")
        .between(100.0, 8000.0);
    command.footer("Example: vowelway tract areas.csv --as json");
    command.runs([settings] { run(*settings); });
}

} // namespace vowelway::cli
