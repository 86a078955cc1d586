// SPDX-License-Identifier: MIT
#include "cli/survey_request.hpp"

#include "cli/profiles_named.hpp"
#include "cli/scores_named.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/write_profile.hpp"
#include "vowelway/io/technique/read_technique.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <charconv>
#include <filesystem>

namespace vowelway::cli {

namespace {

constexpr std::uintmax_t largest_input = 64u << 20; // as scores

/// K of N, from 1.
struct Task {
    std::size_t number = 1, of = 1;
    bool has(std::size_t singer) const { return singer % of == number - 1; }
};

Task parse_task(std::string const& text) {
    if (text.empty()) return {};
    Task out;
    auto const slash = text.find('/');
    auto const whole = [](std::string_view part, std::size_t& value) {
        auto const [end, error] = std::from_chars(part.data(), part.data() + part.size(), value);
        return error == std::errc() && end == part.data() + part.size();
    };
    if (slash == std::string::npos || !whole(std::string_view(text).substr(0, slash), out.number) ||
        !whole(std::string_view(text).substr(slash + 1), out.of) || out.number < 1 || out.number > out.of)
        bad_command_line("--task",
                         worded("{0} is no part of the work; write 3/8 for the third of eight", text));
    return out;
}

/// Of a file its bytes, and why it could not be read where it could not: that changes too.
std::string hash_of_file(std::string const& path) {
    try {
        return survey::hash_of(files::read(path, largest_input));
    } catch (InputError const& error) {
        return survey::hash_of(error.what());
    }
}

survey::Song song_of(std::string const& path, SurveyOptions const& o) {
    auto options = o.song;
    options.score = path;
    auto const words = options.words.empty() ? "" : hash_of_file(options.words);
    return {path, survey::hash_of(hash_of_file(path) + options.language + words),
            [options](Singer const& singer) { return read_song(options, singer); }};
}

survey::Voice voice_of(std::string const& name, AverageVowels averages, Remarks& remarks) {
    survey::Voice out{name, {}, io::find_singer(name, remarks, averages), {}};
    out.reference = io::average_beside(out.singer, averages);
    std::error_code none;
    out.hash = std::filesystem::exists(name, none) ? hash_of_file(name)
                                                   : survey::hash_of(io::profile_text({out.singer, {}, {}}));
    return out;
}

} // namespace

void add_survey_options(Command& command, SurveyOptions& o) {
    command.values("SCORES", o.scores, "scores, passages in YAML, or folders of them");
    command.values("--singer,--singers", o.singers, "profiles (YAML), voice types, or folders of profiles");
    command.value("--keys", o.keys, "semitones from where a song stands for the singer")
        .called("LOW..HIGH")
        .shows_default();
    auto const names = fmt::format("{}", fmt::join(io::technique_names(), ", "));
    command.repeated("--technique", o.techniques,
                     worded("{0}, or a YAML file; may be repeated (default: classical)", names));
    command.value("--language", o.song.language, "language of all songs (default: recognised, song by song)")
        .called("TAG");
    command.value("--words", o.song.words, "your own pronunciations, YAML").called("FILE");
    command
        .value("--draws", o.song.draws,
               "random draws within the deviations, for the certainty of each advice")
        .between(0, 1000)
        .shows_default();
    command.value("--task", o.task, "only the singers of one part of the work: 3/8 is the third of eight")
        .called("K/N");
}

std::vector<survey::Request> survey_requests(SurveyOptions const& o, Remarks& remarks) {
    auto const task = parse_task(o.task);
    auto const keys = parse_keys("--keys", o.keys);
    auto const singers = profiles_named(o.singers);
    std::vector<survey::Song> songs;
    for (auto const& score : scores_named(o.scores)) songs.push_back(song_of(score, o));
    auto techniques = o.techniques;
    if (techniques.empty()) techniques.emplace_back("classical");
    std::vector<survey::Request> out;
    for (auto const& name : techniques) {
        survey::Request request;
        request.songs = songs;
        request.way.technique = io::find_technique(name);
        std::error_code none;
        request.way.hash = std::filesystem::exists(name, none) ? hash_of_file(name) : survey::hash_of(name);
        for (std::size_t i = 0; i < singers.size(); ++i)
            if (task.has(i))
                request.voices.push_back(voice_of(singers[i], request.way.technique.averages, remarks));
        request.keys = keys;
        request.draws = o.song.draws;
        request.program = VOWELWAY_VERSION;
        out.push_back(std::move(request));
    }
    return out;
}

} // namespace vowelway::cli
