// SPDX-License-Identifier: MIT
#include "vowelway/plan/pencil.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/plan/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

// What is worth a pencil: common practice, no source; the sizes are our judgement.
constexpr double felt = 0.15;        // of a gesture's travel: less is "very slightly" and is left alone
constexpr double sure_enough = 0.75; // of the draws
constexpr std::size_t most_in_a_phrase = 2; // nobody thinks of more in one breath
constexpr double near_turn = 5.5; // semitones: up to a fourth past it the note still lies near the turn
constexpr double held_note = 1.0, long_enough = 0.6, exposed_note = 0.35; // seconds

double seconds_of(Plan const& plan, std::size_t note) { return in_seconds(plan.passage.notes[note].length); }

/// Notes next to each other in a phrase that ask for one and the same.
struct PencilRun {
    std::size_t from = 0, last = 0;
    std::size_t lead = 0; ///< its peak of the phrase, else its longest note
    double sung = 0;      ///< seconds
    bool exposed = false; ///< the phrase's highest note is in it
    std::string words;
};

bool to_do(Plan const& plan, std::size_t note) {
    auto const& d = plan.notes[note].decision;
    return d && d->advice == Advice::modify && !d->gestures.empty() &&
           std::abs(d->gestures.front().amount) >= felt;
}

bool asks_the_same(Plan const& plan, PencilRun const& run, std::size_t note) {
    return run.last + 1 == note && plan.notes[run.from].vowel == plan.notes[note].vowel &&
           plan.notes[run.from].decision->target.shade == plan.notes[note].decision->target.shade &&
           run.words == in_short(plan.notes[note].decision->gestures);
}

std::vector<PencilRun> runs_of(Plan const& plan, PhraseNotes const& phrase) {
    std::vector<PencilRun> runs;
    for (std::size_t i = phrase.from; i < phrase.to; ++i) {
        if (!to_do(plan, i)) continue;
        if (runs.empty() || !asks_the_same(plan, runs.back(), i))
            runs.push_back({i, i, i, 0, false, in_short(plan.notes[i].decision->gestures)});
        auto& run = runs.back();
        run.last = i;
        run.sung += seconds_of(plan, i);
        if (i == phrase.peak && seconds_of(plan, i) >= exposed_note) {
            run.exposed = true;
            run.lead = i;
        } else if (!run.exposed && seconds_of(plan, i) > seconds_of(plan, run.lead))
            run.lead = i;
    }
    return runs;
}

bool is_sure(Plan const& plan, std::size_t note) {
    return !(plan.notes[note].decision->certainty < sure_enough);
}

/// A short note is not worth a sign, and what is unsure only where there is time to try it.
bool worth_pencil(Plan const& plan, PencilRun const& run) {
    return is_sure(plan, run.lead) ? run.exposed || run.sung >= long_enough : run.sung >= held_note;
}

bool worth_watching(Plan const& plan, PencilRun const& run) {
    bool const is_long = seconds_of(plan, run.lead) >= held_note;
    return worth_pencil(plan, run) && (is_long || (run.exposed && is_sure(plan, run.lead)));
}

double weight_of(Plan const& plan, PencilRun const& run) {
    double const amount = std::abs(plan.notes[run.lead].decision->gestures.front().amount);
    return std::sqrt(std::min(4.0, seconds_of(plan, run.lead))) * (run.exposed ? 1.5 : 1) *
           (0.5 + std::min(1.0, amount)) * (is_sure(plan, run.lead) ? 1 : 0.6);
}

/// Those of a phrase worth a pencil, the weightiest of them, in the order sung.
std::vector<PencilRun> chosen_of(Plan const& plan, PhraseNotes const& phrase) {
    auto runs = runs_of(plan, phrase);
    std::erase_if(runs, [&](PencilRun const& run) { return !worth_pencil(plan, run); });
    std::stable_sort(runs.begin(), runs.end(), [&](PencilRun const& a, PencilRun const& b) {
        return weight_of(plan, a) > weight_of(plan, b);
    });
    if (runs.size() > most_in_a_phrase) runs.erase(runs.begin() + most_in_a_phrase, runs.end());
    std::sort(runs.begin(), runs.end(),
              [](PencilRun const& a, PencilRun const& b) { return a.from < b.from; });
    return runs;
}

