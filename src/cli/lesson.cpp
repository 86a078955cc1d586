// SPDX-License-Identifier: MIT
// vowelway lesson: one page on a song, to teach from.
#include "vowelway/plan/lesson.hpp"
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw_lesson.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/lesson_report.hpp"

#include <memory>

namespace vowelway::cli {

namespace {

struct Options {
    PlanOptions plan;
    ChartLook look;
    Outputs outputs;
};

void run(Options const& o) {
    o.outputs.check(inputs_of(o.plan, o.look));
    auto const charts = chart_options(o.look);
    auto request = read_request(o.plan).request;
    ThreadPool pool;
    auto const lesson = plan::lesson_of(make_plan(std::move(request), {.executor = &pool}));
    print_remarks(lesson.plan.remarks);
    o.outputs.write({{Form::table, [&] { return report::lesson_text(lesson); }},
                     {Form::json, [&] { return report::lesson_json(lesson); }},
                     chart_writer(lesson, charts)});
}

} // namespace

void add_lesson(Command& program) {
    auto command =
        program.add("lesson", "One page on a song: phrases by difficulty, and exercises for this voice");
    auto o = std::make_shared<Options>();
    add_score(command, o->plan).required();
    add_plan_options(command, o->plan);
    o->outputs.add_to(command, {Form::table, Form::json, Form::chart});
    add_chart_look(command, o->look);
    command.footer("Example:\n  vowelway lesson song.mxl --singer me.yaml\n  "
                   "vowelway lesson song.mxl --singer me.yaml -o lesson.pdf");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
