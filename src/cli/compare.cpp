// SPDX-License-Identifier: MIT
// vowelway compare: turning points and meetings of several singers or voice types; or the plans of two
// singers for one song.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/compare_plans_report.hpp"
#include "vowelway/report/compare_report.hpp"

#include <fmt/format.h>

#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::vector<std::string> singers;
    Outputs outputs;
    PlanOptions song; ///< its score is the song, empty without one; its singer is set for each
    std::string vowels;
    ChartLook look;
    bool voices = false;
};

constexpr std::size_t most_singers = 32;

plan::Comparison compare_voices(std::vector<std::string> const& names, Settings const& settings) {
    Remarks remarks;
    std::vector<plan::ComparedSinger> singers;
    for (auto const& name : names) {
        plan::ComparedSinger one{io::find_singer(name, remarks), std::nullopt};
        one.reference = io::average_beside(one.singer);
        singers.push_back(std::move(one));
    }
    auto comparison = plan::compare_singers(
        std::move(singers), settings.vowels.empty() ? std::vector<Vowel>{} : parse_vowels(settings.vowels));
    comparison.remarks.insert(comparison.remarks.begin(), remarks.begin(), remarks.end());
    return comparison;
}

plan::Plan plan_for(std::string const& singer, Settings const& settings, plan::Means const& means) {
    auto options = settings.song;
    options.singer = singer;
    return make_plan(read_request(options).request, means);
}

void compare_song(std::vector<std::string> const& names, Settings const& settings) {
    auto const charts = chart_options(settings.look);
    ThreadPool pool;
    plan::Means const means{.executor = &pool};
    auto const compared =
        compare_plans(plan_for(names[0], settings, means), plan_for(names[1], settings, means));
    print_remarks(compared.remarks);
    settings.outputs.write({{Form::table, [&] { return report::plans_compared_text(compared); }},
                            {Form::csv, [&] { return report::plans_compared_csv(compared); }},
                            {Form::json, [&] { return report::plans_compared_json(compared); }},
                            chart_writer(compared, charts)});
}

void compare_singers(std::vector<std::string> const& names, Settings const& settings) {
    auto const charts = chart_options(settings.look);
    auto const comparison = compare_voices(names, settings);
    print_remarks(comparison.remarks);
    settings.outputs.write({{Form::table, [&] { return report::comparison_text(comparison); }},
                            {Form::csv, [&] { return report::comparison_csv(comparison); }},
                            {Form::json, [&] { return report::comparison_json(comparison); }},
                            chart_writer(comparison, charts)});
}

void run(Settings const& settings) {
    auto inputs = inputs_of(settings.song, settings.look);
    inputs.insert(inputs.end(), settings.singers.begin(), settings.singers.end());
    settings.outputs.check(inputs);
    auto names = settings.singers;
    if (settings.voices)
        for (auto const voice : all_voice_types) names.emplace_back(to_string(voice));
    if (names.size() < 2) missing(worded("two singers, or --voices"));
    if (names.size() > most_singers)
        bad_command_line("SINGER", worded("more than {0} singers", most_singers));
    bool const song = !settings.song.score.empty();
    if (song && names.size() != 2) bad_command_line("--song", worded("compares two singers at a time"));
    if (song && !settings.vowels.empty())
        bad_command_line("--vowels",
                         worded("cannot be used with --song: the vowels come from the words of the song"));
    if (song)
        compare_song(names, settings);
    else
        compare_singers(names, settings);
}

} // namespace

void add_compare(Command& program) {
    auto command = program.add(
        "compare", "Where the vowels of several singers or voice types turn, and how they differ");
    auto settings = std::make_shared<Settings>();
    command.values("SINGER", settings->singers, "profiles or voice types, two or more");
    command.flag("--voices", settings->voices, "all average voices (besides those named)");
    command.value("--vowels", settings->vowels, "only these vowels, \"i e a o u\" (IPA or X-SAMPA)");
    command
        .value("--song", settings->song.score,
               "MusicXML or a passage in YAML: where the plans of two singers for it differ")
        .called("SCORE");
    add_song_options(command, settings->song);
    settings->outputs.add_to(command, {Form::table, Form::csv, Form::json, Form::chart});
    add_chart_look(command, settings->look);
    command.footer(
        "Example: vowelway compare me.yaml tenor baritone\n         vowelway compare --voices --vowels \"i a "
        "u\" -o voices.csv\n         vowelway compare me.yaml pupil.yaml --song song.mxl -o both.pdf");
    command.runs([settings] { run(*settings); });
}

} // namespace vowelway::cli
