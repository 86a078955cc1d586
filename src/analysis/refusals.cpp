// SPDX-License-Identifier: MIT
#include "analysis/refusals.hpp"

#include "analysis/with_unit.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>

namespace vowelway::analysis {
namespace {

constexpr double least_relief = 7; // dB: mere noise has less
constexpr std::array unclear{0.12,
                             0.10}; // deviation of F1 and F2 in proportion, above which nothing stands out
constexpr double least_rise = 3;    // dB above the pauses
constexpr double plain_rise = 10;   // dB above them: noise is no excuse
constexpr double most_movement = 4; // dB, from beginning to end
constexpr std::size_t fewest_takes = 3;

/// Well above the pauses around F1 and F2: noise is no excuse.
bool stands_out(ProbeQuality const& q) {
    return !q.low_above_floor ||
           (q.low_above_floor->value > plain_rise && q.high_above_floor->value > plain_rise);
}

/// Little of it is steady, and it ends as another sound than it began.
bool moves(Take const& t) { return t.movement.value > most_movement; }

Refusal of_vowel(Take const& t) {
    auto const& m = t.measured;
    bool const unlike = stands_out(t.quality);
    if (!m.formants[0] && !m.formants[1])
        return {worded("no resonances where the vowel should have them; is it the vowel listed?"), unlike};
    if (!m.formants[0] || !m.formants[1])
        return {worded("only one of the two low resonances stands out where the vowel should have them"),
                unlike};
    if (moves(t))
        return {worded("it moves as speech or music does: only {0} are steady; hold jaw, lips and tongue "
                       "still for a second",
                       with_unit(1000 * in_seconds(t.steady.span.length()), "ms")),
                true};
    for (std::size_t k = 0; k < 2; ++k)
        if (m.formants[k]->sd / m.formants[k]->centre > unclear[k])
            return {worded("F{0} is not clear", k + 1), unlike};
    return {};
}

} // namespace

Refusal why_refused(Take const& t, Recording const& r) {
    auto const& m = t.measured;
    if (is_voiced(t.excitation.kind) && t.excitation.rate && *t.excitation.rate > highest_sung_probe)
        return {worded("{0} at {1}: above {2} the harmonics lie too far apart to show the resonances between "
                       "them; creak, or "
                       "sing lower",
                       reworded(to_string(t.excitation.kind)), with_unit(in_hertz(*t.excitation.rate), "Hz"),
                       with_unit(in_hertz(highest_sung_probe), "Hz"))};
    if (m.frames == 0) return {worded("too short: hold the vowel for a second")};
    if (t.excitation.kind == ProbeKind::whisper && !r.heard.stands_out && r.cued.empty())
        return {worded("there is no pause to tell a whisper from the noise of the room; leave a second of "
                       "silence before it")};
    bool const drowned = t.quality.low_above_floor && t.quality.low_above_floor->value < least_rise &&
                         t.quality.high_above_floor->value < least_rise;
    if (drowned)
        return {
            worded("it does not rise above the background; use a quieter room, or move the phone closer")};
    if (t.quality.relief.value < least_relief)
        return {worded("its spectrum is flat: room noise rather than a vowel")};
    return of_vowel(t);
}

void refuse_with_the_others(std::vector<Take>& takes, std::size_t recordings) {
    for (std::size_t r = 0; r < recordings; ++r) {
        std::size_t all = 0, unlike = 0;
        for (auto const& t : takes) all += t.recording == r, unlike += t.recording == r && t.unlike;
        if (all < fewest_takes || 2 * unlike <= all) continue;
        for (auto& t : takes)
            if (t.recording == r && t.usable())
                t.refused = worded("most sounds of this recording ({0} of {1}) are not the vowels listed, so "
                                   "this one is not "
                                   "trusted either",
                                   unlike, all);
    }
}

} // namespace vowelway::analysis
