// SPDX-License-Identifier: MIT
// The same sound seen under several ceilings and orders. Private to the analysis layer.
#pragma once

#include "analysis/whiten.hpp"
#include "vowelway/analysis/formants.hpp"
#include "vowelway/analysis/linear_prediction.hpp"

#include <optional>
#include <span>
#include <vector>

namespace vowelway::analysis {

/// One setting: the prediction from all of the sound, its poles, and the prediction from each block.
struct Look {
    LookSetting setting;
    Predictor whole;
    std::vector<Pole> poles;
    std::vector<Predictor> blocks;       ///< of every second look only
    std::vector<double> autocorrelation; ///< whisper only: for the Cramer-Rao bound
};

struct Looks {
    std::vector<Look> each;
    std::vector<Look> otherwise; ///< some by whitenings.other (whisper), or with the folds closing otherwise
    int frames = 0;
    double noise_samples = 0; ///< seconds of noise: independent samples are this times twice the ceiling
    double whiteness = 1;     ///< Whitening::whiteness (whisper)
    bool in_front = false;    ///< FormantReading::noise_in_front
    bool trusted = true;      ///< Zeros::trusted
    Whitenings whitenings;    ///< how its spectrum was made white (whisper)

    /// Of the sound as it is.
    std::vector<Look> const& as_it_is() const { return whitenings.as_it_is ? each : otherwise; }
};

/// What is done about the zeros of a whisper's source.
struct Zeros {
    bool sought = true;                ///< else the sound is taken as it is
    bool trusted = true;               ///< else all that they move stays open, however much
    std::optional<Whitenings> known{}; ///< those, without looking for any
};

Looks look(std::span<float const> steady, Frequency rate, std::vector<LookSetting> const& settings,
           FormantOptions const& options, Zeros const& zeros = {});

/// The usual settings for this expectation, or those of the options.
Looks look_usually(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                   FormantOptions const& options, Zeros const& zeros = {});

/// What read_formants does after looking.
FormantReading read_looks(Looks const& looks, Expectation const& expectation, FormantOptions const& options);

/// A pole wider than this is no formant.
Frequency widest_formant(ProbeKind kind);

/// Random variance (Hz^2) of the pole's centre under this look: from the blocks, and for a whisper at
/// least the Cramer-Rao bound; with that of the noise the room is like (Room::like_noise_of) added. For
/// pulses the latter is that of a lone narrow resonance, bandwidth / (4 pi seconds). Nothing for a look
/// without blocks.
std::optional<double> variance_of_centre(Look const& look, Pole const& pole, double noise_seconds,
                                         FormantOptions const& options);

} // namespace vowelway::analysis
