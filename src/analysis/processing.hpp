// SPDX-License-Identifier: MIT
// What a phone and a desk have done to the sound before it was saved: found from the recording itself.
// Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// The sound comes a second time from a desk or a wall nearby: x(t) + gain x(t - delay).
struct Reflection {
    Duration delay;
    double gain = 0, gain_sd = 0;
    bool sure = true;      ///< else there may be none: what undoing it moves stays open
    bool up_to_top = true; ///< the upper part of the band shows it too; else a whisper's source may make it
};

/// A high-pass (Butterworth) on everything that was recorded.
struct LowCut {
    Frequency corner;
    int order = 2; ///< 6 dB an octave each
};

/// Of the level.
enum class Evenness {
    natural,
    like_levelled, ///< as even as after a gain control, but not more than breath might be
    levelled       ///< a limiter or fast gain control: the peaks all end at one height
};

struct Processing {
    ProbeKind kind = ProbeKind::whisper;
    std::optional<Reflection> reflection;
    std::optional<LowCut> low_cut;
    bool suppressed = false; ///< noise suppression: the pauses are restless
    Evenness evenness = Evenness::natural;
    bool evened() const { return evenness != Evenness::natural; }
    bool changes_spectrum() const { return reflection || low_cut; }
};

/// What is needed of a take.
struct HeardTake {
    PowerSpectrum const* spectrum;
    std::span<float const> samples;
};

/// Of one recording. Reflection and low cut multiply the spectra of all takes alike: the one is looked for
/// whose undoing makes all takes better predicted (Whittle's likelihood: the geometric mean of a monic filter
/// of minimum phase is one, so the prediction error alone decides). The limits are our choice, tried on
/// bench/measure_phones.cpp. A reflection makes any sound repeat as a high voice does: it is looked for
/// before the kind is known. A suspected one is given too, not as sure.
std::optional<Reflection> reflection_in(std::vector<HeardTake> const& takes, Frequency band);

/// All of it, where the takes are of this kind.
Processing processing_of(std::vector<HeardTake> const& takes, PowerSpectrum const* noise, ProbeKind kind,
                         Frequency band, std::optional<Reflection> const& reflection);

/// Adds to the deviations what phone and desk may have moved: a share of F for any microphone and small file,
/// more for a levelled sound, and of what undoing has moved the part that is open (`raw`: read without
/// undoing).
void widen(FormantReading& reading, FormantReading const& raw, Processing const& processing);

} // namespace vowelway::analysis
