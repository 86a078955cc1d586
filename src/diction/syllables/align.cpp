// SPDX-License-Identifier: MIT
#include "diction/syllables/align.hpp"

#include "diction/syllables/grouping.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

double weight(Nucleus const& nucleus) {
    // Sonority of vowels: open over mid over close (Jespersen's scale, common practice).
    double const height = chart_place(nucleus.held.vowel).height; // 6 open .. 0 close
    double const schwa = nucleus.held.vowel.base == U'ə' ? -2 : 0;
    return height + schwa + (nucleus.stressed ? 8 : 0);
}

Vowel full(Vowel vowel) {
    vowel.glide = false;
    return vowel;
}

// What an unsounded vowel letter is sung as, when the score gives it a note.
std::optional<Vowel> letter_vowel(char32_t letter, Language language) {
    switch (letter) {
    case U'a':
        return vowel_of("a");
    case U'e':
        switch (language) {
        case Language::french:
        case Language::german:
            return vowel_of("ə");
        case Language::english:
            return vowel_of("ɪ");
        default:
            return vowel_of("e");
        }
    case U'i':
        return vowel_of("i");
    case U'o':
        return vowel_of("o");
    case U'u':
        return language == Language::french ? vowel_of("y") : vowel_of("u");
    case U'y':
        return vowel_of(language == Language::german ? "ʏ" : "i");
    case U'æ':
        return vowel_of("ɛ");
    case U'œ':
    case U'ø':
        return vowel_of("œ");
    default:
        return std::nullopt;
    }
}

std::size_t syllable_of(std::size_t letter, std::vector<LetterRange> const& syllables) {
    for (std::size_t s = 0; s < syllables.size(); ++s)
        if (letter < syllables[s].to) return s;
    return syllables.size() - 1;
}

// An e that speech drops and song restores: French e muet, English "blessed", German "gehet", "Blume" + "n".
bool restored_e(Word const& word, LetterRange range, Language language) {
    bool const sings_it =
        language == Language::french || language == Language::english || language == Language::german;
    if (!sings_it) return false;
    int e = 0;
    for (std::size_t i = range.from; i < range.to; ++i) {
        if (word[i].base == U'e' && !word[i].mark)
            ++e;
        else if (is_vowel_letter(word[i].base) && !(word[i].base == U'u' && i > range.from &&
                                                    (word[i - 1].base == U'q' || word[i - 1].base == U'g')))
            return false;
    }
    return e == 1;
}

/// A sound, the nucleus it belongs to, and its place in it.
struct Piece {
    Sound sound;
    std::size_t nucleus;
    enum class Role { before, held, after } role;
};
using Pieces = std::vector<Piece>; // of one syllable

/// Every sound to the syllable it is written in.
std::vector<Pieces> pieces_of(std::vector<Nucleus> const& nuclei, std::vector<LetterRange> const& syllables) {
    std::vector<Pieces> pieces(syllables.size());
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        auto const put = [&](Sound const& sound, Piece::Role role) {
            pieces[syllable_of(sound.letter, syllables)].push_back({sound, k, role});
        };
        for (auto const& sound : nuclei[k].before) put(sound, Piece::Role::before);
        put(nuclei[k].held, Piece::Role::held);
        for (auto const& sound : nuclei[k].after) put(sound, Piece::Role::after);
    }
    return pieces;
}

/// A held vowel with those of its glides that are written in the same syllable.
Nucleus with_its_glides(Piece const& held, Nucleus const& nucleus, Pieces const& pieces) {
    Nucleus one{{}, held.sound, {}, nucleus.optional, nucleus.stressed, nucleus.secondary};
    for (auto const& other : pieces) {
        if (other.nucleus != held.nucleus) continue;
        if (other.role == Piece::Role::before) one.before.push_back(other.sound);
        if (other.role == Piece::Role::after) one.after.push_back(other.sound);
    }
    return one;
}

