// SPDX-License-Identifier: MIT
// Singers and voice types side by side: where each vowel turns and meets, and where they truly differ.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/plan/plan.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// One vowel of one singer.
struct ComparedVowel {
    VowelResonances resonances; ///< `estimated` where the singer has no entry of the vowel
    Crossing turning;           ///< 2fo = fR1
    Crossing meeting;           ///< fo = fR1
};

/// How two singers differ on a vowel. The turning points, the meetings and fR1 lie the same interval apart.
struct Difference {
    std::size_t first = 0, second = 0; ///< indices in Comparison::singers, first < second
    Cents r1, r2;                      ///< from the first up to the second
    Cents r1_sd, r2_sd;                ///< of that interval: both deviations, as variances
    double p_r1_higher = 0.5;          ///< P(the second's fR1 is the higher one), 0..1
    double p_r2_higher = 0.5;
};

/// Whether a probability of lying higher leaves no reasonable doubt either way: beyond 95 %.
constexpr bool clear(double p_higher) { return p_higher >= 0.95 || p_higher <= 0.05; }

struct ComparedRow {
    Vowel vowel;
    std::vector<std::optional<ComparedVowel>> of; ///< one for each singer; nothing where it cannot be told
    std::vector<Difference> differences;          ///< every pair of singers that has the vowel
};

struct Comparison {
    std::vector<Singer> singers;
    std::vector<ComparedRow> rows; ///< in the order of the chart's rim
    Remarks remarks;
};

/// A singer and, for vowels not measured, the voice type to estimate them from.
struct ComparedSinger {
    Singer singer;
    std::optional<Singer> reference;
};

/// Compares at least two singers (InputError otherwise) over the vowels given; when none are, over those that
/// the measured singers have, or where all are averages over /i e ɛ a ɑ ɔ o u/.
Comparison compare_singers(std::vector<ComparedSinger> singers, std::vector<Vowel> vowels = {});

/// Where the singing handbooks place the passaggio of a voice class. Generic: it knows no singer.
/// R. Miller, "The Structure of Singing" (1986), "Training Soprano Voices" (2000), "On the Art of Singing"
/// and later books, from memory; they differ by a semitone among themselves.
struct GenericPassaggio {
    std::string_view voice_class; ///< "lyric tenor"
    SpelledPitch first, second;
};
inline constexpr std::string_view generic_passaggio_label =
    "generic, from memory (R. Miller 1986, 2000); no singer was measured";

/// The passaggio of the lyric representative of a type; nothing for countertenor, treble and other.
std::optional<GenericPassaggio> generic_passaggio(VoiceType voice);

/// How a singer's resonances lie against a reference, over the vowels both have (estimated ones left out).
struct Placement {
    VoiceType voice = VoiceType::other;
    int vowels = 0;
    std::array<std::optional<Cents>, 3> above; ///< mean interval of fR1, fR2, fR3 above the reference's
    double distance =
        0; ///< rms of the intervals over both deviations: 1 is as far as such voices usually lie apart
};
/// The nearest first; references without a common vowel are left out.
std::vector<Placement> place_among(Singer const& singer, std::span<Singer const> references);

/// A tract length and how it was found.
struct TractLength {
    enum class From { given, upper_resonances, average_voices };
    Length length;
    std::optional<Length> sd; ///< nothing when it was given
    From from = From::given;
    int vowels = 0; ///< that it rests on
};
/// The length given in the profile; else from fR3 and fR4 of at least three vowels, as of a tube open at the
/// lips, L = (2k-1)c/4fRk with c = 350 m/s (Stevens 1998), averaged with weights 2k-1: the higher a
/// resonance, the less the vowel moves it (Lammert & Narayanan 2015, whose rms errors of 0.6 to 1.3 cm are
/// the reason for a deviation of 0.8 cm); else from the mean interval to the nearest reference with a known
/// length, fR going with the length to the power -0.83 (profiles/README.md), with a deviation of 1.2 cm (our
/// choice); nothing when there is none.
std::optional<TractLength> tract_length_of(Singer const& singer, std::span<Singer const> references);

} // namespace vowelway::plan
