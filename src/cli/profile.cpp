// SPDX-License-Identifier: MIT
// vowelway profile show|history|new: what is known of a singer, and how it came to be known.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/profile_new.hpp"
#include "cli/remarks.hpp"
#include "vowelway/analysis/history.hpp"
#include "vowelway/chart/draw_singer.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/report/compare_report.hpp"
#include "vowelway/report/history_report.hpp"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::string singer, vowels;
    Outputs outputs;
    ChartLook look; ///< of the sheet
};

std::vector<Singer> average_voices() {
    std::vector<Singer> out;
    for (auto const voice : all_voice_types) out.push_back(io::built_in_voice(voice));
    return out;
}

void show(Settings const& settings) {
    settings.outputs.check({settings.singer, settings.look.theme});
    auto const charts = chart_options(settings.look);
    report::SingerPicture picture;
    picture.singer = io::find_singer(settings.singer, picture.remarks);
    if (!picture.singer.average && std::filesystem::exists(settings.singer))
        picture.sources = analysis::sources_of(io::read_whole_profile(settings.singer));
    auto const averages = average_voices();
    picture.tract = plan::tract_length_of(picture.singer, averages);
    picture.among = plan::place_among(picture.singer, averages);
    if (picture.singer.average)
        picture.remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    print_remarks(picture.remarks);
    chart::SingerSheet const sheet{picture.singer, picture.sources};
    settings.outputs.write({{Form::table, [&] { return singer_text(picture); }},
                            {Form::json, [&] { return singer_json(picture); }},
                            chart_writer(sheet, charts)});
}

void history(Settings const& settings) {
    settings.outputs.check({settings.singer});
    if (auto const type = parse_voice_type(settings.singer); type && *type != VoiceType::other)
        throw InputError(worded("the average {0} has no history", settings.singer),
                         worded("name the profile of a singer"));
    auto const profile = io::read_whole_profile(settings.singer);
    auto const vowels = settings.vowels.empty() ? std::vector<Vowel>{} : parse_vowels(settings.vowels);
    auto const list = analysis::history_of(profile, vowels);
    settings.outputs.write({{Form::table, [&] { return report::history_text(profile, list); }},
                            {Form::json, [&] { return report::history_json(profile, list); }}});
}

} // namespace

void add_profile(Command& program) {
    auto command = program.add("profile", "What is known about a singer");
    command.needs_command();
    command.footer("Example: vowelway profile show me.yaml");
    auto const add = [&](char const* name, std::string_view says, std::vector<Form> const& forms) {
        auto settings = std::make_shared<Settings>();
        auto sub = command.add(name, std::string(says));
        sub.value("SINGER", settings->singer, "a profile, or a voice type").required();
        settings->outputs.add_to(sub, forms);
        return std::pair(sub, settings);
    };
    auto [shown, show_settings] = add(
        "show",
        to_word("Resonances as frequencies and pitches, tract length, nearest voice types; a sheet to print"),
        {Form::table, Form::json, Form::chart});
    add_chart_look(shown, show_settings->look);
    shown.footer(
        "Example: vowelway profile show me.yaml -o me.pdf\n         vowelway profile show tenor --as json");
    shown.runs([settings = show_settings] { show(*settings); });
    add_profile_new(command);
    auto [past, past_settings] =
        add("history", to_word("Every measurement, and what changed from one to the next"),
            {Form::table, Form::json});
    past.value("--vowels", past_settings->vowels, "only these vowels, \"i e a o u\" (IPA or X-SAMPA)");
    past.footer("Example: vowelway profile history me.yaml --vowels \"a e\"");
    past.runs([settings = past_settings] { history(*settings); });
}

} // namespace vowelway::cli
