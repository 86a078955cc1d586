// SPDX-License-Identifier: MIT
// vowelway profile show|history: what is known of a singer, and how it came to be known.
#include "cli/commands.hpp"
#include "cli/profile_history.hpp"
#include "cli/remarks.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/report/compare_report.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::string singer, vowels, as = "table";
};

std::vector<Singer> average_voices() {
    std::vector<Singer> out;
    for (auto const voice : all_voice_types) out.push_back(io::built_in_voice(voice));
    return out;
}

void show(Settings const& settings) {
    report::SingerPicture picture;
    picture.singer = io::find_singer(settings.singer, picture.remarks);
    auto const averages = average_voices();
    picture.tract = plan::tract_length_of(picture.singer, averages);
    picture.among = plan::place_among(picture.singer, averages);
    if (picture.singer.average)
        picture.remarks.push_back({Remark::Kind::caution, std::string(average_voice_notice)});
    print_remarks(picture.remarks);
    fmt::print("{}", settings.as == "json" ? singer_json(picture) : singer_text(picture));
}

void history(Settings const& settings) {
    if (auto const type = parse_voice_type(settings.singer); type && *type != VoiceType::other)
        throw InputError("the average " + settings.singer + " has no history",
                         "name the profile of a singer");
    auto const profile = io::read_whole_profile(settings.singer);
    auto const vowels = settings.vowels.empty() ? std::vector<Vowel>{} : parse_vowels(settings.vowels);
    auto const list = history_of(profile, vowels);
    fmt::print("{}", settings.as == "json" ? history_json(profile, list) : history_text(profile, list));
}

} // namespace

void add_profile(CLI::App& app) {
    auto* command = app.add_subcommand("profile", "What is known of a singer");
    command->require_subcommand(1);
    command->footer("Example: vowelway profile show me.yaml");
    auto settings = std::make_shared<Settings>();
    auto const common = [&](CLI::App& sub) {
        sub.add_option("SINGER", settings->singer, "a profile, or a voice type")->required();
        sub.add_option("--as", settings->as, "form of the output")
            ->check(CLI::IsMember({"table", "json"}))
            ->capture_default_str();
    };
    auto* shown = command->add_subcommand(
        "show", "Resonances as frequencies and pitches, tract length, likeness to voice types");
    common(*shown);
    shown->footer("Example: vowelway profile show me.yaml\n         vowelway profile show tenor --as json");
    shown->callback([settings] { show(*settings); });
    auto* past =
        command->add_subcommand("history", "Every measurement, and what changed from one to the next");
    common(*past);
    past->add_option("--vowels", settings->vowels, "only these, \"i e a o u\" (IPA or X-SAMPA)");
    past->footer("Example: vowelway profile history me.yaml --vowels \"a e\"");
    past->callback([settings] { history(*settings); });
}

} // namespace vowelway::cli
