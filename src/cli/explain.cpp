// SPDX-License-Identifier: MIT
// vowelway explain: one note, and everything that decided about it.
#include "vowelway/plan/explain.hpp"
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/report/explain_report.hpp"
#include "vowelway/report/find_note.hpp"

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

void run(Options const& o) {
    o.outputs.check(inputs_of(o.plan, o.look));
    auto const charts = chart_options(o.look);
    auto request = read_request(o.plan).request;
    auto const note = report::find_note(request.passage, {o.plan.score, o.measure, o.beat});
    ThreadPool pool;
    auto const explanation = explain_note(std::move(request), note, {.executor = &pool});
    print_remarks(explanation.remarks);
    o.outputs.write({{Form::table, [&] { return report::explanation_text(explanation); }},
                     {Form::json, [&] { return report::explanation_json(explanation); }},
                     chart_writer(explanation, charts)});
}

} // namespace

void add_explain(Command& program) {
    auto command = program.add("explain", "One note, and everything that decided it");
    auto o = std::make_shared<Options>();
    add_score(command, o->plan).required();
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
