// SPDX-License-Identifier: MIT
#include "analysis/periodicity.hpp"

#include "analysis/even_inverse.hpp"
#include "analysis/median.hpp"
#include "analysis/peak.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr double frame_length = 0.060; // s
constexpr double longest = 1.0 / 70;   // s
constexpr double nearly_best = 0.80;   // a shorter period this good is preferred: no octave too low
constexpr double same_period = 0.06;
constexpr double late = 0.015, last = 0.040; // s, where it is asked whether it lasts

/// Likeness of a frame with itself `lag` later, each part by its own energy.
class Likeness {
  public:
    /// Padded by the lags: the last sample meets no first one.
    Likeness(std::size_t length, std::size_t lags)
        : length_(length), frame_(fast_length(length + lags)), power_(frame_.size() / 2 + 1) {
        likeness_.resize(lags + 1);
        run_.resize(length + 1);
    }

    std::vector<double> const& of(std::span<double const> x) {
        std::copy(x.begin(), x.end(), frame_.begin());
        for (std::size_t n = 0; n < length_; ++n) run_[n + 1] = run_[n] + x[n] * x[n];
        auto const& bins = frame_fft().forward(frame_);
        for (std::size_t k = 0; k < power_.size(); ++k) power_[k] = std::norm(bins[k]);
        auto const& r = even_inverse(frame_.size() / 2).of(power_);
        auto const lags = static_cast<Eigen::Index>(likeness_.size());
        Eigen::Map<Eigen::ArrayXd const> const run(run_.data(), static_cast<Eigen::Index>(run_.size())),
            product(r.data(), lags);
        Eigen::ArrayXd const both =
            run.tail(lags).reverse() * (run_.back() - run.head(lags)); // energies of the parts
        Eigen::Map<Eigen::ArrayXd>(likeness_.data(), lags) =
            (both > 0).select(product / both.max(1e-300).sqrt(), 0.0);
        return likeness_;
    }

  private:
    std::size_t length_;
    std::vector<double> frame_, power_, run_, likeness_; ///< the frame is followed by zeros
};

struct Period {
    double samples = 0, likeness = 0;
};

Period period_of(std::vector<double> const& likeness, std::size_t from, std::size_t to) {
    Period best;
    std::vector<Period> peaks;
    for (std::size_t lag = std::max<std::size_t>(from, 1); lag <= to; ++lag) {
        double const left = likeness[lag - 1], here = likeness[lag], right = likeness[lag + 1];
        if (here < left || here < right || here <= 0) continue;
        auto const peak = peak_of(left, here, right);
        peaks.push_back({static_cast<double>(lag) + peak.shift, peak.height});
        if (peaks.back().likeness > best.likeness) best = peaks.back();
    }
    for (auto const& p : peaks)
        if (p.likeness >= nearly_best * best.likeness) return p;
    return {};
}

/// The least of the best likenesses in windows of a period: a tone goes on, ringing between pulses dies.
double least_later(std::vector<double> const& likeness, std::size_t from, double period) {
    auto const width = static_cast<std::size_t>(std::ceil(1.2 * period));
    if (width == 0) return 0;
    double least = 1;
    for (std::size_t lag = from; lag + width <= likeness.size(); lag += width) {
        auto const begin = likeness.begin() + static_cast<std::ptrdiff_t>(lag);
        least = std::min(least, *std::max_element(begin, begin + static_cast<std::ptrdiff_t>(width)));
    }
    return least;
}

/// Of successive frames, those without a period or an octave away left out.
PitchMovement movement_of_frames(std::vector<double> const& periods, double period) {
    std::vector<double> semitones, frames;
    for (std::size_t i = 0; i < periods.size(); ++i) {
        if (periods[i] <= 0) continue;
        double const pitch = -12 * std::log2(periods[i] / period);
        if (std::abs(pitch) > 6) continue;
        semitones.push_back(pitch);
        frames.push_back(static_cast<double>(i));
    }
    return movement_of(semitones, frames, periods.size());
}

} // namespace

Periodicity periodicity_of(std::span<double const> x, Frequency rate, double shortest, bool lasts) {
    double const hz = in_hertz(rate);
    auto const length = static_cast<std::size_t>(frame_length * hz),
               to = static_cast<std::size_t>(longest * hz);
    auto const lags = lasts ? static_cast<std::size_t>(last * hz) : to + 1;
    Likeness likeness(length, lags);
    Periodicity p;
    std::vector<double> lasting, periods, found;
    for (std::size_t from = 0; from + length <= x.size(); from += length) {
        auto const& all = likeness.of(x.subspan(from, length));
        auto const best = period_of(all, static_cast<std::size_t>(shortest * hz), to);
        p.each.push_back(best.likeness);
        periods.push_back(best.samples);
        if (best.samples > 0) found.push_back(best.samples);
        if (lasts) lasting.push_back(least_later(all, static_cast<std::size_t>(late * hz), best.samples));
    }
    if (p.each.empty() || found.empty()) return p;
    p.likeness = upper_median(p.each);
    if (lasts) p.lasting = upper_median(std::move(lasting));
    p.period = upper_median(found);
    double alike = 0;
    for (double samples : periods) alike += std::abs(samples / p.period - 1) < same_period;
    p.agreement = alike / static_cast<double>(periods.size());
    p.movement = movement_of_frames(periods, p.period);
    return p;
}

} // namespace vowelway::analysis
