// SPDX-License-Identifier: MIT
// vowelway explain: one note, and everything that decided about it.
#include "vowelway/plan/explain.hpp"
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/report/explain_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace vowelway::cli {

namespace {

struct Options {
    PlanOptions plan;
    ChartLook look;
    Outputs outputs;
    std::string measure;
    double beat = 0; ///< 0: the first note of the bar
};

std::string beat_text(double beat) { return fmt::format("{:g}", std::round(beat * 1000) / 1000); }

std::string where(SungNote const& note) {
    auto const text = note.text();
    return fmt::format("bar {}, beat {} ({}{})", note.measure, beat_text(note.beat),
                       text.empty() ? "" : text + " on ", note.spelled.str());
}

bool may_be_explained(SungNote const& note) { return note.vowel.has_value(); }

// Place of a bar in the score, or, where it is not known, its number.
double order_of(Passage const& passage, std::string const& measure) {
    auto const& bars = passage.staff.measures;
    auto const at = std::ranges::find(bars, measure, &StaffMeasure::number);
    if (at != bars.end()) return static_cast<double>(at - bars.begin());
    char* end = nullptr;
    double const number = std::strtod(measure.c_str(), &end);
    return bars.empty() && end != measure.c_str() ? number : std::nan("");
}

[[noreturn]] void refuse(Passage const& passage, Options const& o) {
    SungNote const *before = nullptr, *after = nullptr;
    double const bar = order_of(passage, o.measure);
    for (auto const& note : passage.notes) {
        if (!may_be_explained(note)) continue;
        double const at = order_of(passage, note.measure);
        bool const earlier = at < bar || (at == bar && note.beat < o.beat);
        if (earlier)
            before = &note;
        else if (!after)
            after = &note;
    }
    auto const asked = fmt::format("bar {}{}", o.measure, o.beat > 0 ? ", beat " + beat_text(o.beat) : "");
    std::string remedy = "the passage has no note with a vowel";
    if (std::isnan(bar)) {
        auto const first = std::ranges::find_if(passage.notes, may_be_explained);
        auto const last =
            std::ranges::find_if(passage.notes.rbegin(), passage.notes.rend(), may_be_explained);
        if (first != passage.notes.end())
            remedy = fmt::format("there is no such bar; the sung notes go from {} to {}", where(*first),
                                 where(*last));
    } else if (before && after) {
        remedy = fmt::format("the nearest are {} and {}", where(*before), where(*after));
    } else if (before || after) {
        remedy = fmt::format("the nearest is {}", where(before ? *before : *after));
    }
    throw InputError("no note with a vowel begins at " + asked, remedy,
                     {.file = o.plan.score, .musical = {}});
}

std::size_t find_note(Passage const& passage, Options const& o) {
    auto const at = std::ranges::find_if(passage.notes, [&](SungNote const& note) {
        return may_be_explained(note) && note.measure == o.measure &&
               (o.beat <= 0 || std::abs(note.beat - o.beat) < 0.01);
    });
    if (at == passage.notes.end()) refuse(passage, o);
    return static_cast<std::size_t>(at - passage.notes.begin());
}

void run(Options const& o) {
    auto inputs = inputs_of(o.plan);
    inputs.push_back(o.look.theme);
    o.outputs.check(inputs);
    auto const charts = chart_options(o.look);
    auto request = read_request(o.plan).request;
    auto const note = find_note(request.passage, o);
    ThreadPool pool;
    auto const explanation = explain_note(std::move(request), note, {.executor = &pool});
    print_remarks(explanation.remarks);
    o.outputs.write({{Form::table, [&] { return report::explanation_text(explanation); }},
                     {Form::json, [&] { return report::explanation_json(explanation); }},
                     {Form::chart, [&](auto const& ending) {
                          return draw(explanation, charts, chart::parse_form(ending).value());
                      }}});
}

} // namespace

void add_explain(Command& program) {
    auto command = program.add("explain", "One note, and everything that decided it");
    auto o = std::make_shared<Options>();
    command.value("SCORE", o->plan.score, "MusicXML (.musicxml .xml .mxl) or a passage in YAML")
        .required()
        .called("FILE");
    command.value("--measure", o->measure, "the bar, by its printed number").required().called("BAR");
    command
        .value("--beat", o->beat,
               "the beat the note begins on, counted from 1 (default: the first note of the bar)")
        .between(1.0, 1000.0);
    add_plan_options(command, o->plan);
    o->outputs.add_to(command, {Form::table, Form::json, Form::chart});
    add_chart_look(command, o->look);
    command.footer("Example:\n  vowelway explain song.mxl --measure 12 --beat 3 --singer me.yaml\n  "
                   "vowelway explain song.mxl --measure 12 --singer me.yaml -o note.pdf");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
