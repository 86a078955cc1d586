// SPDX-License-Identifier: MIT
// vowelway tract: the resonances of measured or modelled vocal tracts.
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/remarks.hpp"
#include "vowelway/acoustics/solved_tract.hpp"
#include "vowelway/io/areas/read_areas.hpp"
#include "vowelway/report/tract_report.hpp"

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

void run(Settings const& settings) {
    settings.outputs.check({settings.areas});
    auto const loss = *acoustics::parse_tract_loss(settings.loss);
    auto const read = io::read_areas(settings.areas);
    print_remarks(read.remarks);
    std::vector<acoustics::SolvedTract> tracts;
    for (auto const& measured : read.tracts) {
        acoustics::AreaFunction areas;
        for (auto const& section : measured.sections) areas.push_back({section.length, section.area});
        tracts.push_back(solve(measured.vowel, areas, loss, hertz(settings.up_to)));
    }
    settings.outputs.write({{Form::table, [&] { return report::tracts_text(tracts); }},
                            {Form::json, [&] { return report::tracts_json(tracts, settings.loss); }}});
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
