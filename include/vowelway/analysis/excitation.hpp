// SPDX-License-Identifier: MIT
// What excites the tract in a piece of sound: noise, separate pulses, or a pitch.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/formants.hpp"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// A number for each kind of probe, in the order of ProbeKind.
using ByKind = std::array<double, 4>;
/// Where a kind stands in what there is of each kind.
constexpr std::size_t index(ProbeKind kind) { return static_cast<std::size_t>(kind); }

struct Excitation {
    ProbeKind kind = ProbeKind::whisper;
    std::optional<Frequency> rate; ///< pitch of a sung or spoken probe, pulses in a second of a creak
    std::optional<Frequency> pitch, pulses; ///< what `rate` would be, were it that kind
    double regularity = 0;                  ///< 0..1: how alike successive periods of the excitation are
    double peakedness = 3;  ///< fourth moment of the excitation over the square of the second; 3 for noise
    double drift = 0;       ///< of the pitch from beginning to end, semitones
    ByKind evidence{};      ///< ln of the probability of each kind by this take alone
    double probability = 1; ///< of `kind`: by this take alone, after decide_kind by all of the recording
};

/// Looks at the prediction error of the piece, in which the vowel is flattened out, where it stands above the
/// `noise` of the pauses. An error or a sound that repeats between 70 and 1000 Hz is a pitch: sung if it
/// stays where it is, spoken if it moves by more than about a semitone; an error of rare peaks is a creak;
/// what remains is noise. The limits are our choice, tried on synthetic probes
/// (bench/measure_conditions.cpp). `spectrum`: the piece's average_spectrum, if known already.
Excitation recognise_excitation(std::span<float const> steady, Frequency rate,
                                PowerSpectrum const* spectrum = nullptr,
                                PowerSpectrum const* noise = nullptr);

/// Calls it this kind, with the rate that goes with it.
void take_kind(Excitation& excitation, ProbeKind kind);

/// What a whole recording was made with.
struct KindOfRecording {
    ProbeKind kind = ProbeKind::whisper;
    ByKind probability{};                 ///< of each kind, by all takes together
    std::vector<std::size_t> disagreeing; ///< takes that are more surely of another kind
};

/// Share of takes that are not of the recording's kind: our judgement.
inline constexpr double odd_take = 0.06;

/// A singer makes all probes of a recording in one way: the evidence of its takes adds up, but any take may
/// have gone wrong (`odd_take`). Each take gets the recording's kind and the probability of it, but those
/// that disagree (noise, pulses or voice; probability of another above 0.8) keep their own.
KindOfRecording decide_kind(std::vector<Excitation*> const& takes);

/// Sung and spoken are the same to this: the folds swing.
bool same_source(ProbeKind a, ProbeKind b);

/// Above this pitch a sung probe is refused: its harmonics lie too far apart to show the resonances between
/// them. Mean errors of linear prediction grow from about 10 Hz at fo = 100 to 45 at 300 and 150 at 500
/// (published comparisons on synthetic vowels; G. K. Vallabha & B. Tuller, Speech Communication 38, 2002,
/// 141, for the rule of a tenth of fo).
inline constexpr Frequency highest_sung_probe = hertz(310);

} // namespace vowelway::analysis
