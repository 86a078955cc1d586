// SPDX-License-Identifier: MIT
#include "vowelway/plan/lesson.hpp"

#include "plan/exercises.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/plan/phrases.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace vowelway::plan {

namespace {

constexpr std::size_t most_phrases = 6;

struct Marked {
    std::vector<PencilMark const*> changes;
    bool turns = false;
};

Marked marks_in(Pencil const& pencil, PhraseNotes const& phrase) {
    Marked out;
    for (auto const& mark : pencil.marks) {
        if (mark.note < phrase.from || mark.note >= phrase.to) continue;
        out.turns = out.turns || mark.turns;
        if (!mark.turns && !mark.outside) out.changes.push_back(&mark);
    }
    return out;
}

double length_of(Plan const& plan, std::size_t note) { return in_seconds(plan.passage.notes[note].length); }

/// How far up in the singer's range a note lies, 0..1.
double height_of(Plan const& plan, std::size_t note) {
    auto const range = plan.singer.range.value_or(plan.range);
    double const low = range.low.key_number(), high = range.high.key_number();
    return std::clamp((plan.passage.notes[note].spelled.key_number() - low) / std::max(1.0, high - low), 0.0,
                      1.0);
}

/// What is to be done, by how far and how long and high; a turn counts as half a change.
double difficulty_of(Plan const& plan, Marked const& marked, PhraseNotes const& phrase) {
    double sum = marked.turns ? 0.5 * (0.5 + height_of(plan, phrase.peak)) : 0;
    for (auto const* mark : marked.changes)
        for (std::size_t i = mark->note; i <= mark->last && i < phrase.to; ++i) {
            auto const& d = plan.notes[i].decision;
            if (!d || d->advice != Advice::modify || d->gestures.empty()) continue;
            sum += std::sqrt(length_of(plan, i)) * (0.5 + height_of(plan, i)) *
                   (0.5 + std::abs(d->gestures.front().amount)) * (mark->sure ? 1 : 0.8);
        }
    return sum;
}

std::string why_of(Plan const& plan, Marked const& marked, PhraseNotes const& phrase) {
    auto const& peak = plan.passage.notes[phrase.peak];
    auto out = worded("up to {0}", peak.spelled.str());
    PencilMark const* farthest = nullptr;
    auto const amount = [&](PencilMark const& m) {
        return std::abs(plan.notes[m.note].decision->gestures.front().amount);
    };
    for (auto const* mark : marked.changes)
        if (!farthest || amount(*mark) > amount(*farthest)) farthest = mark;
    if (farthest)
        out += "; " + worded("{0} on {1}", in_short(plan.notes[farthest->note].decision->gestures),
                             plan.passage.notes[farthest->note].spelled.str());
    if (marked.changes.size() > 1) out += "; " + worded("{0} changes", marked.changes.size());
    if (marked.turns) out += "; " + worded("the vowel turns over");
    return out;
}

/// Letters only, so that a comma makes no other phrase.
std::string letters_of(std::string const& words) {
    std::string out;
    for (char const c : words)
        if (auto const small = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
            (small >= 'a' && small <= 'z') || static_cast<unsigned char>(c) >= 0x80)
            out += small;
    return out;
}

/// Letters left out, put in or changed on the way from one to the other.
std::size_t slips(std::string const& a, std::string const& b) {
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j < row.size(); ++j) row[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t before = row[0]++;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            auto const least = std::min({row[j] + 1, row[j - 1] + 1, before + (a[i - 1] != b[j - 1])});
            before = row[j];
            row[j] = least;
        }
    }
    return row.back();
}

/// A phrase that comes back: on the same notes and vowels, or on nearly the same words with the same highest
/// note. One letter in ten may differ (our judgement): a spelling, or a word of a verse.
bool same_phrase(Passage const& passage, LessonPhrase const& a, PhraseNotes const& b) {
    auto const& notes = passage.notes;
    bool same = a.to - a.from == b.to - b.from;
    double highest = -1e9;
    for (std::size_t i = a.from; i < a.to; ++i) highest = std::max(highest, notes[i].spelled.key_number());
    for (std::size_t i = 0; same && i < a.to - a.from; ++i) {
        auto const &x = notes[a.from + i], &y = notes[b.from + i];
        same = x.spelled == y.spelled && x.vowel == y.vowel;
    }
    if (same || highest != notes[b.peak].spelled.key_number()) return same;
    auto const one = letters_of(a.words), other = letters_of(words_of(passage, b));
    return !one.empty() && 10 * slips(one, other) <= std::max(one.size(), other.size());
}

