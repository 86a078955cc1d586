// SPDX-License-Identifier: MIT
// All parts of a score together: each with its plan, where their vowels part at the same word, and one vowel
// that all can reach (docs/choir.md).
// Threads: plain values; choir_of may be called by any number at once.
#pragma once

#include "vowelway/core/technique.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/plan/plan.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::plan {

struct ChoirPart {
    std::string name;           ///< as printed: "Alto", "Soprano 2"
    std::string words_from;     ///< the part whose words it borrows, all or some; empty: its own
    bool voice_guessed = false; ///< who sings it was found from its name, order or range
    Plan plan;
};

/// How far two sections may be heard apart on one vowel and still be taken for one: our choice, where the
/// planner begins to call a vowel drifted. Single formants are told apart from about 0.3 Bark in ordinary
/// listening (Kewley-Port & Zheng 1999, from memory), but within one voice and pitch.
inline constexpr Bark heard_as_one{0.5};

/// One section on a word that several begin together.
struct SungTogether {
    std::size_t part = 0; ///< index of Choir::parts
    std::size_t note = 0; ///< index of its plan's notes
    HeardOffset heard;    ///< from its own spoken vowel, its plan followed
    bool leaves = false;  ///< stands apart from most of the others
    /// For the common vowel:
    HeardOffset common; ///< where it is heard then
    Vowel shade;        ///< the letter to aim at
    std::string ask;    ///< what it is asked to do: "jaw a little open"; empty: its plan, or no common vowel
    double extra = 0;   ///< what that costs beside its plan, as CostTerms; >= 0
};

/// A word that two sections or more begin together on the same vowel.
struct SharedWord {
    std::string syllable;
    Vowel vowel; ///< meant by all
    std::string measure;
    double beat = 1;
    Duration start{}, length{};         ///< the longest of its notes
    bool homophonic = false;            ///< all sections that sound then begin it together
    std::vector<SungTogether> sections; ///< in the order of the parts
    Bark apart;                         ///< the two that are farthest from each other, their plans followed
    std::string why;               ///< "the soprano has turned over, the others have not"; empty where one
    bool has_common = false;       ///< a vowel was found that all reach, heard as one
    Bark common_apart;             ///< the same with the common vowel
    double weight = 0;             ///< what to rehearse first: homophonic, far apart, long
    std::vector<std::size_t> also; ///< the same chord on the same vowel, later: indices of Choir::words
    bool parts_company() const { return apart > heard_as_one; }
};

/// A partial that several sections sing strongly at one time, or two that rub.
struct SharedPartial {
    struct Of {
        std::size_t section = 0; ///< index of SharedWord::sections
        int harmonic = 1;
        int resonance = 0; ///< 1 or 2: within two semitones of fR1 or fR2 as planned; 0: of neither
    };
    std::vector<Of> of;
    Frequency frequency; ///< of the lowest section's
    Cents spread;        ///< from the lowest to the highest; above `same_partial` they rub
    bool on_resonance() const;
};
inline constexpr Cents same_partial{25}; ///< our choice: above a tempered third's 14, below a heard beat's

/// A chord of three sections or more on one word.
struct Chord {
    std::size_t word = 0;                ///< index of Choir::words
    std::vector<SharedPartial> together; ///< coincide: the choir can tune by them; those on resonances first
    std::vector<SharedPartial> rubs;     ///< strong partials 25 to 150 cents apart
    std::vector<std::size_t> unsettled;  ///< sections whose fo or 2fo lies on fR1: the vowel tips there
};

struct Choir {
    std::vector<ChoirPart> parts;      ///< from the top of the page down, at least one
    std::vector<SharedWord> words;     ///< in the order sung
    std::vector<std::size_t> rehearse; ///< of them those whose vowels part, weightiest first, none twice
    std::vector<Chord> chords;         ///< in the order sung
    /// What was assumed, each thing once: what is common to all parts as it is, else with the part's name
    /// before it ("Alto: ..").
    Remarks remarks;
};

/// The parts of one score, planned with this technique, seen together.
Choir choir_of(std::vector<ChoirPart> parts, Technique const& technique, Means const& means = {});

/// "12 words are sung together; at 3 the vowels part."
std::string summary_of(Choir const& choir);

} // namespace vowelway::plan
