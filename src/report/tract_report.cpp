// SPDX-License-Identifier: MIT
#include "vowelway/report/tract_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::report {

namespace {

double tenths(Frequency f) { return std::round(in_hertz(f) * 10) / 10 + 0.0; }

} // namespace

std::string tracts_json(std::vector<acoustics::SolvedTract> const& tracts, std::string_view loss) {
    Json out{{"vowelway", 1}, {"loss", loss}, {"tracts", Json::array()}};
    for (auto const& result : tracts) {
        Json tract;
        tract["vowel"] = result.name.empty() ? Json() : Json(result.name);
        tract["length_cm"] = std::round(in_centimetres(result.length) * 1e4) / 1e4;
        tract["resonances"] = Json::array();
        for (auto const& r : result.resonances)
            tract["resonances"].push_back({{"hz", tenths(r.centre)}, {"bandwidth_hz", tenths(r.bandwidth)}});
        tract["compliant_bands_hz"] = Json::array();
        for (auto const& band : result.compliant)
            tract["compliant_bands_hz"].push_back({tenths(band.from), tenths(band.to)});
        out["tracts"].push_back(std::move(tract));
    }
    return text_of(out, 2);
}

std::string tracts_text(std::vector<acoustics::SolvedTract> const& tracts) {
    std::string out;
    for (auto const& result : tracts) {
        if (!out.empty()) out += "\n";
        out += (result.name.empty() ? "" : result.name + ", ") +
               fmt::format("{:.1f} cm\n", in_centimetres(result.length));
        Table table({{worded("resonance"), Table::Align::left},
                     {"Hz", Table::Align::right},
                     {worded("bandwidth Hz"), Table::Align::right}});
        for (std::size_t k = 0; k < result.resonances.size(); ++k) {
            auto const& r = result.resonances[k];
            table.row({fmt::format("fR{}", k + 1), fmt::format("{:.0f}", in_hertz(r.centre)),
                       fmt::format("{:.0f}", in_hertz(r.bandwidth))});
        }
        if (table.empty())
            out += worded("no resonance below the limit") + "\n";
        else
            out += table.str();
        std::string bands;
        for (auto const& band : result.compliant)
            bands += fmt::format("{}{:.0f}..{:.0f}", bands.empty() ? "" : ", ", in_hertz(band.from),
                                 in_hertz(band.to));
        out += worded("compliant load, Hz: {0}", bands.empty() ? worded("nowhere") : bands) + "\n";
    }
    return out;
}

} // namespace vowelway::report