/// The letter alone: at arm's length nobody reads the signs under it, and the words say what they mean.
std::optional<Vowel> vowel_to_write(Plan const& plan, std::size_t note) {
    auto const shade = plan.notes[note].decision->target.shade.plain();
    if (shade == plan.passage.notes[note].vowel->held.plain()) return std::nullopt;
    return shade;
}

/// Adds the mark of a run to those of its phrase; where it would say what was just said, that goes on.
void pencil_run(Plan const& plan, PencilRun const& run, std::string& said, std::vector<PencilMark>& marks) {
    PencilMark mark{.note = run.from, .last = run.last, .vowel = vowel_to_write(plan, run.from)};
    if (run.words != said) mark.words = run.words;
    mark.sure = is_sure(plan, run.lead);
    if (mark.vowel || !mark.words.empty())
        marks.push_back(std::move(mark));
    else if (!marks.back().vowel)
        marks.back().last = run.last;
    said = run.words;
}

bool same_place(Plan const& plan, Watched const& w, std::size_t lead, std::string const& words) {
    auto const &a = plan.notes[w.note], &b = plan.notes[lead];
    return plan.passage.notes[w.note].spelled == plan.passage.notes[lead].spelled && a.vowel == b.vowel &&
           a.decision->target.shade == b.decision->target.shade && w.words == words;
}

void watch(Plan const& plan, PencilRun const& run, std::vector<Watched>& list) {
    double const weight = weight_of(plan, run);
    for (auto& w : list)
        if (same_place(plan, w, run.lead, run.words)) {
            w.also.push_back(run.lead);
            w.weight = std::max(w.weight, weight);
            return;
        }
    list.push_back({run.lead, {}, run.words, weight});
}

/// From where on a vowel's turn is a matter of the passaggio: a tone below its lower end in the handbooks,
/// else the middle of the range. Below it close vowels turn, unheard: nobody marks that a tenor's /i/ has
/// turned.
double turns_matter_from(Plan const& plan, PitchRange const& range) {
    if (auto const passaggio = generic_passaggio(plan.singer.voice)) return passaggio->first.key_number() - 2;
    return (range.low.key_number() + range.high.key_number()) / 2.0;
}

/// Where it turns is worth a sign on a note that can be heard, in the upper two thirds of the voice, near the
/// turn.
bool turn_worth_pencil(Plan const& plan, PhraseNotes const& phrase, std::size_t note) {
    auto const range = plan.singer.range.value_or(plan.range);
    double const low = range.low.key_number(), high = range.high.key_number();
    auto const turn =
        plan.passage.tuning.key_number(plan.vowels[*plan.notes[note].vowel].turning.pitch.frequency());
    auto const key = plan.passage.notes[note].spelled.key_number();
    bool const heard = seconds_of(plan, note) >= long_enough ||
                       (note == phrase.peak && seconds_of(plan, note) >= exposed_note);
    // what rounding to a name may hide is no reason to leave a vowel out
    return heard && key >= low + (high - low) / 3 && key < turn + near_turn &&
           turn >= turns_matter_from(plan, range) - 0.5;
}

/// The first note of a phrase above the singer's range and the first below it.
void mark_outside(Plan const& plan, PhraseNotes const& phrase, std::vector<PencilMark>& marks) {
    if (!plan.singer.range) return;
    auto const& range = *plan.singer.range;
    bool above = false, below = false;
    for (std::size_t i = phrase.from; i < phrase.to; ++i) {
        double const key = plan.passage.notes[i].spelled.key_number();
        bool const high = key > range.high.key_number() && !above;
        bool const low = key < range.low.key_number() && !below;
        above = above || high;
        below = below || low;
        if (high || low)
            marks.push_back({.note = i,
                             .last = i,
                             .words = high ? worded("above your range") : worded("below your range"),
                             .outside = true});
    }
}

