// SPDX-License-Identifier: MIT
#include "vowelway/analysis/measure.hpp"

#include "analysis/assign_vowels.hpp"
#include "analysis/pool_takes.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double least_relief = 7; // dB: mere noise has less
constexpr std::array unclear{0.12,
                             0.10}; // deviation of F1 and F2 in proportion, above which nothing stands out
constexpr double least_rise = 3;    // dB above the pauses
constexpr double most_share = 0.1;  // of the walls in the sound: direct sound 10 dB above them

std::size_t index(ProbeKind kind) { return static_cast<std::size_t>(kind); }

std::string clean(double value, char const* unit) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f %s", value, unit);
    return text;
}

void require_sound(Recording const& r) {
    Place const place{r.name, 0, 0, {}};
    if (in_seconds(r.heard.length) < in_seconds(shortest_steady))
        throw InputError("lasts only " + clean(1000 * in_seconds(r.heard.length), "ms"),
                         "record each vowel for about a second", place);
    if (r.heard.loudest < silence)
        throw InputError("is silent", "check the microphone, and that the right file was copied", place);
    if (r.heard.stretches.empty())
        throw InputError("has nothing that stands out from the background (" +
                             clean((r.heard.loudest - r.heard.floor).value, "dB") + ")",
                         "use a quieter room, hold the phone a hand's width beside the mouth, and leave a "
                         "second of silence "
                         "first",
                         place);
}

std::string why_refused(Take const& t, Recording const& r) {
    auto const& m = t.measured;
    if (t.excitation.kind == ProbeKind::sung && t.excitation.rate && *t.excitation.rate > highest_sung_probe)
        return "sung at " + clean(in_hertz(*t.excitation.rate), "Hz") + ": above " +
               clean(in_hertz(highest_sung_probe), "Hz") +
               " the harmonics lie too far apart to show the resonances between them; creak, or sing lower";
    if (m.frames == 0) return "too short: hold the vowel for a second";
    if (t.excitation.kind == ProbeKind::whisper && !r.heard.stands_out && r.cued.empty())
        return "there is no pause to tell a whisper from the noise of the room; leave a second of silence "
               "before it";
    bool const drowned = t.quality.low_above_floor && t.quality.low_above_floor->value < least_rise &&
                         t.quality.high_above_floor->value < least_rise;
    if (drowned) return "it does not rise above the background; use a quieter room, or move the phone closer";
    if (t.quality.relief.value < least_relief) return "its spectrum is flat: room noise rather than a vowel";
    if (!m.formants[0] || !m.formants[1])
        return m.formants[0] || m.formants[1]
                   ? "only one of the two low resonances stands out where the vowel should have them"
                   : "no resonances where the vowel should have them; is it the vowel listed?";
    for (std::size_t k = 0; k < 2; ++k)
        if (m.formants[k]->sd / m.formants[k]->centre > unclear[k])
            return "F" + std::to_string(k + 1) + " is not clear";
    return "";
}

Take read_take(Assigned const& a, Recording const& r, MeasureRequest const& request) {
    Take t;
    t.recording = a.recording;
    t.span = a.span;
    t.vowel = a.vowel;
    auto const& sound = r.heard.stretches[a.stretch];
    auto steady = steady_part(sound, a.span);
    if (!steady) {
        t.steady.span = a.span;
        t.refused = "too short: hold the vowel for a second";
        return t;
    }
    auto const blocks = std::move(steady->blocks);
    auto const spectrum = pooled(blocks);
    t.steady = {steady->span, {}, steady->unsteadiness};
    auto const samples = part(sound, steady->span.start, steady->span.end);
    t.excitation = recognise_excitation(samples, sound.rate, &spectrum);
    if (request.kind) t.excitation.kind = *request.kind;
    auto const kind = t.excitation.kind;
    t.expected = expect(request.reference, a.vowel, kind, request.shifts[index(kind)]).formants;
    FormantOptions options;
    options.kind = kind;
    options.blocks = blocks;
    if (kind == ProbeKind::sung) options.fo = t.excitation.rate;
    if (r.band < 0.5 * sound.rate) options.band_limit = r.band;
    options.room = r.heard.room;
    if (r.heard.noise) options.noise = &*r.heard.noise;
    t.measured = read_formants(samples, sound.rate, t.expected, options);
    if (kind == ProbeKind::creak) t.measured.fo = t.excitation.rate;
    bool const clipped = std::any_of(r.clipped.begin(), r.clipped.end(), [&](TimeSpan const& c) {
        return c.start < steady->span.end && steady->span.start < c.end;
    });
    t.quality =
        judge({spectrum, options.noise, t.steady, clipped, t.excitation, t.measured, t.expected, a.vowel});
    t.refused = clipped ? "clipped: turn the level down or move the phone away" : why_refused(t, r);
    return t;
}

void say_room(Recording const& r, Remarks& remarks) {
    if (!r.heard.room || r.heard.room->share < most_share) return;
    char text[300];
    std::snprintf(
        text, sizeof text,
        ": the room is reverberant (%.1f s, %.0f %% of the sound), or the vowels fade out slowly; this "
        "makes the deviations wider; "
        "move the phone closer, use a room with carpets and curtains, and end each vowel cleanly",
        in_seconds(r.heard.room->reverberation), 100 * r.heard.room->share);
    remarks.push_back({Remark::Kind::caution, r.name + text});
}

