// SPDX-License-Identifier: MIT
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/sung_parts.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace vowelway::io {

namespace {

constexpr long same_time = 5; // ms: two lines of one score have the same beats, apart from rounding

long millisecond(SungNote const& note) { return std::lround(in_seconds(note.start) * 1000); }

/// The notes of a line on which a syllable begins, by their time.
class Syllables {
  public:
    explicit Syllables(Passage const& line) {
        for (auto const& note : line.notes)
            if (!note.syllables.empty() || note.typed_ipa || note.hummed) notes_[millisecond(note)] = &note;
    }
    SungNote const* at(SungNote const& note) const {
        auto const found = notes_.lower_bound(millisecond(note) - same_time);
        return found != notes_.end() && found->first <= millisecond(note) + same_time ? found->second
                                                                                      : nullptr;
    }
    std::size_t shared(Passage const& line) const {
        return static_cast<std::size_t>(std::count_if(line.notes.begin(), line.notes.end(),
                                                      [&](SungNote const& n) { return at(n) != nullptr; }));
    }

  private:
    std::map<long, SungNote const*> notes_;
};

bool has_word(SungNote const& note) { return !note.syllables.empty() || note.typed_ipa || note.hummed; }

void take(SungNote& note, SungNote const* with, bool begun) {
    note.melisma = !with && begun;
    note.syllables = with ? with->syllables : std::vector<Syllable>{};
    note.typed_ipa = with ? with->typed_ipa : std::nullopt;
    note.hummed = with && with->hummed;
}

/// Where the bar that begins with note `from` ends.
std::size_t end_of_bar(Passage const& line, std::size_t from) {
    auto end = from;
    while (end < line.notes.size() && line.notes[end].measure == line.notes[from].measure) ++end;
    return end;
}

bool comes_again(std::string const& bar) { return !bar.empty() && bar.back() == ')'; }

/// Whether the bar [from, end) of a line is to be given words.
bool wants(Passage const& line, std::size_t from, std::size_t end, Syllables const& theirs, Wanting wanting) {
    if (wanting == Wanting::everywhere) return true;
    std::size_t own = 0, together = 0;
    for (auto i = from; i < end; ++i) {
        own += has_word(line.notes[i]) ? 1 : 0;
        together += theirs.at(line.notes[i]) ? 1 : 0;
    }
    if (wanting == Wanting::later) return comes_again(line.notes[from].measure) && 2 * together >= end - from;
    return own == 0 && together >= 2 && 4 * together >= 3 * (end - from);
}

/// A line that has words of its own for two thirds of what it sings together with the other keeps them.
bool is_texted(Passage const& line, Syllables const& theirs) {
    std::size_t own = 0, together = 0;
    for (auto const& note : line.notes)
        if (theirs.at(note)) {
            ++together;
            own += has_word(note) ? 1 : 0;
        }
    return 3 * own >= 2 * together;
}

void forget_that_it_has_none(Passage& line) {
    auto const none = worded("the part has no words: the vowels are unknown");
    auto& remarks = line.remarks;
    remarks.erase(
        std::remove_if(remarks.begin(), remarks.end(), [&](Remark const& r) { return r.text == none; }),
        remarks.end());
}

} // namespace

Borrowed borrow_words(Passage& line, std::vector<Passage const*> const& others, Wanting wanting) {
    Passage const* best = nullptr;
    std::size_t most = 0;
    for (auto const* other : others)
        if (auto const shared = other == &line ? 0 : Syllables(*other).shared(line); shared > most) {
            most = shared;
            best = other;
        }
    if (!best || 2 * most < line.notes.size()) return {};
    Syllables const theirs(*best);
    if (wanting == Wanting::gaps && is_texted(line, theirs)) return {};
    Borrowed out{best, 0};
    for (std::size_t from = 0; from < line.notes.size();) {
        auto const end = end_of_bar(line, from);
        bool begun = from > 0 && (has_word(line.notes[from - 1]) || line.notes[from - 1].melisma);
        if (wants(line, from, end, theirs, wanting))
            for (auto i = from; i < end; ++i) {
                auto const* with = theirs.at(line.notes[i]);
                take(line.notes[i], with, begun);
                begun |= with != nullptr;
                out.syllables += with ? 1 : 0;
            }
        from = end;
    }
    if (out.syllables == 0) return {};
    forget_that_it_has_none(line);
    if (line.language.empty()) line.language = best->language;
    return out;
}

} // namespace vowelway::io