/// Sources of what is said of the voice: docs/limits.md; of the jaw: common practice, no source.
std::vector<std::string> cautions_of(Plan const& plan, Pencil const& pencil) {
    std::vector<std::string> out;
    auto const any = [&](auto test) { return std::any_of(pencil.marks.begin(), pencil.marks.end(), test); };
    if (any([](PencilMark const& m) { return m.outside; }))
        out.push_back(worded(
            "Some notes lie outside the range of {0}: take another key, or leave them out; do not force "
            "them.",
            plan.singer.range->str()));
    auto const wide_jaw = reworded(to_word("jaw wide"));
    if (any([&](PencilMark const& m) { return m.words.find(wide_jaw) != std::string::npos; }))
        out.push_back(
            worded("Jaw wide: only as far as it drops by itself, without pull or click. If it hurts, "
                   "stop, and ask a dentist or doctor."));
    return out;
}

} // namespace

bool turns_here(Plan const& plan, std::size_t note) {
    auto const& d = plan.notes[note].decision;
    return d && d->turns_here && d->advice != Advice::modify;
}

Pencil pencil_of(Plan const& plan) {
    Pencil out;
    for (auto const& phrase : phrases_of(plan.passage)) {
        std::string said;
        for (auto const& run : chosen_of(plan, phrase)) {
            pencil_run(plan, run, said, out.marks);
            if (worth_watching(plan, run)) watch(plan, run, out.watch);
        }
        bool turned = false; // the first turn of a phrase tells the rest
        for (std::size_t i = phrase.from; i < phrase.to && !turned; ++i) {
            turned = turns_here(plan, i) && turn_worth_pencil(plan, phrase, i);
            if (turned) out.turns.push_back(i);
        }
        mark_outside(plan, phrase, out.marks);
        if (turned) out.marks.push_back({.note = out.turns.back(), .last = out.turns.back(), .turns = true});
    }
    std::stable_sort(out.marks.begin(), out.marks.end(),
                     [](auto const& a, auto const& b) { return a.note < b.note; });
    std::stable_sort(out.watch.begin(), out.watch.end(),
                     [](auto const& a, auto const& b) { return a.weight > b.weight; });
    out.cautions = cautions_of(plan, out);
    if (out.watch.size() > most_watched) out.watch.resize(most_watched);
    return out;
}

std::string bars_of(Passage const& passage, std::vector<std::size_t> const& notes) {
    std::vector<std::string> bars;
    for (auto const i : notes)
        if (auto const& bar = passage.notes[i].measure; bars.empty() || bars.back() != bar)
            bars.push_back(bar);
    if (bars.size() == 1) return worded("bar {0}", bars.front());
    std::string listed;
    for (std::size_t i = 0; i < bars.size(); ++i)
        listed = i == 0                 ? bars[i]
                 : i + 1 == bars.size() ? worded("{0} and {1}", listed, bars[i])
                                        : listed + ", " + bars[i];
    return worded("bars {0}", listed);
}

std::string summary_of(Plan const& plan, Pencil const& pencil) {
    std::size_t changes = 0;
    for (auto const& mark : pencil.marks) changes += mark.turns || mark.outside ? 0 : 1;
    auto out = changes == 0   ? worded("Nothing to change")
               : changes == 1 ? worded("One place to change")
                              : worded("{0} places to change", changes);
    if (pencil.turns.size() > 6)
        out += "; " + worded("the vowel turns over {0} times", pencil.turns.size());
    else if (!pencil.turns.empty())
        out += "; " + worded("the vowel turns over in {0}", bars_of(plan.passage, pencil.turns));
    return out + ".";
}

} // namespace vowelway::plan
