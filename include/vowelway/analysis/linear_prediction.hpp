// SPDX-License-Identifier: MIT
// Linear prediction: the all-pole spectrum that fits a sound, and its poles.
// J. Makhoul, "Linear prediction: a tutorial review", Proc. IEEE 63 (1975) 561, for the normal equations,
// the recursion that solves them, and prediction from a part of the spectrum.
// Threads: any number at once, each with WeightedMoments of its own.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <span>
#include <vector>

namespace vowelway::analysis {

/// x[n] = -a1 x[n-1] - .. - ap x[n-p] + e[n].
struct Predictor {
    std::vector<double> a; ///< a[0] = 1, then a1..ap
    double error = 0;      ///< mean square of e
    Frequency rate;

    int order() const { return static_cast<int>(a.size()) - 1; }
};

/// A pair of complex poles, or what a resonance looks like in the sound.
struct Pole {
    Frequency centre;    ///< angle x rate / 2 pi
    Frequency bandwidth; ///< -ln(radius) x rate / pi; negative outside the unit circle
};

/// Lags 0..`lags` of the autocorrelation of what lies below `ceiling`, as if the sound had been sampled at
/// twice the ceiling (the cosine transform of that part of the power spectrum).
std::vector<double> band_autocorrelation(PowerSpectrum const& spectrum, Frequency ceiling, int lags);

/// The predictor of the autocorrelation method (Levinson's recursion). Needs order + 1 lags and r[0] > 0;
/// stops at a lower order when the rest is predicted exactly.
Predictor predict(std::span<double const> autocorrelation, int order, Frequency rate);

/// Prediction of the covariance kind with a weight >= 0 for each sample, so that the moments of excitation
/// count less. Holds the sums for all orders up to `order`; sums of several pieces add.
class WeightedMoments {
  public:
    explicit WeightedMoments(int order);

    void add(std::span<double const> samples, std::span<double const> weights);
    WeightedMoments& operator+=(WeightedMoments const& other);
    /// 1 <= order <= the one given. Poles may lie outside the unit circle.
    Predictor predict(int order, Frequency rate) const;
    bool empty() const { return moments_[0] <= 0; }

  private:
    int order_;
    std::vector<double> moments_; // (order+1) x (order+1), row by row
};

/// The pole pairs above 0 Hz, low to high; real poles are left out.
std::vector<Pole> poles(Predictor const& predictor);

/// The pole of `predictor` next to `near`, by Newton's method: for following a pole through small changes.
Pole follow_pole(Predictor const& predictor, Pole const& near);

/// Variance (Hz^2) of the frequency of a pole when `predictor` is the right model of a noise of `samples`
/// independent samples: the Cramer-Rao bound. cov(a) = error R^-1 / samples, carried to the pole by the
/// derivative of the root (the delta method).
double bound_of_centre(Predictor const& predictor, Pole const& pole, std::span<double const> autocorrelation,
                       double samples);

} // namespace vowelway::analysis
