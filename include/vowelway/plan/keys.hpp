// SPDX-License-Identifier: MIT
// One song in every key that a singer might take it in, and which suits best.
// Threads: plain values.
#pragma once

#include "vowelway/core/wording.hpp"
#include "vowelway/plan/demand.hpp"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// What speaks against a key, each for a second of song. 1 is what losing every vowel would cost.
/// docs/strategy.md tells how each is found; their sizes are our judgement.
struct KeyTerms {
    double vowels = 0; ///< heard vowels lost, harmonics on the wrong side of fR1
    double level = 0;  ///< level missing against what the singer has at ease
    double work = 0;   ///< gestures, and moving between them
    double settle = 0; ///< long notes on a turn or a meeting, turns on the peak of a phrase
    double words = 0;  ///< time above F♯5, where listeners tell few vowels apart
    double high = 0;   ///< time above where the voice may dwell
    double low = 0;    ///< time below it: level and carrying power go
    double beyond = 0; ///< notes outside the comfortable range
    double total() const { return vowels + level + work + settle + words + high + low + beyond; }
};
struct KeyTermName {
    std::string_view name, words;
    double KeyTerms::*value;
};
inline constexpr std::array key_term_names{
    KeyTermName{"vowels", to_word("vowels lost"), &KeyTerms::vowels},
    KeyTermName{"level", to_word("level missing"), &KeyTerms::level},
    KeyTermName{"work", to_word("changes of shape"), &KeyTerms::work},
    KeyTermName{"settle", to_word("long notes on a turn"), &KeyTerms::settle},
    KeyTermName{"words", to_word("words too high to tell"), &KeyTerms::words},
    KeyTermName{"high", to_word("lies high"), &KeyTerms::high},
    KeyTermName{"low", to_word("lies low"), &KeyTerms::low},
    KeyTermName{"beyond", to_word("out of range"), &KeyTerms::beyond},
};

struct KeyPlan {
    int semitones = 0; ///< up from where the passage stands
    Demand demand;
    KeyTerms terms;
    SpelledPitch low, high;                ///< of the line in this key
    SpelledPitch quartile1, quartile3;     ///< its tessitura
    std::optional<int> fifths;             ///< its first signature, sharps positive; nothing without a staff
    std::vector<std::size_t> long_on_turn; ///< notes of a second or more on a turn or a meeting
};

struct KeysPlan {
    Singer singer;
    std::string technique;
    Passage passage;                    ///< as it stands: the key of 0 semitones
    std::optional<PitchRange> dwelling; ///< the pitches the voice may dwell on; nothing where nobody knows
    std::vector<KeyPlan> keys;          ///< lowest first
    std::vector<std::size_t> best;      ///< indices of `keys`, the best first
    Remarks remarks;

    KeyPlan const& recommended() const { return keys[best.front()]; }
    /// The key in which the passage stands; null where it is not among the keys.
    KeyPlan const* as_written() const;
    /// Keys as good as the recommended one: no dearer by more than `same_key`.
    std::size_t as_good() const;
};
/// What two keys may differ by and still be the same to us (our judgement).
inline constexpr double same_key = 0.01;

struct KeyRange {
    int lowest = 0, highest = 0; ///< semitones
};

/// Where a voice may dwell: for an average the tessitura of its type, for a singer whose range is known that
/// range less a minor third below and a fourth above (common practice, no source: as far as the tessiture of
/// the types lie within their ranges); else the tessitura of the type, and nothing for no type.
std::optional<PitchRange> dwelling_of(Singer const& singer);

/// Plans the passage of the request in every key of `keys`, or where none are given in those that keep the
/// line within the singer's range, at least five, and in its own. At most 49 keys. Throws InputError as
/// make_plan.
KeysPlan plan_keys(PlanRequest request, std::optional<KeyRange> keys = {}, Means const& means = {});

/// The passage of the request in one key. Errors as make_plan.
KeyPlan plan_key(PlanRequest request, int semitones, Means const& means = {});

/// "as written", "a semitone lower", "3 semitones higher", "an octave lower".
std::string words_of_key(int semitones);
/// "no signs", "3 sharps", "1 flat": the signature.
std::string words_of_signature(int fifths);

/// The passage moved by semitones: what is sung and its names, spelled for the signature with the fewest
/// signs; not its staff.
Passage in_key(Passage passage, int semitones);

/// What speaks most against the first key beside the second, in words, the weightiest first: "lies high".
std::vector<std::string_view> against(KeyPlan const& key, KeyPlan const& beside);

/// "lies high, vowels lost": what speaks most against the song as it stands beside the key proposed, `most`
/// things at most; empty where it stands in that key, or nothing does. In the language that is told.
std::string against_as_written(KeysPlan const& keys, std::size_t most);
/// The keys as good as the one proposed, in words: "a semitone lower, as written".
std::string as_good_words(KeysPlan const& keys);

/// One key for several singers: the semitones that leave the least well served singer closest to their best,
/// among the keys that all have. Nothing where they share none.
std::optional<int> common_key(std::vector<KeysPlan> const& singers);

} // namespace vowelway::plan
