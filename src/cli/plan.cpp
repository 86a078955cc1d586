// SPDX-License-Identifier: MIT
// vowelway plan: the main job.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_all.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_choir.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/score/mark_score.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/choir_report.hpp"
#include "vowelway/report/linear_report.hpp"
#include "vowelway/report/plan_report.hpp"
#include "vowelway/report/score_marks.hpp"

#include <memory>

namespace vowelway::cli {

namespace {

struct Options {
    PlanOptions plan;
    ChartLook look;
    Outputs outputs;
    std::string marks = "changes", kind, map_pitch, voices;
    bool all = false, numbers = false, linear = false;
};

chart::ChartOptions charts_of(Options const& o) {
    auto options = chart_options(o.look);
    options.numbers = o.numbers;
    if (o.kind == "pencil") options.kind = chart::Kind::pencil;
    if (o.kind == "sheet") options.kind = chart::Kind::passage_sheet;
    if (o.kind == "vowels") options.kind = chart::Kind::pitch_by_vowel;
    if (o.kind == "map" || !o.map_pitch.empty()) options.kind = chart::Kind::resonance_map;
    if (!o.map_pitch.empty()) options.map_pitch = parse_spelled_pitch(o.map_pitch);
    return options;
}

void check_all(Options const& o) {
    std::vector<std::string> profiles;
    for (auto const& voice : parse_voices(o.voices)) profiles.push_back(voice.singer);
    o.outputs.check(profiles);
    if (!o.plan.part.empty()) bad_command_line("--part", worded("with --all every part is planned"));
    if (!o.plan.singer.empty()) bad_command_line("--singer", worded("with --all --voices says who sings"));
    if (!o.plan.range.empty()) bad_command_line("--range", worded("with --all every part has its own"));
    if (o.linear) bad_command_line("--linear", worded("it tells one part; leave out --all"));
    if (o.outputs.has(Form::csv))
        bad_command_line("--output", worded("a CSV holds one part; write JSON, or leave out --all"));
}

// A bad word of the command line is found before any work is done.
void check(Options const& o) {
    o.outputs.check(inputs_of(o.plan, o.look));
    if (auto const score = o.outputs.first(Form::score); !score.empty() && o.plan.score.empty())
        bad_command_line("--output",
                         worded("{0} is a score, and there is no SCORE to mark; name one", score));
    if (o.plan.score.empty() && (o.all || o.plan.range.empty())) missing(worded("a SCORE or --range"));
    if (!o.all && o.plan.singer.empty()) missing("--singer");
    if (!o.all && o.kind == "choir") bad_command_line("--chart", worded("the choir sheet goes with --all"));
    if (!o.all && !o.voices.empty()) bad_command_line("--voices", worded("it goes with --all"));
    if (o.all) check_all(o);
}

std::string text_of(plan::Plan const& plan, Options const& o) {
    if (o.linear) return report::plan_linear(plan);
    return report::plan_text(plan, o.numbers ? report::Numbers::shown : report::Numbers::left_out);
}

/// The score with the marks of every part, one after the other.
std::vector<chart::Document> marked(AllParts const& all, Options const& o, std::string const& ending) {
    auto const form = ending == ".mxl" ? io::ScoreForm::compressed : io::ScoreForm::plain;
    auto const detail = report::parse_mark_detail(o.marks).value();
    auto bytes = files::read(o.plan.score, io::largest_score_file);
    for (std::size_t i = 0; i < all.choir.parts.size(); ++i)
        bytes = io::marked_score(std::move(bytes), o.plan.score, all.read_with[i],
                                 report::marks_of(all.choir, i, detail), form);
    return {chart::Document{"", std::move(bytes)}};
}

void run_all(Options const& o) {
    auto const charts = charts_of(o);
    ThreadPool pool;
    auto const all = plan_all(o.plan, parse_voices(o.voices), pool);
    print_remarks(all.choir.remarks);
    auto const numbers = o.numbers ? report::Numbers::shown : report::Numbers::left_out;
    chart::ChoirSheet const sheet{all.choir};
    o.outputs.write({{Form::table, [&] { return report::choir_text(all.choir, numbers); }},
                     {Form::json, [&] { return report::choir_json(all.choir); }},
                     o.kind == "choir" ? chart_writer(sheet, charts) : chart_writer(all.choir, charts),
                     {Form::score, [&](std::string const& ending) { return marked(all, o, ending); }}});
}

void run(Options const& o) {
    check(o);
    if (o.all) return run_all(o);
    auto const charts = charts_of(o);
    auto read = read_request(o.plan);
    ThreadPool pool;
    auto const plan = make_plan(std::move(read.request), {.executor = &pool});
    print_remarks(plan.remarks);
    auto const marked = [&](std::string const& ending) {
        auto const form = ending == ".mxl" ? io::ScoreForm::compressed : io::ScoreForm::plain;
        auto const marks = report::marks_of(plan, report::parse_mark_detail(o.marks).value());
        auto bytes = io::marked_score(files::read(o.plan.score, io::largest_score_file), o.plan.score,
                                      read.score, marks, form);
        return std::vector{chart::Document{"", std::move(bytes)}};
    };
    o.outputs.write({{Form::table, [&] { return text_of(plan, o); }, {}, o.linear},
                     {Form::csv, [&] { return report::plan_csv(plan); }},
                     {Form::json, [&] { return report::plan_json(plan); }},
                     chart_writer(plan, charts),
                     {Form::score, marked}});
}

} // namespace

void add_plan(Command& program) {
    auto command = program.add("plan", "What each note will do to each vowel, and what to do about it");
    auto o = std::make_shared<Options>();
    add_score(command, o->plan);
    add_optional_singer(command, o->plan);
    command.flag("--all", o->all,
                 "every part that is sung, each by the voice it is for; three and more as a choir");
    command
        .value("--voices", o->voices,
               "with --all: who sings which part, \"S=soprano, Alto=me.yaml\" (default: by name, order and "
               "range)")
        .called("LIST");
    add_plan_options_without_singer(command, o->plan);
    o->outputs.add_to(command, {Form::table, Form::csv, Form::json, Form::chart, Form::score});
    command.value("--marks", o->marks, "how much is written into a marked score")
        .one_of({"vowels", "changes", "all"})
        .shows_default();
    command
        .value("--chart", o->kind,
               "only this chart: the line with what a teacher would pencil, the passage sheet that says why, "
               "the vowels by pitch, a map of the resonances, or with --all the choir sheet (default: all "
               "but the "
               "map)")
        .one_of({"pencil", "sheet", "vowels", "map", "choir"});
    command.value("--map-pitch", o->map_pitch, "pitch of the resonance map (default: the highest)")
        .called("PITCH");
    command.flag("--numbers", o->numbers,
                 "frequencies, deviations and reasons in the table and on the sheet");
    command.flag("--linear", o->linear,
                 "the table as lines to be read one after another, by ear or in braille");
    add_chart_look(command, o->look);
    command.footer("Example:\n  vowelway plan song.mxl --singer me.yaml -o plan.pdf -o marked.mxl\n  "
                   "vowelway plan --range C3..A4 --singer tenor");
    o->plan.technique.clear(); // so that it is known whether one was asked for
    command.runs([o] {
        if (!o->all && o->plan.technique.empty()) o->plan.technique = PlanOptions{}.technique;
        run(*o);
    });
}

} // namespace vowelway::cli
