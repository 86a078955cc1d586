// SPDX-License-Identifier: MIT
#include "io/score/octave.hpp"

#include "vowelway/core/tessitura.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace vowelway::io {

namespace {

constexpr double out_of_place = 3; ///< semitones beyond the tessitura, in the mean over time: our judgement

/// Semitones beyond the tessitura, in the mean over the time sung.
double distance(std::span<SungNote const> line, PitchRange const& tessitura, double shift) {
    double beyond = 0, all = 0;
    for (auto const& note : line) {
        double const key = note.spelled.key_number() + shift, length = in_seconds(note.length);
        beyond +=
            length * std::max({0.0, tessitura.low.key_number() - key, key - tessitura.high.key_number()});
        all += length;
    }
    return all > 0 ? beyond / all : 0;
}

} // namespace

std::optional<Octave> octave_for(std::span<SungNote const> line, bool plain_treble_clef,
                                 ScoreOptions const& options) {
    auto const tessitura = tessitura_of(options.voice, options.singer_range);
    if (!tessitura) return std::nullopt;
    auto const at = [&](double shift) { return distance(line, *tessitura, shift); };
    double const as_written = at(0), lower = at(-12);
    if (plain_treble_clef && sounds_below_treble_clef(options.voice) && as_written > 0 && lower <= as_written)
        return Octave{-12, worded("a man's part in the treble clef")};
    auto const voice = options.voice == VoiceType::other
                           ? worded("this singer")
                           : worded("a {0}", reworded(to_string(options.voice)));
    if (as_written < out_of_place) return std::nullopt;
    // Two octaves where an editor's 8 stands over the clef of a part that sounds below it.
    constexpr double shifts[] = {-12, 12, -24, 24};
    double const best = *std::min_element(std::begin(shifts), std::end(shifts),
                                          [&](double a, double b) { return at(a) < at(b); });
    if (at(best) > as_written / 3) return std::nullopt;
    return Octave{best, best < 0 ? worded("as written it lies above where {0} sings", voice)
                                 : worded("as written it lies below where {0} sings", voice)};
}

bool begins_in_plain_treble(Part const& part, int staff) {
    for (auto const& measure : part.measures)
        for (auto const& change : measure.changes)
            if (change.clef && (change.staff == 0 || change.staff == staff))
                return change.clef->sign == 'G' && change.clef->octave_change == 0;
    return true; // no clef: read as a treble clef
}

void show_octave(Staff& staff, double semitones) {
    auto const octaves = static_cast<int>(std::round(semitones / 12));
    if (octaves == 0) return;
    auto const show = [&](Clef& clef) {
        clef.octave_change = std::clamp(clef.octave_change + octaves, -3, 3);
    };
    for (auto& measure : staff.measures) {
        if (measure.clef) show(*measure.clef);
        for (auto& change : measure.clef_changes) show(change.second);
    }
}

} // namespace vowelway::io