/// FNV-1a (G. Fowler, L. C. Noll & K.-P. Vo, 1991) over what sounds, to 16 bits.
std::string digest_of(Heard const& heard) {
    std::uint64_t hash = 14695981039346656037U;
    for (auto const& s : heard.stretches)
        for (float x : s.samples) {
            auto const value = static_cast<std::uint16_t>(
                static_cast<std::int16_t>(std::lround(std::clamp(x, -1.0F, 1.0F) * 32767)));
            for (unsigned const byte : {value & 0xffU, static_cast<unsigned>(value) >> 8U})
                hash = (hash ^ byte) * 1099511628211U;
        }
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return text;
}

/// A vowel teaches when both its probes hold a take from a recording that has not taught yet.
void learn(Measurements& m, std::vector<Recording> const& recordings,
           std::vector<std::string> const& taught) {
    std::vector<std::string> digests;
    for (auto const& r : recordings) digests.push_back(digest_of(r.heard));
    auto const known = [&](std::size_t recording) {
        auto const& all = digests[recording];
        return std::find(taught.begin(), taught.end(), all) != taught.end();
    };
    auto const takes_of = [&](MeasuredVowel const& v, auto&& each) {
        for (auto const& t : m.takes)
            if (t.usable() && t.excitation.kind == v.kind && t.vowel.quality() == v.vowel.quality())
                each(t.recording);
    };
    int left_out = 0;
    std::vector<ProbePair> whisper_creak, whisper_sung;
    for (auto const& w : m.vowels) {
        if (w.kind != ProbeKind::whisper) continue;
        for (auto const& other : m.vowels) {
            if (!(other.vowel == w.vowel) || other.kind == ProbeKind::whisper) continue;
            bool new_whisper = false, new_other = false;
            takes_of(w, [&](std::size_t r) { new_whisper = new_whisper || !known(r); });
            takes_of(other, [&](std::size_t r) { new_other = new_other || !known(r); });
            if (!new_whisper || !new_other) {
                ++left_out;
                continue;
            }
            for (auto const* v : {&w, &other})
                takes_of(*v, [&](std::size_t r) {
                    auto& from = m.learned_from;
                    if (std::find(from.begin(), from.end(), digests[r]) == from.end())
                        from.push_back(digests[r]);
                });
            if (other.kind == ProbeKind::creak) whisper_creak.push_back({w.measured, other.measured});
            if (other.kind == ProbeKind::sung) whisper_sung.push_back({w.measured, other.measured});
        }
    }
    if (left_out > 0)
        m.remarks.push_back({Remark::Kind::caution,
                             "the singer's shift was already learned from these recordings; " +
                                 std::to_string(left_out) + (left_out == 1 ? " vowel is" : " vowels are") +
                                 " not counted again"});
    auto& whisper = m.shifts[index(ProbeKind::whisper)];
    if (!whisper_creak.empty())
        learn_shifts(whisper, m.shifts[index(ProbeKind::creak)], whisper_creak);
    else if (!whisper_sung.empty()) {
        auto sung = m.shifts[index(ProbeKind::sung)]; // what a low sung vowel shows is taken as it is
        learn_shifts(whisper, sung, whisper_sung);
    }
    m.learned = !whisper_creak.empty() || !whisper_sung.empty();
}

} // namespace

Measurements measure(std::vector<Recording> const& recordings, MeasureRequest const& request) {
    Measurements m;
    m.shifts = request.shifts;
    for (auto const& r : recordings) require_sound(r);
    for (auto const& r : recordings) say_room(r, m.remarks);
    for (auto const& a : assign_vowels(recordings, request, m.remarks))
        m.takes.push_back(read_take(a, recordings[a.recording], request));

    std::vector<std::pair<Vowel, ProbeKind>> groups; // in the order of the takes
    for (auto const& t : m.takes)
        if (std::pair const key{t.vowel.quality(), t.excitation.kind};
            t.usable() && std::find(groups.begin(), groups.end(), key) == groups.end())
            groups.push_back(key);
    for (auto const& [vowel, kind] : groups) {
        std::vector<Take const*> of_group;
        for (auto const& t : m.takes)
            if (t.usable() && t.vowel.quality() == vowel && t.excitation.kind == kind) of_group.push_back(&t);
        m.vowels.push_back(pool_takes(of_group));
    }
    std::erase_if(m.vowels,
                  [](MeasuredVowel const& v) { return !v.measured.formants[0] || !v.measured.formants[1]; });
    learn(m, recordings, request.taught);
    for (auto& v : m.vowels) v.tract = tract_reading(v.measured, v.vowel, v.kind, m.shifts[index(v.kind)]);
    for (auto& t : m.takes)
        if (t.usable())
            t.tract =
                tract_reading(t.measured, t.vowel, t.excitation.kind, m.shifts[index(t.excitation.kind)]);
    return m;
}

} // namespace vowelway::analysis
