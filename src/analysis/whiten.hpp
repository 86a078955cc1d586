// SPDX-License-Identifier: MIT
// What no pole can stand for, taken out of a whisper's spectrum before it is predicted. Private to the
// analysis layer.
#pragma once

#include "vowelway/analysis/linear_prediction.hpp"
#include "vowelway/analysis/spectrum.hpp"

#include <optional>
#include <vector>

namespace vowelway::analysis {

/// A pair of zeros: the part of the tract behind the noise takes up what it resonates at.
struct ZeroPair {
    Frequency centre, bandwidth;
};

/// How a spectrum is made such as poles alone can describe.
struct Whitening {
    int integrations = 0; ///< zeros at 0 Hz: of the lips' radiation, and of a tract shut behind the noise
    std::vector<ZeroPair> zeros;
    double whiteness = 1; ///< of what prediction leaves, 0..1 (geometric over arithmetic mean of its
                          ///< spectrum): what is missing to one is not understood
    double gain = 1;      ///< whiteness over that of the lips' zero alone, or none
};

struct Whitenings {
    std::vector<Whitening> ways;    ///< best first: others than the best only where they are nearly as good
    bool as_it_is = true;           ///< the one way is that of the lips' zero alone, or none
    std::optional<Whitening> other; ///< another way that is not ruled out: what it moves stays open
};

/// Without pairs of zeros other than that of the walls: what a source and the lips have at the bottom.
std::vector<Whitening> bottom_of_source();

/// The ways that leave the whitest error (Whittle's likelihood: the error of prediction alone decides). The
/// other one is the sound as it is, where zeros are taken out; else a bottom of the source that is whiter,
/// but not clearly. Too few frames tell nothing, nor does what hardly stands above the noise that was taken
/// off
/// (`before` that): the sound as it is.
Whitenings find_whitenings(PowerSpectrum const& spectrum, PowerSpectrum const& before, Frequency rate,
                           Frequency ceiling, int order);

/// The sound as it is: for what fills and empties a spectrum as a gain control does, zeros are no sign.
Whitenings whitenings_as_it_is(PowerSpectrum const& spectrum, Frequency rate, Frequency ceiling, int order);

void whiten(PowerSpectrum& spectrum, Frequency rate, Whitening const& w);

} // namespace vowelway::analysis
