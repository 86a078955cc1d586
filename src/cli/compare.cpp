// SPDX-License-Identifier: MIT
// vowelway compare: turning points and meetings of several singers or voice types; or the plans of two
// singers for one song.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/write_file.hpp"
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/compare_plans_report.hpp"
#include "vowelway/report/compare_report.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <iostream>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::vector<std::string> singers, outputs;
    PlanOptions song; ///< its score is the song, empty without one; its singer is set for each
    std::string vowels, as = "table";
    ChartLook look;
    bool voices = false;
};

constexpr std::size_t most_singers = 32;

std::string form(plan::Comparison const& comparison, std::string_view as) {
    if (as == "json" || as == ".json") return report::comparison_json(comparison);
    if (as == "csv" || as == ".csv") return report::comparison_csv(comparison);
    return report::comparison_text(comparison);
}

std::string form(plan::PlansCompared const& compared, std::string_view as) {
    if (as == "json" || as == ".json") return report::plans_compared_json(compared);
    if (as == "csv" || as == ".csv") return report::plans_compared_csv(compared);
    return report::plans_compared_text(compared);
}

constexpr std::string_view forms = ".txt .csv .json .pdf .svg .png";

void check_outputs(Settings const& settings) {
    for (auto const& output : settings.outputs) {
        auto const extension = std::filesystem::path(output).extension().string();
        if (output != "-" && !is_chart(extension) && extension != ".txt" && extension != ".csv" &&
            extension != ".json")
            throw CLI::ValidationError("--output",
                                       fmt::format("{} has no known ending; use one of {}", output, forms));
    }
}

template <class Compared>
void write(Compared const& compared, Settings const& settings, chart::ChartOptions const& charts) {
    if (settings.outputs.empty()) std::cout << form(compared, settings.as);
    for (auto const& output : settings.outputs) {
        auto const extension = std::filesystem::path(output).extension().string();
        if (output == "-") {
            std::cout << form(compared, settings.as);
        } else if (is_chart(extension)) {
            for (auto const& written : chart::write_chart(compared, charts, output))
                std::cerr << "wrote " << written.string() << "\n";
        } else {
            io::write_file(output, form(compared, extension));
            std::cerr << "wrote " << output << "\n";
        }
    }
    std::cout.flush();
    if (!std::cout)
        throw InputError("cannot write to standard output", "check the disk or the program behind the pipe");
}

plan::Comparison compare_voices(std::vector<std::string> const& names, Settings const& settings) {
    Remarks remarks;
    std::vector<plan::ComparedSinger> singers;
    for (auto const& name : names) {
        plan::ComparedSinger one{io::find_singer(name, remarks), std::nullopt};
        if (!one.singer.average && one.singer.voice != VoiceType::other)
            one.reference = io::built_in_voice(one.singer.voice);
        singers.push_back(std::move(one));
    }
    auto comparison = compare_singers(
        std::move(singers), settings.vowels.empty() ? std::vector<Vowel>{} : parse_vowels(settings.vowels));
    comparison.remarks.insert(comparison.remarks.begin(), remarks.begin(), remarks.end());
    return comparison;
}

plan::Plan plan_for(std::string const& singer, Settings const& settings) {
    auto options = settings.song;
    options.singer = singer;
    return make_plan(read_request(options).request);
}

void run(Settings const& settings) {
    check_outputs(settings);
    auto names = settings.singers;
    if (settings.voices)
        for (auto const voice : all_voice_types) names.emplace_back(to_string(voice));
    if (names.size() < 2) throw CLI::RequiredError("two singers, or --voices");
    if (names.size() > most_singers)
        throw CLI::ValidationError("SINGER", fmt::format("more than {} singers", most_singers));
    bool const song = !settings.song.score.empty();
    if (song && names.size() != 2)
        throw CLI::ValidationError("--song", "is compared for two singers at a time");
    if (song && !settings.vowels.empty())
        throw CLI::ValidationError("--vowels",
                                   "is for voices compared without a song, whose words say the vowels");
    auto const charts = chart_options(settings.look);
    if (song) {
        auto const compared = compare_plans(plan_for(names[0], settings), plan_for(names[1], settings));
        print_remarks(compared.remarks);
        write(compared, settings, charts);
    } else {
        auto const comparison = compare_voices(names, settings);
        print_remarks(comparison.remarks);
        write(comparison, settings, charts);
    }
}

} // namespace

void add_compare(CLI::App& app) {
    auto* command = app.add_subcommand(
        "compare", "Where the vowels of several singers or voice types turn, and where they differ");
    auto settings = std::make_shared<Settings>();
    command->add_option("SINGER", settings->singers, "profiles or voice types, two or more");
    command->add_flag("--voices", settings->voices, "all average voices (besides those named)");
    command->add_option("--vowels", settings->vowels, "only these, \"i e a o u\" (IPA or X-SAMPA)");
    command
        ->add_option("--song", settings->song.score,
                     "MusicXML or a passage in YAML: where the plans of two singers for it differ")
        ->type_name("SCORE");
    add_song_options(*command, settings->song);
    command
        ->add_option(
            "-o,--output", settings->outputs,
            fmt::format("file to write, by its ending: {}; - for standard output; may be repeated", forms))
        ->type_name("FILE")
        ->allow_extra_args(false);
    add_chart_look(*command, settings->look);
    command->add_option("--as", settings->as, "form on standard output")
        ->check(CLI::IsMember({"table", "csv", "json"}))
        ->capture_default_str();
    command->footer(
        "Example: vowelway compare me.yaml tenor baritone\n         vowelway compare --voices --vowels \"i a "
        "u\" -o voices.csv\n         vowelway compare me.yaml pupil.yaml --song song.mxl -o both.pdf");
    command->callback([settings] { run(*settings); });
}

} // namespace vowelway::cli
