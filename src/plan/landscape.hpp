// SPDX-License-Identifier: MIT
// One sung pitch over every shape: how loud each is and where it is heard. Private to the layer.
#pragma once

#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/acoustics/source.hpp"
#include "vowelway/core/pitch.hpp"
#include "vowelway/core/units.hpp"

#include <vector>

namespace vowelway::plan {

/// Tables over a lattice of (fR1, fR2) in semitone steps; between its points values are blended linearly.
/// What depends on the pitch and loudness alone is thus computed once for all vowels and all draws.
class Landscape {
  public:
    Landscape(Pitch fo, Decibels loudness, acoustics::Source const& source, Frequency quarter);

    Pitch pitch() const { return fo_; }
    Decibels loudness() const { return loudness_; }

    struct Sample {
        Decibels level;    ///< sound pressure level 1 m from the mouth
        Decibels loudness; ///< the same, A-weighted
        acoustics::HeardPlace heard;
    };
    Sample at(Frequency r1, Frequency r2) const;

    static constexpr int rows = 41, columns = 38;           ///< fR1 150..1512 Hz, fR2 480..4068 Hz
    static constexpr double first_r1 = 150, first_r2 = 480; ///< Hz

    /// Where a resonance lies on an axis of the lattice: the step below it and the share of the way to the
    /// next.
    struct Position {
        int step = 0;
        float share = 0;
    };
    static Position row_of(Frequency r1);
    static Position column_of(Frequency r2);

    /// Sound pressure levels, row by row; likewise the places.
    float const* levels() const { return level_.data(); }
    float const* opennesses() const { return openness_.data(); }
    float const* fronts() const { return front_.data(); }

  private:
    Pitch fo_;
    Decibels loudness_;
    std::vector<float> level_, weighted_, openness_, front_; // row by row
};

} // namespace vowelway::plan
