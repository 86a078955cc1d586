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
    double whiteness = 1; ///< of what prediction leaves, 0..1: what is missing to one is not understood
    double gain = 1;      ///< whiteness over that of the lips' zero alone, or none
    int plain = 0;        ///< integrations of that
};

/// How white a spectrum up to `ceiling` is after prediction, 0..1: geometric over arithmetic mean of the
/// error's spectrum.
double whiteness(PowerSpectrum const& spectrum, Frequency ceiling, int order);

/// The ways that leave the whitest error (Whittle's likelihood: the error of prediction alone decides), best
/// first: others than the best only where they are nearly as good in view of what even the best leaves.
std::vector<Whitening> find_whitenings(PowerSpectrum const& spectrum, Frequency rate, Frequency ceiling,
                                       int order);

void whiten(PowerSpectrum& spectrum, Frequency rate, Whitening const& w);

} // namespace vowelway::analysis
