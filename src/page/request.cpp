// SPDX-License-Identifier: MIT
#include "page/request.hpp"

#include "page/parts_offered.hpp"
#include "vowelway/analysis/reference.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/io/theme/read_theme.hpp"

#include <cstdlib>
#include <string>
#include <utility>

namespace vowelway::page {

namespace {

Tuning tuning_of(Json const& request, Singer const& singer) {
    if (!request.contains("a4_hz")) return singer.tuning;
    auto const a4 = hertz(request["a4_hz"].get<double>());
    if (!(a4 >= hertz(380) && a4 <= hertz(500)))
        throw InputError(worded("this is not a tuning of A4"),
                         worded("give 380 to 500 Hz; the standard is 440 Hz"));
    return Tuning{a4};
}

/// A number, or "all": the music as it is sung.
int verse_of(Json const& request) {
    if (!request.contains("verse")) return 0;
    auto const& verse = request["verse"];
    return verse == "all" ? io::every_verse : verse.get<int>();
}

/// What a plan depends on, as one text.
std::string key_of(Json const& request, std::string_view score) {
    Json key;
    for (auto const* field : {"singer", "file", "part", "verse", "transpose", "language", "technique",
                              "draws", "range", "vowels", "a4_hz", "words", "moved"})
        if (request.contains(field)) key[field] = request[field];
    return key.dump(-1, ' ', false, Json::error_handler_t::replace) + '\n' + std::string(score);
}

std::optional<Accidental> sign_of(SpelledPitch const& pitch) {
    return pitch.alter > 0 ? Accidental::sharp : pitch.alter < 0 ? Accidental::flat : Accidental::natural;
}

/// One note sung higher or lower than it stands: what would be advised there? Its sign is always written.
void move_note(Passage& passage, Json const& moved) {
    auto const index = moved.at("note").get<std::size_t>();
    auto const by = moved.at("semitones").get<int>();
    if (index >= passage.notes.size() || std::abs(by) > 24)
        throw InputError(worded("this note cannot be moved there"),
                         worded("choose a note of the sheet; two octaves at most"));
    auto& note = passage.notes[index];
    note.spelled = transposed(note.spelled, by);
    note.pitch = note.pitch + Cents{100.0 * by};
    for (auto& measure : passage.staff.measures)
        for (auto& event : measure.events)
            if (event.sung == index)
                for (auto& head : event.heads) {
                    head.written = transposed(head.written, by);
                    head.accidental = sign_of(head.written);
                }
}

} // namespace

Profile profile_of(Json const& from, AverageVowels vowels) {
    if (from.contains("profile"))
        return io::parse_profile(from["profile"], from.value("file", "the profile"));
    std::string const name = from.value("voice", "");
    auto voice = io::named_voice(name, vowels);
    if (!voice)
        throw InputError(worded("there is no voice \"{0}\"", name),
                         worded("choose a voice type or open a profile"));
    Profile average;
    average.singer = *std::move(voice);
    return average;
}

Technique technique_of(Json const& request) {
    auto technique = io::built_in_technique(request.value("technique", "classical"));
    if (!technique) throw InputError(worded("there is no such technique"), worded("choose one of the list"));
    return *std::move(technique);
}

analysis::MeasureRequest measure_request(Json const& singer) {
    auto const profile = profile_of(singer);
    analysis::MeasureRequest wanted;
    wanted.reference = profile.singer;
    if (auto const average = io::average_beside(profile.singer))
        wanted.reference = analysis::reference_singer(profile.singer, *average);
    analysis::use_shifts(wanted, profile);
    return wanted;
}

io::ScoreOptions score_options(Json const& request, Singer const& singer) {
    io::ScoreOptions options;
    choose_part(options, request.value("part", ""));
    options.verse = verse_of(request);
    if (request.contains("transpose")) options.transpose_semitones = request.at("transpose").get<double>();
    options.tuning = tuning_of(request, singer);
    options.singer_range = singer.range;
    options.voice = singer.voice;
    return options;
}

diction::DictionOptions diction_options(Json const& request) {
    diction::DictionOptions out;
    if (request.contains("language")) {
        std::string const tag = request["language"];
        out.language = diction::parse_language(tag);
        if (!out.language)
            throw InputError(worded("the language {0} is not known", tag),
                             worded("give a tag such as it, la, de, fr, en, es"));
    }
    if (request.contains("words"))
        for (std::string const& list : request["words"])
            out.words = parse_word_list(list, "the words", std::move(out.words));
    return out;
}

Passage passage_of(Json const& request, std::string_view score, Singer const& singer) {
    auto const options = score_options(request, singer);
    if (score.empty()) {
        Passage none;
        none.tuning = options.tuning;
        return none;
    }
    auto passage = io::parse_score(std::string(score), request.value("file", "the score"), options);
    set_vowels(passage, diction_options(request));
    if (request.contains("moved")) move_note(passage, request["moved"]);
    return passage;
}

plan::PlanRequest plan_request(Json const& request, std::string_view score) {
    plan::PlanRequest wanted;
    Remarks remarks;
    wanted.technique = technique_of(request);
    wanted.draws = request.value("draws", wanted.draws);
    auto const averages = wanted.technique.averages;
    wanted.singer = profile_of(request.at("singer"), averages).singer;
    if (!wanted.singer.average) remarks = io::profile_remarks(wanted.singer);
    wanted.passage = passage_of(request, score, wanted.singer);
    if (request.contains("range")) wanted.range = parse_pitch_range(request["range"].get<std::string>());
    if (request.contains("vowels")) wanted.vowels = parse_vowels(request["vowels"].get<std::string>());
    wanted.reference = io::average_beside(wanted.singer, averages);
    wanted.passage.remarks.insert(wanted.passage.remarks.begin(), remarks.begin(), remarks.end());
    return wanted;
}

plan::Plan const& planned(Json const& request, std::string_view score) {
    static std::string key; // the module has one thread
    static std::optional<plan::Plan> last;
    auto wanted = std::string(wording_language()) + key_of(request, score); // a plan holds sentences
    if (!last || key != wanted) {
        last.reset();
        last = make_plan(plan_request(request, score));
        key = std::move(wanted);
    }
    return *last;
}

chart::ChartOptions chart_options(Json const& request) {
    chart::ChartOptions options;
    auto const theme = io::built_in_theme(request.value("theme", "paper"));
    auto const paper = chart::parse_paper(request.value("paper", "a4"));
    if (!theme || !paper)
        throw InputError(worded("there is no such theme or paper"), worded("choose one of the list"));
    options.theme = *theme;
    options.paper = *paper;
    options.grey = request.value("grey", false);
    if (request.contains("width"))
        options.page = chart::Size{request["width"].get<double>(),
                                   request.value("height", 1.4142 * request["width"].get<double>())};
    auto const kind = request.value("chart", "");
    if (kind == "pencil") options.kind = chart::Kind::pencil;
    if (kind == "sheet") options.kind = chart::Kind::passage_sheet;
    if (kind == "vowels") options.kind = chart::Kind::pitch_by_vowel;
    if (kind == "map") options.kind = chart::Kind::resonance_map;
    if (request.contains("map_pitch"))
        options.map_pitch = parse_spelled_pitch(request["map_pitch"].get<std::string>());
    return options;
}

} // namespace vowelway::page
