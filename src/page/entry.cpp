// SPDX-License-Identifier: MIT
// The door of the page: a request as JSON, bytes of a score or samples in; JSON, CSV or text out. The fields
// are told in src/page/README.md. Each function gives an Outcome; the text is fetched with vowelway_answer.
#include "page/answer.hpp"
#include "page/text_measurer.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/analysis/reference.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/io/theme/read_theme.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/measurement_report.hpp"
#include "vowelway/report/plan_report.hpp"

#include <nlohmann/json.hpp>

#include <span>
#include <string>
#include <string_view>
#include <utility>

namespace vowelway::page {

namespace {

using Json = nlohmann::json;

/// {"voice": "tenor"} or {"profile": "vowelway: 1 ..", "file": "me.yaml"}.
Profile profile_of(Json const& from) {
    if (from.contains("profile"))
        return io::parse_profile(from["profile"], from.value("file", "the profile"));
    std::string const name = from.value("voice", "");
    auto const voice = parse_voice_type(name);
    if (!voice || *voice == VoiceType::other)
        throw InputError("there is no voice \"" + name + "\"", "choose a voice type or open a profile");
    Profile average;
    average.singer = io::built_in_voice(*voice);
    return average;
}

Tuning tuning_of(Json const& request, Singer const& singer) {
    if (!request.contains("a4_hz")) return singer.tuning;
    auto const a4 = hertz(request["a4_hz"].get<double>());
    if (!(a4 >= hertz(380) && a4 <= hertz(500)))
        throw InputError("this is not a tuning of A4", "give 380 to 500 Hz; the standard is 440 Hz");
    return Tuning{a4};
}

Passage passage_of(Json const& request, std::string_view score, Singer const& singer) {
    io::ScoreOptions options;
    options.part = request.value("part", "");
    options.verse = request.value("verse", 0);
    if (request.contains("transpose")) options.transpose_semitones = request.at("transpose").get<double>();
    options.tuning = tuning_of(request, singer);
    options.singer_range = singer.range;
    options.voice = singer.voice;
    if (score.empty()) {
        Passage none;
        none.tuning = options.tuning;
        return none;
    }
    auto passage = io::parse_score(std::string(score), request.value("file", "the score"), options);
    diction::DictionOptions diction;
    if (request.contains("language")) {
        std::string const tag = request["language"];
        diction.language = diction::parse_language(tag);
        if (!diction.language)
            throw InputError("the language " + tag + " is not known",
                             "give a tag such as it, la, de, fr, en, es");
    }
    if (request.contains("words")) diction.words = diction::parse_word_list(request["words"], "the words");
    set_vowels(passage, diction);
    return passage;
}

plan::Plan made_plan(Json const& request, std::string_view score) {
    plan::PlanRequest wanted;
    Remarks remarks;
    auto const technique = io::built_in_technique(request.value("technique", "classical"));
    if (!technique) throw InputError("there is no such technique", "choose one of the list");
    wanted.technique = *technique;
    wanted.draws = request.value("draws", wanted.draws);
    wanted.singer = profile_of(request.at("singer")).singer;
    if (!wanted.singer.average) remarks = io::profile_remarks(wanted.singer);
    wanted.passage = passage_of(request, score, wanted.singer);
    if (request.contains("range")) wanted.range = parse_pitch_range(request["range"].get<std::string>());
    if (request.contains("vowels")) wanted.vowels = parse_vowels(request["vowels"].get<std::string>());
    if (!wanted.singer.average && wanted.singer.voice != VoiceType::other)
        wanted.reference = io::built_in_voice(wanted.singer.voice);
    wanted.passage.remarks.insert(wanted.passage.remarks.begin(), remarks.begin(), remarks.end());
    return make_plan(std::move(wanted));
}

std::string plan_of(Json const& request, std::string_view score) {
    auto const plan = made_plan(request, score);
    auto const form = request.value("form", "json");
    return form == "csv"    ? report::plan_csv(plan)
           : form == "text" ? report::plan_text(plan)
                            : report::plan_json(plan);
}

/// {"pages": ["<svg ..", ..]}.
std::string drawing_of(Json const& request, std::string_view score) {
    chart::ChartOptions options;
    auto const theme = io::built_in_theme(request.value("theme", "paper"));
    auto const paper = chart::parse_paper(request.value("paper", "a4"));
    if (!theme || !paper) throw InputError("there is no such theme or paper", "choose one of the list");
    options.theme = *theme;
    options.paper = *paper;
    options.grey = request.value("grey", false);
    auto const kind = request.value("chart", "");
    if (kind == "sheet") options.kind = chart::Kind::passage_sheet;
    if (kind == "vowels") options.kind = chart::Kind::pitch_by_vowel;
    if (kind == "map") options.kind = chart::Kind::resonance_map;
    auto pages = Json::array();
    for (auto const& page : draw_svg(made_plan(request, score), options, TextMeasurer(options.theme)))
        pages.push_back(page.bytes);
    return Json{{"pages", std::move(pages)}}.dump();
}

std::string measurement_of(Json const& request, std::span<float const> samples) {
    analysis::Recording recording;
    recording.name = request.value("file", "the recording");
    analysis::Listener listener(analysis::measuring_rate);
    listener.hear(samples);
    recording.heard = listener.finish();
    if (listener.overfull())
        throw InputError("has more than 180 s of sound",
                         "cut out the part with the vowels: one breath is enough",
                         {recording.name, 0, 0, {}});
    auto const rate = hertz(request.at("rate_hz").get<double>());
    recording.band = analysis::band_of(rate);
    Remarks remarks;
    auto const profile = profile_of(request.at("singer"));
    analysis::warn_of_band(recording.name, rate, remarks);
    analysis::MeasureRequest wanted;
    wanted.reference = profile.singer;
    if (!profile.singer.average && profile.singer.voice != VoiceType::other)
        wanted.reference =
            analysis::reference_singer(profile.singer, io::built_in_voice(profile.singer.voice));
    wanted.vowels = parse_vowels(request.at("vowels").get<std::string>());
    wanted.repeat = request.value("repeat", 0);
    if (request.contains("probe"))
        wanted.kind = analysis::parse_probe_kind(request["probe"].get<std::string>());
    analysis::use_shifts(wanted, profile.shifts);
    auto measured = measure({recording}, wanted);
    analysis::add_remarks(measured, std::move(remarks), wanted.reference);
    return report::measurement_json(measured, {recording.name});
}

} // namespace

extern "C" {

/// The plan of a score (bytes of MusicXML or of a YAML passage) or, without bytes, of a range.
int vowelway_plan(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] { return plan_of(Json::parse(std::string_view(request, size)), {score, score_size}); });
}

/// The charts of the same plan as SVG, set with the page's own fonts (text_measurer.hpp).
int vowelway_draw(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] {
        return drawing_of(Json::parse(std::string_view(request, size)), {score, score_size});
    });
}

/// The measurement of one recording: samples at 16 kHz, one channel.
int vowelway_measure(char const* request, std::size_t size, float const* samples, std::size_t count) {
    return answer([&] {
        return measurement_of(Json::parse(std::string_view(request, size)), {samples, count});
    });
}
}

} // namespace vowelway::page
