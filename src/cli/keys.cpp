// SPDX-License-Identifier: MIT
// vowelway keys: one song in every key a singer might take it in.
#include "vowelway/plan/keys.hpp"
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/profiles_named.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw_keys.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/keys_report.hpp"

#include <charconv>
#include <memory>
#include <optional>

namespace vowelway::cli {

namespace {

struct Options {
    PlanOptions plan;
    std::vector<std::string> singers;
    std::string keys;
    ChartLook look;
    Outputs outputs;
};

plan::KeysPlan keys_for(std::string const& singer, Options const& o, plan::Means const& means) {
    auto options = o.plan;
    options.singer = singer;
    auto const keys = o.keys.empty() ? std::nullopt : std::optional(parse_keys("--keys", o.keys));
    return plan_keys(read_request(options).request, keys, means);
}

void run(Options const& o) {
    auto inputs = inputs_of(o.plan, o.look);
    inputs.insert(inputs.end(), o.singers.begin(), o.singers.end());
    o.outputs.check(inputs);
    auto const names = profiles_named(o.singers);
    if (names.empty())
        missing(worded("a singer: --singer with a profile, a voice type or a folder of profiles"));
    auto const charts = chart_options(o.look);
    ThreadPool pool;
    std::vector<plan::KeysPlan> singers;
    Remarks remarks;
    for (auto const& name : names) {
        singers.push_back(keys_for(name, o, {.executor = &pool}));
        for (auto const& remark : singers.back().remarks)
            if (std::find(remarks.begin(), remarks.end(), remark) == remarks.end()) remarks.push_back(remark);
    }
    print_remarks(remarks);
    o.outputs.write({{Form::table, [&] { return report::keys_text(singers); }},
                     {Form::csv, [&] { return report::keys_csv(singers); }},
                     {Form::json, [&] { return report::keys_json(singers); }},
                     chart_writer(singers, charts)});
}

} // namespace

void add_keys(Command& program) {
    auto command = program.add("keys", "Which key of a song suits a singer, or several, and why");
    auto o = std::make_shared<Options>();
    o->plan.draws = 20;
    add_score(command, o->plan).required();
    command
        .values("--singer,--singers", o->singers,
                "profiles (YAML), voice types, or folders of profiles: one key is proposed for each")
        .required();
    command
        .value("--keys", o->keys,
               "semitones from where the song stands, -6..6 (default: all that keep the song in the singer's "
               "range)")
        .called("LOW..HIGH");
    add_song_options(command, o->plan);
    o->outputs.add_to(command, {Form::table, Form::csv, Form::json, Form::chart});
    add_chart_look(command, o->look);
    command.footer("Example:\n  vowelway keys song.mxl --singer me.yaml\n  "
                   "vowelway keys song.mxl --singers pupils/ --keys -6..6 -o keys.pdf");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