/// Of a phrase that comes back the harder place is told, and where the others are.
void add_again(LessonPhrase& known, LessonPhrase&& again) {
    if (again.difficulty > known.difficulty) {
        again.again = std::move(known.again);
        again.again.push_back(known.bars);
        known = std::move(again);
    } else {
        known.again.push_back(again.bars);
    }
}

std::vector<LessonPhrase> ranked(Plan const& plan, Pencil const& pencil) {
    std::vector<LessonPhrase> out;
    auto const& passage = plan.passage;
    for (auto const& phrase : phrases_of(passage)) {
        auto const marked = marks_in(pencil, phrase);
        double const difficulty = difficulty_of(plan, marked, phrase);
        if (!(difficulty > 0)) continue;
        LessonPhrase told{phrase.from,
                          phrase.to,
                          bars_of(passage, phrase),
                          words_of(passage, phrase),
                          difficulty,
                          why_of(plan, marked, phrase),
                          {}};
        auto const same = std::find_if(out.begin(), out.end(),
                                       [&](auto const& p) { return same_phrase(passage, p, phrase); });
        if (same != out.end())
            add_again(*same, std::move(told));
        else
            out.push_back(std::move(told));
    }
    std::stable_sort(out.begin(), out.end(),
                     [](auto const& a, auto const& b) { return a.difficulty > b.difficulty; });
    if (out.size() > most_phrases) out.resize(most_phrases);
    return out;
}

/// The pitch below which a share of the time is sung.
SpelledPitch quantile(Passage const& passage, double share) {
    std::vector<std::pair<double, std::size_t>> by_key;
    double all = 0;
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        by_key.emplace_back(passage.notes[i].spelled.key_number(), i);
        all += in_seconds(passage.notes[i].length);
    }
    std::sort(by_key.begin(), by_key.end());
    double sum = 0;
    for (auto const& [key, i] : by_key)
        if ((sum += in_seconds(passage.notes[i].length)) >= share * all) return passage.notes[i].spelled;
    return passage.notes[by_key.back().second].spelled;
}

std::string where_it_lies(Passage const& passage) {
    auto const by_key = [](SungNote const& a, SungNote const& b) {
        return a.spelled.key_number() < b.spelled.key_number();
    };
    auto const [low, high] = std::minmax_element(passage.notes.begin(), passage.notes.end(), by_key);
    return worded("{0} to {1}; half of the time between {2} and {3}.", low->spelled.str(),
                  high->spelled.str(), quantile(passage, 0.25).str(), quantile(passage, 0.75).str());
}

std::string hardest_place(Plan const& plan, Pencil const& pencil) {
    if (pencil.watch.empty()) return worded("No note stands out: work on line, breath and words.");
    auto const& w = pencil.watch.front();
    auto const& note = plan.passage.notes[w.note];
    return worded("Hardest: bar {0}, {1} on /{2}/: {3}.", note.measure, note.spelled.str(),
                  note.vowel->held.plain().ipa(), w.words);
}

} // namespace

Lesson lesson_of(Plan plan) {
    if (plan.passage.notes.empty())
        throw InputError(worded("a lesson needs notes, and this plan is of a range only"),
                         worded("give a score"));
    auto const pencil = pencil_of(plan);
    Lesson out{
        .plan = {},
        .in_brief = {where_it_lies(plan.passage), summary_of(plan, pencil), hardest_place(plan, pencil)},
        .phrases = ranked(plan, pencil),
        .order = {},
        .exercises = exercises_of(plan, pencil),
        .cautions = pencil.cautions};
    // What is learnt on the easiest phrase helps on the next.
    for (std::size_t i = out.phrases.size(); i-- > 0;) out.order.push_back(i);
    out.plan = std::move(plan);
    return out;
}

} // namespace vowelway::plan
