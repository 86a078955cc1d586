// SPDX-License-Identifier: MIT
// The harmonics of a moment as complex amplitudes. Private to the layer.
#pragma once

#include "vowelway/sound/voice.hpp"

#include <complex>
#include <vector>

namespace vowelway::sound {

/// Where the planner's band ends and where the last harmonic has faded.
inline constexpr double band_hz = 5000, silent_hz = 6000;

class Harmonics {
  public:
    explicit Harmonics(Voice const& voice) : voice_(voice) {}

    /// Peaks of the harmonics of the moment, from the fundamental up; `size` is not in it. As
    /// many as lie below silent_hz.
    void of(Moment const& moment, std::vector<std::complex<double>>& out);

    /// Gains of the noise that goes through the same shape so that it lies breath_below the harmonics.
    double noise_gain() const { return noise_gain_; }

  private:
    Voice voice_;
    double power_ = 0;                 // of the flow's fall, for which the table holds
    std::vector<double> number_power_; // n to that power
    double noise_gain_ = 0;
};

} // namespace vowelway::sound
