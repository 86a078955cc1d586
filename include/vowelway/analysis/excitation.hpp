// SPDX-License-Identifier: MIT
// What excites the tract in a piece of sound: noise, separate pulses, or a pitch.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/formants.hpp"

#include <optional>
#include <span>

namespace vowelway::analysis {

struct Excitation {
    ProbeKind kind = ProbeKind::whisper;
    std::optional<Frequency> rate; ///< pitch of a sung probe, pulses in a second of a creak
    double regularity = 0;         ///< 0..1: how alike successive periods of the excitation are
    double peakedness = 3; ///< fourth moment of the excitation over the square of the second; 3 for noise
};

/// Looks at the prediction error of the piece, in which the vowel is flattened out. A repeating error between
/// 70 and 1000 Hz is a pitch; an error of rare peaks is a creak; what remains is noise. The limits are our
/// choice, tried on synthetic probes. `spectrum`: the piece's average_spectrum, if known already.
Excitation recognise_excitation(std::span<float const> steady, Frequency rate,
                                PowerSpectrum const* spectrum = nullptr);

/// Above this pitch a sung probe is refused: its harmonics lie too far apart to show the resonances between
/// them. Mean errors of linear prediction grow from about 10 Hz at fo = 100 to 45 at 300 and 150 at 500
/// (published comparisons on synthetic vowels; G. K. Vallabha & B. Tuller, Speech Communication 38, 2002,
/// 141, for the rule of a tenth of fo).
inline constexpr Frequency highest_sung_probe = hertz(310);

} // namespace vowelway::analysis
