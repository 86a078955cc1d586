// SPDX-License-Identifier: MIT
#include "plan/shared_words.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace vowelway::plan {

namespace {

constexpr double same_time = 0.01; // s

struct Begun {
    std::size_t part, note;
    SungNote const* sung;
    std::string letters;
};

/// The letters of a syllable, alike in whatever case and with whatever signs they are printed.
std::string bare_letters_of(SungNote const& note) {
    std::string out;
    for (char const c : note.text()) {
        auto const byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalpha(byte) != 0) out += static_cast<char>(std::tolower(byte));
    }
    return out;
}

std::vector<Begun> syllables_begun(std::vector<ChoirPart> const& parts) {
    std::vector<Begun> out;
    for (std::size_t p = 0; p < parts.size(); ++p) {
        auto const& plan = parts[p].plan;
        for (std::size_t n = 0; n < plan.notes.size(); ++n) {
            auto const& sung = plan.passage.notes[plan.notes[n].note];
            if (!plan.notes[n].decision || sung.melisma) continue;
            if (auto letters = bare_letters_of(sung); !letters.empty())
                out.push_back({p, n, &sung, std::move(letters)});
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](Begun const& a, Begun const& b) { return a.sung->start < b.sung->start; });
    return out;
}

/// How many parts sound at a time.
std::size_t sounding(std::vector<ChoirPart> const& parts, Duration at) {
    double const t = in_seconds(at);
    return static_cast<std::size_t>(std::count_if(parts.begin(), parts.end(), [&](ChoirPart const& part) {
        auto const& notes = part.plan.passage.notes;
        return std::any_of(notes.begin(), notes.end(), [&](SungNote const& n) {
            double const begin = in_seconds(n.start);
            return begin <= t + same_time && begin + in_seconds(n.length) > t + same_time;
        });
    }));
}

bool same_word(Begun const& a, Begun const& b) {
    return a.letters == b.letters && a.sung->vowel->held.quality() == b.sung->vowel->held.quality();
}

SharedWord word_of(std::vector<Begun> const& together, std::vector<ChoirPart> const& parts) {
    auto const& first = *together.front().sung;
    SharedWord out;
    out.syllable = first.text();
    out.vowel = first.vowel->held.quality();
    out.measure = first.measure;
    out.beat = first.beat;
    out.start = first.start;
    for (auto const& one : together) {
        out.length = std::max(out.length, one.sung->length);
        SungTogether section;
        section.part = one.part;
        section.note = one.note;
        out.sections.push_back(std::move(section));
    }
    std::sort(out.sections.begin(), out.sections.end(),
              [](SungTogether const& a, SungTogether const& b) { return a.part < b.part; });
    out.homophonic = out.sections.size() == sounding(parts, out.start);
    return out;
}

} // namespace

std::vector<SharedWord> shared_words(std::vector<ChoirPart> const& parts) {
    auto const begun = syllables_begun(parts);
    std::vector<SharedWord> out;
    for (std::size_t i = 0; i < begun.size();) {
        auto end = i + 1;
        while (end < begun.size() && in_seconds(begun[end].sung->start - begun[i].sung->start) < same_time)
            ++end;
        std::vector<bool> taken(end - i, false);
        for (auto a = i; a < end; ++a) {
            if (taken[a - i]) continue;
            std::vector<Begun> together;
            for (auto b = a; b < end; ++b)
                if (!taken[b - i] && same_word(begun[a], begun[b])) {
                    taken[b - i] = true;
                    together.push_back(begun[b]);
                }
            if (together.size() > 1) out.push_back(word_of(together, parts));
        }
        i = end;
    }
    return out;
}

Bark apart(HeardOffset const& a, HeardOffset const& b) {
    return acoustics::distance({a.openness, a.front}, {b.openness, b.front});
}

} // namespace vowelway::plan
