// SPDX-License-Identifier: MIT
#include "plan/exercises.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <string_view>

namespace vowelway::plan {

namespace {

constexpr std::size_t most_exercises = 4;
constexpr std::string_view letters = "CDEFGAB";
constexpr std::array<int, 5> major{0, 2, 4, 5, 7}; // semitones

std::vector<SpelledPitch> scale_on(SpelledPitch const& first) {
    std::vector<SpelledPitch> out;
    auto const at = static_cast<int>(letters.find(first.step));
    for (int i = 0; i < 5; ++i) {
        int const letter = at + i;
        SpelledPitch p{letters[static_cast<std::size_t>(letter % 7)], 0, first.octave + letter / 7};
        p.alter = first.key_number() + major[static_cast<std::size_t>(i)] - p.key_number();
        out.push_back(p);
    }
    return out;
}

double signs_of(std::vector<SpelledPitch> const& notes) {
    double sum = 0;
    for (auto const& p : notes) sum += std::abs(p.alter) * (std::abs(p.alter) > 1 ? 10 : 1);
    return sum;
}

/// The same key, spelled from the next letter.
SpelledPitch from_next_letter(SpelledPitch const& p) {
    auto const letter = letters.find(p.step) + 1;
    SpelledPitch next{letters[letter % 7], 0, p.octave + static_cast<int>(letter / 7)};
    next.alter = p.key_number() - next.key_number();
    return next;
}

PitchRange range_of(Plan const& plan) { return plan.singer.range.value_or(plan.range); }

bool within(PitchRange const& range, SpelledPitch const& p) {
    return p.key_number() >= range.low.key_number() && p.key_number() <= range.high.key_number();
}

SpelledPitch moved(SpelledPitch const& p, double semitones) { return transposed(p, semitones); }

std::string slashed(Vowel const& v) { return "/" + v.ipa() + "/"; }

/// How the plan has a vowel on a pitch of a slow scale; nothing where it keeps its shape there.
std::optional<Vowel> shade_on(VowelPlan const& vowel, Tuning const& tuning, SpelledPitch const& at) {
    for (auto const& cell : vowel.strip)
        if (tuning.name(cell.pitch).pitch.key_number() == at.key_number() &&
            cell.decision.advice == Advice::modify)
            return cell.decision.target.shade.plain();
    return std::nullopt;
}

std::string how_to_climb(Vowel const& own, Vowel const& low, Vowel const& high, std::string const& words) {
    if (high == own)
        return worded("begin on {0}; on the upper notes {1}; come back on the way down", slashed(own), words);
    if (low == own)
        return worded("begin on {0}; on the upper notes toward {1}, {2}; come back on the way down",
                      slashed(own), slashed(high), words);
    if (low == high)
        return worded("think {0}, from the first note on toward {1}, {2}: one shape, up and down",
                      slashed(own), slashed(high), words);
    return worded(
        "think {0}, begin toward {1}; on the upper notes toward {2}, {3}; come back on the way down",
        slashed(own), slashed(low), slashed(high), words);
}

/// Up to the note in question and down again; the vowel changes on the two upper notes.
std::optional<Exercise> scale_to(Plan const& plan, Watched const& watched) {
    auto const& planned = plan.notes[watched.note];
    auto const& top = plan.passage.notes[watched.note].spelled;
    auto const up = five_notes_up(moved(top, -7));
    auto const range = range_of(plan);
    if (!within(range, up.front()) || !within(range, up.back())) return std::nullopt;
    Exercise out{Exercise::Kind::scale, *planned.vowel, up, {}, {}, {}};
    out.notes.insert(out.notes.end(), up.rbegin() + 1, up.rend());
    auto const own = plan.vowels[*planned.vowel].resonances.vowel.plain();
    auto const shade = planned.decision->target.shade.plain();
    auto const low = shade_on(plan.vowels[*planned.vowel], plan.passage.tuning, up.front()).value_or(own);
    out.sung.assign(out.notes.size(), "");
    out.sung[0] = low.ipa();
    if (!(shade == low)) { // the two steps at the top
        out.sung[3] = shade.ipa();
        out.sung[6] = low.ipa();
    }
    out.how = how_to_climb(own, low, shade, watched.words);
    out.listen = shade == low && !(low == own)
                     ? worded("the top rings like the bottom, and the word would still be understood")
                     : worded("the top rings like the bottom, and no step is heard where the vowel changes");
    return out;
}

/// A third below the turning point to a third above it.
std::optional<Exercise> slide_through(Plan const& plan, std::size_t vowel) {
    auto const turn = plan.passage.tuning.name(plan.vowels[vowel].turning.pitch).pitch;
    auto const low = moved(turn, -4), high = moved(turn, 3);
    auto const range = range_of(plan);
    if (!within(range, low) || !within(range, high)) return std::nullopt;
    return Exercise{
        Exercise::Kind::slide,
        vowel,
        {low, high, low},
        {plan.vowels[vowel].resonances.vowel.plain().ipa(), "", ""},
        worded("slide slowly up and back on {0}, softly, and leave the mouth as it is",
               slashed(plan.vowels[vowel].resonances.vowel.plain())),
        worded("from about {0} on the sound closes by itself: let it, do not open for it", turn.str())};
}

} // namespace

std::vector<SpelledPitch> five_notes_up(SpelledPitch const& first) {
    auto const here = scale_on(first), next = scale_on(from_next_letter(first));
    return signs_of(next) < signs_of(here) ? next : here;
}

std::vector<Exercise> exercises_of(Plan const& plan, Pencil const& pencil) {
    std::vector<Exercise> out;
    std::set<std::size_t> changed, turned;
    for (auto const& watched : pencil.watch)
        if (out.size() < most_exercises && changed.insert(*plan.notes[watched.note].vowel).second)
            if (auto exercise = scale_to(plan, watched)) out.push_back(std::move(*exercise));
    for (auto const note : pencil.turns)
        if (auto const vowel = *plan.notes[note].vowel;
            out.size() < most_exercises && turned.insert(vowel).second)
            if (auto exercise = slide_through(plan, vowel)) out.push_back(std::move(*exercise));
    return out;
}

} // namespace vowelway::plan
