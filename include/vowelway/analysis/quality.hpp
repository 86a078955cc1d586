// SPDX-License-Identifier: MIT
// Is this probe a good one? In numbers, and in a teacher's words.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/excitation.hpp"
#include "vowelway/analysis/expectation.hpp"
#include "vowelway/analysis/steady.hpp"
#include "vowelway/core/units.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::analysis {

/// One thing to say of a probe, and what to try.
struct Finding {
    enum class Kind {
        noisy,         ///< a resonance hardly above the background
        low_missing,   ///< the low resonance is weak or not found
        high_missing,  ///< the high resonance is weak or not found
        narrow,        ///< the excitation leaves parts of the spectrum empty
        unsteady,      ///< the vowel moves
        short_,        ///< hardly long enough
        clipped,       ///< the recording is overdriven
        all_high,      ///< all resonances above the reference: raised larynx, spread lips, shortened tract
        tongue_back,   ///< fR2 low, and the noise dull or the high band weak
        close_whisper, ///< fR1 of a whispered close vowel
        scattered,     ///< repeats disagree
        noise_in_front ///< the noise of a whisper is made in the mouth, not in the throat
    };
    Kind kind;
    std::string says; ///< with its number
    std::string tries;
};
std::string_view to_string(Finding::Kind kind);

struct ProbeQuality {
    std::optional<Decibels> low_above_floor,
        high_above_floor; ///< level around F1 and F2 above that of the pauses
    Decibels balance;     ///< level around F1 less level around F2
    std::optional<Decibels>
        source_balance; ///< of a whisper: `balance` less that of even noise through these formants
    double filled =
        1; ///< share of 16 bands from 200 Hz to a little above F3 at least 6 dB above the floor, 0..1
    Decibels relief; ///< highest less lowest band, the slope taken off: hardly any in mere noise
    Decibels unsteadiness;
    Duration length; ///< of the steady part
    std::array<std::optional<double>, 3>
        height;                    ///< ln(F / expected) in spreads of the expectation; + is high
    std::vector<Finding> findings; ///< empty: a good probe
};

/// What is looked at to judge one probe. `noise` is the spectrum of the pauses, if there were any.
struct ProbeEvidence {
    PowerSpectrum const& spectrum; ///< average, of the steady part
    PowerSpectrum const* noise = nullptr;
    SteadyPart part;
    bool clipped = false;
    Excitation excitation;
    FormantReading reading;
    Expectation expectation;
    Vowel vowel;
};
ProbeQuality judge(ProbeEvidence const& evidence);

/// Repeats further apart than this are worth a word: a good probe of a vowel repeats within about a semitone
/// (common practice, no source).
inline constexpr Cents repeats_within{100};

} // namespace vowelway::analysis
