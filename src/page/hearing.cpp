// SPDX-License-Identifier: MIT
#include "page/hearing.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/known_resonances.hpp"
#include "vowelway/plan/sung_source.hpp"
#include "vowelway/sound/line_sounds.hpp"
#include "vowelway/sound/loudness.hpp"
#include "vowelway/sound/note_sounds.hpp"
#include "vowelway/sound/vowel_sounds.hpp"

#include <array>
#include <utility>

namespace vowelway::page {

namespace {

constexpr Duration longest = seconds(1200); // 230 MB of samples
std::vector<float> made;                    // the module has one thread

constexpr std::array vowel_sounds{
    std::pair{"low", sound::VowelSound::low}, std::pair{"high", sound::VowelSound::high},
    std::pair{"tones", sound::VowelSound::tones}, std::pair{"noise", sound::VowelSound::noise},
    std::pair{"whisper", sound::VowelSound::whisper}};

struct Heard {
    sound::Programme programme;
    std::vector<sound::TimedNote> notes; // of a line
};

Duration each(Json const& request, Duration usual) {
    auto const length = seconds(request.value("seconds", in_seconds(usual)));
    if (!(length >= seconds(0.2) && length <= seconds(60)))
        throw InputError(worded("this is no length of a sound"), worded("give 0.2 to 60 seconds"));
    return length;
}

Vibrato vibrato_of(Singer const& singer, Technique const& technique) {
    return singer.vibrato.value_or(technique.vibrato);
}

sound::Programme glide(Json const& request, plan::PlanRequest wanted, Vowel const& vowel) {
    auto const technique = wanted.technique;
    wanted.passage.notes.clear();
    wanted.vowels = {vowel.quality()};
    auto const plan = make_plan(std::move(wanted));
    std::array const planned{plan.vowels.front().resonances};
    return sound::glide_sounds(plan.vowels.front(), sound::voice_of(plan.singer, technique, planned),
                               {each(request, seconds(8)), plan.passage.tuning});
}

Heard vowel_heard(Json const& request, std::string_view) {
    auto wanted = plan_request(request, {});
    auto const vowel = parse_vowel(request.at("vowel").get<std::string>());
    if (request.value("glide", false)) return {glide(request, std::move(wanted), vowel), {}};
    auto const known =
        plan::resonances_of(vowel, wanted.singer, wanted.reference ? &*wanted.reference : nullptr);
    if (!known)
        throw InputError(worded("the profile of {0} has no vowels", wanted.singer.name),
                         worded("add at least one vowel with fR1 and fR2"));
    std::array const planned{*known};
    sound::VowelSoundsAsked asked{.vowel = *known,
                                  .tract = plan::tract_length_of(wanted.singer, planned),
                                  .tuning = wanted.passage.tuning,
                                  .only = {},
                                  .each = each(request, seconds(2)),
                                  .faults = request.value("faults", false)};
    for (auto const& [name, sound] : vowel_sounds)
        if (request.value("only", "") == name) asked.only = sound;
    return {sound::vowel_sounds(asked), {}};
}

Heard note_heard(Json const& request, std::string_view score) {
    auto wanted = plan_request(request, score);
    auto const note = request.at("note").get<std::size_t>();
    if (note >= wanted.passage.notes.size() || !wanted.passage.notes[note].vowel)
        throw InputError(worded("this note has no vowel to sing"), worded("choose one of the sheet"));
    if (request.value("glide", false)) {
        auto const vowel = wanted.passage.notes[note].vowel->held;
        return {glide(request, std::move(wanted), vowel), {}};
    }
    auto const technique = wanted.technique;
    auto const explained = explain_note(std::move(wanted), note);
    std::array const planned{explained.vowel};
    sound::NoteSoundsAsked asked{
        .only = {}, .each = each(request, seconds(2)), .vibrato = vibrato_of(explained.singer, technique)};
    auto const only = request.value("only", "");
    if (only == "kept") asked.only = sound::NoteSound::kept;
    if (only == "changed") asked.only = sound::NoteSound::changed;
    return {sound::note_sounds(explained, sound::voice_of(explained.singer, technique, planned), asked), {}};
}

Heard line_heard(Json const& request, std::string_view score) {
    sound::TimingAsked when{
        .from = {}, .to = {}, .quarter = {}, .count_in = request.value("count_in", false)};
    if (auto const from = request.value("from", ""); !from.empty()) when.from = from;
    if (auto const to = request.value("to", ""); !to.empty()) when.to = to;
    if (request.contains("tempo")) when.quarter = seconds(60 / request["tempo"].get<double>());
    auto const& plan = planned(request, score);
    auto timing = sound::timing_of(plan.passage, when);
    auto const technique = technique_of(request);
    std::vector<VowelResonances> resonances;
    for (auto const& vowel : plan.vowels) resonances.push_back(vowel.resonances);
    auto programme = sound::line_sounds(plan, timing, sound::voice_of(plan.singer, technique, resonances),
                                        {.kept = request.value("kept", false),
                                         .guide = request.value("guide", false),
                                         .click = request.value("click", false),
                                         .vibrato = vibrato_of(plan.singer, technique)});
    return {std::move(programme), std::move(timing.notes)};
}

Json answer_of(Heard const& heard, sound::Balance const& balance) {
    Json out{{"seconds", in_seconds(length_of(heard.programme))},
             {"rate_hz", in_hertz(sound::sample_rate)},
             {"loudness_lufs", balance.loudness.integrated.value},
             {"list", Json::array()},
             {"notes", Json::array()},
             {"remarks", Json::array()}};
    for (auto const& item : heard.programme.items)
        if (!item.what.empty())
            out["list"].push_back({{"start_s", in_seconds(item.start)},
                                   {"end_s", in_seconds(item.start + item.length)},
                                   {"what", item.what}});
    for (auto const& [note, start, length] : heard.notes)
        out["notes"].push_back(
            {{"note", note}, {"start_s", in_seconds(start)}, {"end_s", in_seconds(start + length)}});
    for (auto const& remark : heard.programme.remarks)
        out["remarks"].push_back({{"kind", to_string(remark.kind)}, {"text", remark.text}});
    return out;
}

} // namespace

std::string heard(Json const& request, std::string_view score) {
    made.clear();
    auto const what = request.value("sound", "");
    auto const heard = what == "line"   ? line_heard(request, score)
                       : what == "note" ? note_heard(request, score)
                                        : vowel_heard(request, score);
    if (length_of(heard.programme) > longest)
        throw InputError(worded("this would sound for more than 20 minutes"), worded("choose fewer bars"));
    auto const balance = sound::balance(heard.programme);
    sound::play(heard.programme, balance.gain,
                [](std::span<float const> block) { made.insert(made.end(), block.begin(), block.end()); });
    return answer_of(heard, balance).dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::vector<float> const& samples() { return made; }

} // namespace vowelway::page
