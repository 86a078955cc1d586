// SPDX-License-Identifier: MIT
#include "vowelway/report/find_note.hpp"

#include "core/ranges.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace vowelway::report {

namespace {

std::string beat_text(double beat) { return fmt::format("{:g}", std::round(beat * 1000) / 1000); }

std::string where(SungNote const& note) {
    auto const text = note.text();
    return worded("bar {0}, beat {1}", note.measure, beat_text(note.beat)) + " (" +
           (text.empty() ? note.spelled.str() : worded("{0} on {1}", text, note.spelled.str())) + ")";
}

bool may_be_explained(SungNote const& note) { return note.vowel.has_value(); }

// Place of a bar in the score, or, where it is not known, its number.
double order_of(Passage const& passage, std::string const& measure) {
    auto const& bars = passage.staff.measures;
    auto const at = ranges::find(bars, measure, &StaffMeasure::number);
    if (at != bars.end()) return static_cast<double>(at - bars.begin());
    char* end = nullptr;
    double const number = std::strtod(measure.c_str(), &end);
    return bars.empty() && end != measure.c_str() ? number : std::nan("");
}

/// The sung notes next to what was asked for.
struct Neighbours {
    SungNote const *before = nullptr, *after = nullptr;
};

Neighbours neighbours_of(Passage const& passage, double bar, double beat) {
    Neighbours out;
    for (auto const& note : passage.notes) {
        if (!may_be_explained(note)) continue;
        double const at = order_of(passage, note.measure);
        bool const earlier = at < bar || (at == bar && note.beat < beat);
        if (earlier)
            out.before = &note;
        else if (!out.after)
            out.after = &note;
    }
    return out;
}

std::string remedy_for(Passage const& passage, NoteAsked const& asked) {
    double const bar = order_of(passage, asked.measure);
    auto const first = ranges::find_if(passage.notes, may_be_explained);
    if (first == passage.notes.end()) return worded("the passage has no note with a vowel");
    if (std::isnan(bar)) {
        auto const last = std::find_if(passage.notes.rbegin(), passage.notes.rend(), may_be_explained);
        return worded("there is no such bar; the sung notes go from {0} to {1}", where(*first), where(*last));
    }
    auto const [before, after] = neighbours_of(passage, bar, asked.beat);
    if (before && after) return worded("the nearest are {0} and {1}", where(*before), where(*after));
    return worded("the nearest is {0}", where(before ? *before : *after));
}

} // namespace

std::size_t find_note(Passage const& passage, NoteAsked const& asked) {
    auto const at = ranges::find_if(passage.notes, [&](SungNote const& note) {
        return may_be_explained(note) && note.measure == asked.measure &&
               (asked.beat <= 0 || std::abs(note.beat - asked.beat) < 0.01);
    });
    if (at != passage.notes.end()) return static_cast<std::size_t>(at - passage.notes.begin());
    throw InputError(worded("no note with a vowel begins at {0}",
                            asked.beat > 0 ? worded("bar {0}, beat {1}", asked.measure, beat_text(asked.beat))
                                           : worded("bar {0}", asked.measure)),
                     remedy_for(passage, asked), {.file = asked.score, .musical = {}});
}

} // namespace vowelway::report
