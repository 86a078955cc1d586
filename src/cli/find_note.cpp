// SPDX-License-Identifier: MIT
#include "cli/find_note.hpp"

#include "vowelway/core/error.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace vowelway::cli {

namespace {

std::string beat_text(double beat) { return fmt::format("{:g}", std::round(beat * 1000) / 1000); }

std::string where(SungNote const& note) {
    auto const text = note.text();
    return fmt::format("bar {}, beat {} ({}{})", note.measure, beat_text(note.beat),
                       text.empty() ? "" : text + " on ", note.spelled.str());
}

bool may_be_explained(SungNote const& note) { return note.vowel.has_value(); }

// Place of a bar in the score, or, where it is not known, its number.
double order_of(Passage const& passage, std::string const& measure) {
    auto const& bars = passage.staff.measures;
    auto const at = std::ranges::find(bars, measure, &StaffMeasure::number);
    if (at != bars.end()) return static_cast<double>(at - bars.begin());
    char* end = nullptr;
    double const number = std::strtod(measure.c_str(), &end);
    return bars.empty() && end != measure.c_str() ? number : std::nan("");
}

[[noreturn]] void refuse(Passage const& passage, NoteAsked const& o) {
    SungNote const *before = nullptr, *after = nullptr;
    double const bar = order_of(passage, o.measure);
    for (auto const& note : passage.notes) {
        if (!may_be_explained(note)) continue;
        double const at = order_of(passage, note.measure);
        bool const earlier = at < bar || (at == bar && note.beat < o.beat);
        if (earlier)
            before = &note;
        else if (!after)
            after = &note;
    }
    auto const asked = fmt::format("bar {}{}", o.measure, o.beat > 0 ? ", beat " + beat_text(o.beat) : "");
    std::string remedy = "the passage has no note with a vowel";
    if (std::isnan(bar)) {
        auto const first = std::ranges::find_if(passage.notes, may_be_explained);
        auto const last =
            std::ranges::find_if(passage.notes.rbegin(), passage.notes.rend(), may_be_explained);
        if (first != passage.notes.end())
            remedy = fmt::format("there is no such bar; the sung notes go from {} to {}", where(*first),
                                 where(*last));
    } else if (before && after) {
        remedy = fmt::format("the nearest are {} and {}", where(*before), where(*after));
    } else if (before || after) {
        remedy = fmt::format("the nearest is {}", where(before ? *before : *after));
    }
    throw InputError("no note with a vowel begins at " + asked, remedy, {.file = o.score, .musical = {}});
}

} // namespace

std::size_t find_note(Passage const& passage, NoteAsked const& o) {
    auto const at = std::ranges::find_if(passage.notes, [&](SungNote const& note) {
        return may_be_explained(note) && note.measure == o.measure &&
               (o.beat <= 0 || std::abs(note.beat - o.beat) < 0.01);
    });
    if (at == passage.notes.end()) refuse(passage, o);
    return static_cast<std::size_t>(at - passage.notes.begin());
}

} // namespace vowelway::cli
