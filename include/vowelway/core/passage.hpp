// SPDX-License-Identifier: MIT
// A passage: the notes to sing, their syllables and vowels, and the staff they were read from.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/notation.hpp"
#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"
#include "vowelway/core/vowel.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway {

/// A syllable of the text as written under a note.
struct Syllable {
    enum class Part { single, begin, middle, end }; ///< its place in the word
    std::string text;                               ///< without hyphens, verse number or elision sign
    Part part = Part::single;
    friend bool operator==(Syllable const&, Syllable const&) = default;
};

/// Where the vowel of a note comes from; what is weaker than `rule` counts as a guess.
enum class VowelOrigin {
    typed,       ///< IPA in the score's lyric or in the passage file
    override_,   ///< the teacher's own word list
    rule,        ///< spelling rules of the language that leave no doubt
    synthesiser, ///< letter-to-sound rules of the speech synthesiser
    guessed,     ///< the transcription and the written syllables did not agree, or the word is unknown
};
std::string_view to_string(VowelOrigin origin);

/// What is sung on a note: the vowel that is held, and what passes before and after it.
struct SungVowel {
    Vowel held;
    std::vector<Vowel>
        before; ///< passed quickly into the held vowel (first part of an elision, rising diphthong)
    std::vector<Vowel> after; ///< the glide out of it (falling diphthong)
    VowelOrigin origin = VowelOrigin::typed;
    friend bool operator==(SungVowel const&, SungVowel const&) = default;
};

/// One sung note: ties are merged, rests are gaps between notes.
struct SungNote {
    Pitch pitch;                ///< sounding: octave clef, transposing part and --transpose applied
    SpelledPitch spelled;       ///< the sounding pitch with the score's spelling
    std::string measure{};      ///< bar number as printed
    double beat = 1;            ///< 1-based, in beats of the time signature's lower number
    Duration start{}, length{}; ///< from the start of the passage, in performed tempo, repeats sung once
    bool grace = false;
    bool melisma = false;                   ///< continues the syllable of the note before
    std::vector<Syllable> syllables{};      ///< more than one for an elision; empty on a melisma
    std::optional<std::string> typed_ipa{}; ///< IPA found in the score or the passage file for this note
    std::optional<double> dynamic{};  ///< steps from mezzo-forte: p -2, mp -1, mf 0, f +1; hairpins between
    std::optional<SungVowel> vowel{}; ///< nothing: unknown, or hummed
    bool hummed = false;              ///< closed lips: no vowel to plan

    /// The syllables joined for display: "mi‿a-", "mi-", "-a"; empty on a melisma.
    std::string text() const;
};

struct Passage {
    std::string title, composer, part, verse; ///< as far as the source says
    std::string language;                     ///< BCP 47 primary tag ("it", "de"), empty when unknown
    Tuning tuning;
    double transposed = 0;      ///< semitones from the score's sounding pitch to what is sung
    std::string transposed_why; ///< "a man's part in the treble clef"; "as asked"; empty when not transposed
    std::vector<SungNote> notes;
    Staff staff;     ///< empty when the passage has no score (a range)
    Remarks remarks; ///< what was assumed while reading
};

/// "sung an octave lower than written"; empty where it is sung as written.
std::string transposition_of(Passage const& passage);

/// Lowest and highest sung pitch. Throws InputError on an empty passage.
std::pair<Pitch, Pitch> compass(Passage const& passage);

} // namespace vowelway
