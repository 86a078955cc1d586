// SPDX-License-Identifier: MIT
// vowelway check: new probes against the profile or the targets of a plan.
#include "cli/commands.hpp"
#include "cli/measuring.hpp"
#include "cli/outputs.hpp"
#include "cli/remarks.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/analysis/check_profile.hpp"
#include "vowelway/analysis/lesson.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/plan/read_targets.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/report/check_report.hpp"
#include "vowelway/report/measurement_report.hpp"

#include <filesystem>
#include <memory>

namespace vowelway::cli {
namespace {

struct Settings {
    MeasuringOptions measuring;
    Outputs outputs;
    std::string plan, date;
};

void run(Settings const& s) {
    auto inputs = inputs_of(s.measuring);
    inputs.push_back(s.plan);
    s.outputs.check(inputs);
    auto const charts = chart_options(s.measuring.look);
    Remarks remarks;
    Profile profile;
    if (std::filesystem::exists(s.measuring.singer))
        profile = io::read_whole_profile(s.measuring.singer);
    else
        profile.singer = io::find_singer(s.measuring.singer, remarks);
    std::vector<PlanTarget> targets;
    if (!s.plan.empty()) {
        targets = io::read_plan_targets(s.plan);
        if (targets.empty())
            remarks.push_back(
                {Remark::Kind::caution,
                 worded("{0} has no notes with targets: make the plan from a score or a passage", s.plan)});
    }
    auto const reference = reference_for(profile.singer);
    auto const request = request_for(s.measuring, reference, profile);
    auto const recordings = read_recordings(s.measuring, remarks);
    auto m = measure(recordings, request);
    auto const checked = check_all(m, profile, targets, s.date, remarks);
    m.lesson = analysis::lesson_points(m, checked);
    m.remarks.insert(m.remarks.begin(), remarks.begin(), remarks.end());
    if (profile.singer.average)
        m.remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    print_remarks(m.remarks);
    auto const files = names_of(recordings);
    auto map = probe_map(m, recordings, reference, s.date);
    map.checks = checked;
    s.outputs.write({{Form::table, [&] { return report::check_text(m, checked, files); }},
                     {Form::json, [&] { return report::check_json(m, checked, files, profile.singer.name); }},
                     chart_writer(map, charts)});
    if (!s.outputs.prints()) say(report::refusals_text(m, files));
    if (m.vowels.empty())
        throw InputError(
            worded("no take gives a result"),
            worded("see the reason of each above, and record again: softly and briefly, never when hoarse"));
}

} // namespace

void add_check(Command& program) {
    auto command =
        program.add("check", "A new recording against a singer's profile or the targets of a plan");
    auto s = std::make_shared<Settings>();
    add_measuring_options(command, s->measuring);
    command.value("--singer", s->measuring.singer, "the profile (or a voice type) to compare with")
        .required();
    command.value("--plan", s->plan, "a plan as JSON, to compare with its targets too");
    command.value("--date", s->date, "date of the recording, for the trend over the profile's history").day();
    s->outputs.add_to(command, {Form::table, Form::json, Form::chart});
    add_chart_look(command, s->measuring.look);
    command.footer("Example: vowelway check take.wav --vowels \"i e a o u\" --singer me.yaml --plan "
                   "plan.json -o check.pdf");
    command.runs([s] { run(*s); });
}

} // namespace vowelway::cli