/// Only glides: the first becomes the vowel.
Nucleus from_glides(Pieces const& pieces) {
    auto sound = pieces.front().sound;
    sound.vowel = full(sound.vowel);
    Nucleus one{{}, sound, {}};
    for (std::size_t i = 1; i < pieces.size(); ++i) one.after.push_back(pieces[i].sound);
    return one;
}

/// The vowels that are written in a syllable.
std::vector<Nucleus> vowels_of(Pieces const& pieces, std::vector<Nucleus> const& nuclei) {
    std::vector<Nucleus> here;
    for (auto const& piece : pieces) {
        if (piece.role != Piece::Role::held) continue;
        auto const& nucleus = nuclei[piece.nucleus];
        if (!(nucleus.optional && pieces.size() > 1)) here.push_back(with_its_glides(piece, nucleus, pieces));
    }
    if (here.empty() && !pieces.empty()) here.push_back(from_glides(pieces));
    return here;
}

/// Where nothing sounds the letters are taken at their word; without a vowel letter the neutral vowel carries
/// the consonants.
Nucleus from_letters(Word const& word, LetterRange range, Language language) {
    for (std::size_t i = range.from; i < range.to; ++i)
        if (auto const vowel = letter_vowel(word[i].base, language)) return {{}, {*vowel, i}, {}};
    return {{}, {vowel_of("ə"), range.from}, {}};
}

} // namespace

Nucleus meet(std::vector<Nucleus> const& nuclei, Language language) {
    std::vector<Nucleus> kept;
    for (auto const& nucleus : nuclei)
        if (language != Language::french || nucleus.held.vowel.base != U'ə') kept.push_back(nucleus);
    if (kept.empty()) kept.push_back(nuclei.back());
    std::size_t held = 0;
    for (std::size_t i = 1; i < kept.size(); ++i)
        if (weight(kept[i]) >= weight(kept[held])) held = i;
    Nucleus out = kept[held];
    std::vector<Sound> before;
    for (std::size_t i = 0; i < held; ++i) {
        before.insert(before.end(), kept[i].before.begin(), kept[i].before.end());
        before.push_back(kept[i].held);
        before.insert(before.end(), kept[i].after.begin(), kept[i].after.end());
    }
    out.before.insert(out.before.begin(), before.begin(), before.end());
    for (std::size_t i = held + 1; i < kept.size(); ++i) {
        out.after.insert(out.after.end(), kept[i].before.begin(), kept[i].before.end());
        out.after.push_back(kept[i].held);
        out.after.insert(out.after.end(), kept[i].after.begin(), kept[i].after.end());
    }
    return out;
}

Aligned align(std::vector<Nucleus> const& nuclei, Word const& word, std::vector<LetterRange> const& syllables,
              Language language) {
    Aligned out;
    out.syllables.resize(syllables.size());
    out.guessed.assign(syllables.size(), false);
    if (syllables.empty()) return out;
    std::size_t const certain = static_cast<std::size_t>(
        std::count_if(nuclei.begin(), nuclei.end(), [](Nucleus const& n) { return !n.optional; }));
    if (certain == syllables.size() || nuclei.size() == syllables.size()) {
        std::size_t s = 0;
        for (auto const& nucleus : nuclei)
            if (nuclei.size() == syllables.size() || !nucleus.optional) out.syllables[s++] = nucleus;
        return out;
    }
    auto const pieces = pieces_of(nuclei, syllables);
    bool regular = true;
    for (std::size_t s = 0; s < syllables.size(); ++s) {
        if (auto const here = vowels_of(pieces[s], nuclei); !here.empty()) {
            out.syllables[s] = meet(here, language);
            continue;
        }
        out.syllables[s] = from_letters(word, syllables[s], language);
        out.guessed[s] = !restored_e(word, syllables[s], language);
        regular = regular && !out.guessed[s];
    }
    if (!regular)
        out.explanation = std::to_string(certain) + " vowels for " + std::to_string(syllables.size()) +
                          " written syllables";
    return out;
}

} // namespace vowelway::diction
