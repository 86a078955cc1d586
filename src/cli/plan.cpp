// SPDX-License-Identifier: MIT
// vowelway plan: the main job.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "cli/score_marks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/write_file.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/plan_report.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <memory>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

struct Options {
    PlanOptions plan;
    ChartLook look;
    std::string as = "table", marks = "all", kind, map_pitch;
    std::vector<std::string> outputs;
};

constexpr std::string_view forms = ".txt .csv .json .pdf .svg .png .mxl .musicxml .xml";

bool is_score(std::string_view extension) {
    return extension == ".mxl" || extension == ".musicxml" || extension == ".xml";
}

// A bad word of the command line is found before any work is done.
void check_outputs(Options const& o) {
    for (auto const& output : o.outputs) {
        if (output == "-") continue;
        auto const extension = fs::path(output).extension().string();
        if (is_score(extension) && o.plan.score.empty())
            throw CLI::ValidationError("--output",
                                       output + " is a score, and there is no SCORE to mark; name one");
        if (extension.empty() ||
            (" " + std::string(forms) + " ").find(" " + extension + " ") == std::string::npos)
            throw CLI::ValidationError("--output",
                                       fmt::format("{} has no known ending; use one of {}", output, forms));
    }
}

std::string text_form(plan::Plan const& plan, std::string_view form) {
    if (form == "json" || form == ".json") return report::plan_json(plan);
    if (form == "csv" || form == ".csv") return report::plan_csv(plan);
    return report::plan_text(plan);
}

chart::ChartOptions charts_of(Options const& o) {
    auto options = chart_options(o.look);
    if (o.kind == "sheet") options.kind = chart::Kind::passage_sheet;
    if (o.kind == "vowels") options.kind = chart::Kind::pitch_by_vowel;
    if (o.kind == "map" || !o.map_pitch.empty()) options.kind = chart::Kind::resonance_map;
    if (!o.map_pitch.empty()) options.map_pitch = parse_spelled_pitch(o.map_pitch);
    return options;
}

void write(plan::Plan const& plan, Options const& o, chart::ChartOptions const& charts,
           io::ScoreOptions const& score) {
    if (o.outputs.empty()) std::cout << text_form(plan, o.as);
    for (auto const& output : o.outputs) {
        if (output == "-") {
            std::cout << text_form(plan, o.as);
            continue;
        }
        auto const extension = fs::path(output).extension().string();
        if (is_chart(extension)) {
            for (auto const& written : chart::write_chart(plan, charts, output))
                std::cerr << "wrote " << written.string() << "\n";
        } else if (is_score(extension)) {
            write_marked_score(o.plan.score, score, marks_of(plan, parse_mark_detail(o.marks).value()),
                               output);
            std::cerr << "wrote " << output << "\n";
        } else {
            io::write_file(output, text_form(plan, extension));
            std::cerr << "wrote " << output << "\n";
        }
    }
    std::cout.flush();
    if (!std::cout)
        throw InputError("cannot write to standard output", "check the disk or the program behind the pipe");
}

void run(Options const& o) {
    check_outputs(o);
    if (o.plan.score.empty() && o.plan.range.empty()) throw CLI::RequiredError("a SCORE or --range");
    auto const charts = charts_of(o);
    auto read = read_request(o.plan);
    auto const plan = make_plan(std::move(read.request));
    print_remarks(plan.remarks);
    write(plan, o, charts, read.score);
}

} // namespace

void add_plan(CLI::App& app) {
    auto* command =
        app.add_subcommand("plan", "What each note will do to each vowel, and what to do about it");
    auto o = std::make_shared<Options>();
    command->add_option("SCORE", o->plan.score, "MusicXML (.musicxml .xml .mxl) or a passage in YAML")
        ->type_name("FILE");
    add_plan_options(*command, o->plan);
    command
        ->add_option(
            "-o,--output", o->outputs,
            fmt::format("file to write, by its ending: {}; - for standard output; may be repeated", forms))
        ->type_name("FILE")
        ->allow_extra_args(false);
    command->add_option("--as", o->as, "form on standard output")
        ->check(CLI::IsMember({"table", "csv", "json"}))
        ->capture_default_str();
    command->add_option("--marks", o->marks, "how much is written into a marked score")
        ->check(CLI::IsMember({"vowels", "changes", "all"}))
        ->capture_default_str();
    command
        ->add_option("--chart", o->kind,
                     "only this chart: the passage sheet, the vowels by pitch, or a map of the resonances "
                     "(default: sheet and vowels)")
        ->check(CLI::IsMember({"sheet", "vowels", "map"}));
    command->add_option("--map-pitch", o->map_pitch, "pitch of the resonance map (default: the highest)")
        ->type_name("PITCH");
    add_chart_look(*command, o->look);
    command->footer("Example:\n  vowelway plan song.mxl --singer me.yaml -o plan.pdf -o marked.mxl\n  "
                    "vowelway plan --range C3..A4 --singer tenor");
    command->callback([o] { run(*o); });
}

} // namespace vowelway::cli
