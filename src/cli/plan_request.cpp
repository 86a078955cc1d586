// SPDX-License-Identifier: MIT
#include "cli/plan_request.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <charconv>

namespace vowelway::cli {

namespace {

Tuning tuning_of(PlanOptions const& o, Singer const& singer) {
    if (o.a4.empty()) return singer.tuning;
    auto const a4 = parse_frequency(o.a4, Tuning{});
    if (a4 < hertz(380) || a4 > hertz(500))
        throw InputError(worded("--a4 {0} is not a tuning of A4", o.a4),
                         worded("give 380 to 500 Hz; the standard is 440 Hz"));
    return Tuning{a4};
}

io::ScoreOptions score_options(PlanOptions const& o, Singer const& singer, Tuning const& tuning) {
    io::ScoreOptions options;
    options.part = o.part;
    options.verse = verse_of(o.verse);
    options.transpose_semitones = o.transpose;
    options.tuning = tuning;
    options.singer_range = singer.range;
    options.voice = singer.voice;
    return options;
}

Passage read_passage(PlanOptions const& o, io::ScoreOptions const& options) {
    if (o.score.empty()) {
        Passage none;
        none.tuning = options.tuning;
        return none;
    }
    return read_score(o.score, options);
}

ReadRequest read_all_but_vowels(PlanOptions const& o, bool one_of_several, bool lowest) {
    plan::PlanRequest request;
    request.technique = io::find_technique(o.technique);
    request.draws = o.draws;
    Remarks remarks;
    request.singer = io::find_singer(o.singer, remarks, request.technique.averages);
    auto score = score_options(o, request.singer, tuning_of(o, request.singer));
    score.lowest = lowest;
    score.together = one_of_several;
    request.passage = read_passage(o, score);
    if (!o.range.empty()) request.range = parse_pitch_range(o.range);
    if (!o.vowels.empty()) request.vowels = parse_vowels(o.vowels);
    request.reference = io::average_beside(request.singer, request.technique.averages);
    request.passage.remarks.insert(request.passage.remarks.begin(), remarks.begin(), remarks.end());
    return {std::move(request), std::move(score)};
}

} // namespace

int verse_of(std::string const& wish) {
    if (wish.empty()) return 0;
    if (wish == "all") return io::every_verse;
    int number = 0;
    auto const [end, error] = std::from_chars(wish.data(), wish.data() + wish.size(), number);
    if (error != std::errc{} || end != wish.data() + wish.size() || number < 1 || number > 99)
        bad_command_line("--verse", worded("{0} is neither all nor a number from 1 to 99", wish));
    return number;
}

void give_vowels(Passage& passage, PlanOptions const& o) {
    diction::DictionOptions diction;
    if (!o.language.empty()) {
        diction.language = diction::parse_language(o.language);
        if (!diction.language)
            throw InputError(worded("--language {0} is not known", o.language),
                             worded("give a tag such as it, la, de, fr, en, es"));
    }
    if (!o.words.empty()) diction.words = diction::read_word_list(o.words);
    set_vowels(passage, diction);
}

void add_song_options(Command& command, PlanOptions& o) {
    command.value("--part", o.part, "part by name or number (default: the one with the words)");
    command
        .value("--verse", o.verse,
               "verse (default: the first), or all: repeats, jumps and verses as they are sung")
        .called("N");
    command.value("--language", o.language, "language of the words (default: recognised from them)")
        .called("TAG");
    command.value("--words", o.words, "your own pronunciations, YAML").called("FILE");
    command
        .value("--transpose", o.transpose,
               "semitones up, or down when negative (default: 0, or the octave that suits the voice)")
        .between(-36.0, 36.0);
    command
        .value("--technique", o.technique,
               worded("{0}, or a YAML file", fmt::format("{}", fmt::join(io::technique_names(), ", "))))
        .shows_default();
    command.value("--draws", o.draws, "random draws within the deviations, for the certainty of each advice")
        .between(0, 10000)
        .shows_default();
    command.value("--a4", o.a4, "tuning of A4 (default: the profile's, else 440 Hz)").called("HZ");
}

Option add_score(Command& command, PlanOptions& o) {
    return command.value("SCORE", o.score, "MusicXML (.musicxml .xml .mxl) or a passage in YAML")
        .called("FILE");
}

namespace {

Option singer_option(Command& command, PlanOptions& o) {
    return command
        .value("--singer", o.singer,
               "profile (YAML) or a voice type: bass baritone tenor countertenor alto mezzo soprano treble")
        .called("PROFILE");
}

} // namespace

void add_singer(Command& command, PlanOptions& o) { singer_option(command, o).required(); }

void add_optional_singer(Command& command, PlanOptions& o) { singer_option(command, o); }

void add_plan_options(Command& command, PlanOptions& o) {
    add_singer(command, o);
    add_plan_options_without_singer(command, o);
}

void add_plan_options_without_singer(Command& command, PlanOptions& o) {
    command
        .value("--range", o.range,
               "pitches to plan, C3..A4: without a score, or instead of the singer's range")
        .called("LOW..HIGH");
    command.value("--vowels", o.vowels,
                  "vowels to plan besides those in the song, \"i e a o u\" (IPA or X-SAMPA)");
    add_song_options(command, o);
}

std::vector<std::string> inputs_of(PlanOptions const& o) { return {o.score, o.singer, o.words, o.technique}; }

std::vector<std::string> inputs_of(PlanOptions const& o, ChartLook const& look) {
    auto all = inputs_of(o);
    all.push_back(look.theme);
    return all;
}

Passage read_song(PlanOptions const& o, Singer const& singer) {
    auto passage = read_passage(o, score_options(o, singer, tuning_of(o, singer)));
    if (!o.score.empty()) give_vowels(passage, o);
    return passage;
}

ReadRequest read_request(PlanOptions const& o) {
    auto out = read_all_but_vowels(o, false, false);
    if (!o.score.empty()) give_vowels(out.request.passage, o);
    return out;
}

ReadRequest read_request_without_vowels(PlanOptions const& o, bool lowest) {
    return read_all_but_vowels(o, true, lowest);
}

} // namespace vowelway::cli
