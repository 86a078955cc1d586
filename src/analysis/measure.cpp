// SPDX-License-Identifier: MIT
#include "vowelway/analysis/measure.hpp"

#include "analysis/assign_vowels.hpp"
#include "analysis/kinds_of_takes.hpp"
#include "analysis/learn_from_takes.hpp"
#include "analysis/looks.hpp"
#include "analysis/pool_takes.hpp"
#include "analysis/read_undone.hpp"
#include "analysis/refusals.hpp"
#include "analysis/settle_processing.hpp"
#include "analysis/vowel_order.hpp"
#include "analysis/with_unit.hpp"
#include "vowelway/analysis/lesson.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double most_share = 0.1; // of the walls in the sound: direct sound 10 dB above them

void require_sound(Recording const& r) {
    Place const place{r.name, 0, 0, {}};
    if (in_seconds(r.heard.length) < in_seconds(shortest_steady))
        throw InputError(worded("lasts only {0}", with_unit(1000 * in_seconds(r.heard.length), "ms")),
                         worded("record each vowel for about a second"), place);
    if (r.heard.loudest < silence)
        throw InputError(worded("is silent"),
                         worded("check the microphone, and that the right file was copied"), place);
    if (r.heard.stretches.empty())
        throw InputError(
            worded("has nothing that stands out from the background ({0})",
                   with_unit((r.heard.loudest - r.heard.floor).value, "dB")),
            worded(
                "use a quieter room, hold the phone a hand's width beside the mouth, and leave a second of "
                "silence first"),
            place);
}

void say_room(Recording const& r, Remarks& remarks) {
    if (!r.heard.room || r.heard.room->share < most_share) return;
    char length[40];
    std::snprintf(length, sizeof length, "%.1f s", in_seconds(r.heard.room->reverberation));
    remarks.push_back(
        {Remark::Kind::caution, worded("{0}: the room is reverberant ({1}, {2} of the sound), "
                                       "or the vowels fade out slowly; this makes the "
                                       "deviations wider; move the phone closer, use a room "
                                       "with carpets and curtains, and end each vowel "
                                       "cleanly",
                                       r.name, length, with_unit(100 * r.heard.room->share, "%"))});
}

/// A take on its way: what is needed until it is read.
struct Opened {
    Assigned from;
    std::vector<PowerSpectrum> blocks;
    PowerSpectrum spectrum;
    std::span<float const> samples;
};

/// The steady part and what excites it.
Take open_take(Opened& o, Recording const& r) {
    Take t;
    t.recording = o.from.recording;
    t.span = o.from.span;
    t.vowel = o.from.vowel;
    auto const& sound = r.heard.stretches[o.from.stretch];
    auto steady = steady_part(sound, o.from.span);
    if (!steady) {
        t.steady.span = o.from.span;
        t.refused = worded("too short: hold the vowel for a second");
        return t;
    }
    o.blocks = std::move(steady->blocks);
    o.spectrum = pooled(o.blocks);
    t.steady = {steady->span, {}, steady->sounding, steady->unsteadiness};
    t.movement = movement(sound, t.steady);
    o.samples = part(sound, steady->span.start, steady->span.end);
    t.excitation =
        recognise_excitation(o.samples, sound.rate, &o.spectrum, r.heard.noise ? &*r.heard.noise : nullptr);
    return t;
}

FormantOptions options_for(Take const& t, Opened const& o, Recording const& r) {
    FormantOptions options;
    options.kind = t.excitation.kind;
    options.blocks = o.blocks;
    if (is_voiced(options.kind)) options.fo = t.excitation.rate;
    if (r.band < 0.5 * measuring_rate) options.band_limit = r.band;
    options.room = r.heard.room;
    if (r.heard.noise) options.noise = &*r.heard.noise;
    return options;
}

/// Its resonances as the vowel it is listed as, and how it fits each vowel of the list.
std::vector<VowelFit> read_take(Take& t, Opened const& o, Recording const& r, MeasureRequest const& request,
                                std::vector<Vowel> const& labels, Processing const& processing) {
    auto const kind = t.excitation.kind;
    auto const due = [&](Vowel const& vowel) {
        return expect(request.reference, vowel, kind, request.shifts[index(kind)]).formants;
    };
    t.expected = due(t.vowel);
    auto const options = options_for(t, o, r);
    auto const rate = r.heard.stretches[o.from.stretch].rate;
    auto const [looks, reading] = read_undone(o.samples, rate, t.expected, options, processing);
    t.measured = reading;
    if (kind == ProbeKind::creak) t.measured.fo = t.excitation.rate;
    bool const clipped = std::any_of(r.clipped.begin(), r.clipped.end(), [&](TimeSpan const& c) {
        return c.start < t.steady.span.end && t.steady.span.start < c.end;
    });
    t.quality =
        judge({o.spectrum, options.noise, t.steady, clipped, t.excitation, t.measured, t.expected, t.vowel});
    auto const refusal = why_refused(t, r);
    t.refused = clipped ? worded("clipped: turn the level down or move the phone away") : refusal.why;
    if (t.refused.empty()) t.refused = why_not_heard(t.measured, processing);
    t.unlike = !clipped && refusal.unlike;
    std::vector<VowelFit> fits;
    if (labels.size() > 1)
        for (auto const& v : labels) fits.push_back(fit_of(looks, due(v), kind));
    return fits;
}

void pool(Measurements& m) {
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
}

} // namespace

Measurements measure(std::vector<Recording> const& recordings, MeasureRequest const& request) {
    Measurements m;
    m.shifts = request.shifts;
    for (auto const& r : recordings) require_sound(r);
    for (auto const& r : recordings) say_room(r, m.remarks);
    std::vector<Opened> opened;
    for (auto& a : assign_vowels(recordings, request, m.remarks))
        opened.push_back({std::move(a), {}, {}, {}});
    for (auto& o : opened) m.takes.push_back(open_take(o, recordings[o.from.recording]));
    std::vector<HeardTake> heard;
    for (auto const& o : opened) heard.push_back({&o.spectrum, o.samples});
    auto const reflections = settle_reflections(m.takes, recordings, heard);
    settle_kinds(m, recordings, request.kind);
    auto const processing = settle_processing(m, recordings, heard, reflections);

    auto const labels = labels_of(m.takes);
    std::vector<std::vector<VowelFit>> fits(m.takes.size());
    for (std::size_t i = 0; i < m.takes.size(); ++i)
        if (m.takes[i].usable())
            fits[i] = read_take(m.takes[i], opened[i], recordings[m.takes[i].recording], request, labels,
                                processing[m.takes[i].recording]);
    tell_limited_voices(m, recordings);
    settle_order(m, recordings, labels, fits);
    refuse_with_the_others(m.takes, recordings.size());
    pool(m);
    learn_from_takes(m, recordings, request);
    for (auto& v : m.vowels) v.tract = tract_reading(v.measured, v.vowel, v.kind, m.shifts[index(v.kind)]);
    for (auto& t : m.takes)
        if (t.usable())
            t.tract =
                tract_reading(t.measured, t.vowel, t.excitation.kind, m.shifts[index(t.excitation.kind)]);
    m.lesson = lesson_points(m, {});
    return m;
}

} // namespace vowelway::analysis
