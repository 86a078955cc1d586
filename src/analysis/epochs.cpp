// SPDX-License-Identifier: MIT
#include "analysis/epochs.hpp"

#include "analysis/filter.hpp"
#include "vowelway/analysis/linear_prediction.hpp"

#include <Eigen/Core>

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr double weight_memory = 0.0013;  // s
constexpr double just_after = 0.0003;     // s
constexpr double longest_ringing = 0.012; // s
constexpr double creak_gap = 0.008;       // s: no two pulses of a creak are nearer
constexpr double stands_out_by = 4.0;     // times the local root mean square

/// The largest value of each neighbourhood of +-reach samples.
std::vector<std::size_t> peaks_apart(std::vector<double> const& e, std::size_t reach) {
    std::vector<std::size_t> found;
    for (std::size_t n = 0; n < e.size();) {
        auto const end = std::min(e.size(), n + reach + 1);
        auto const top =
            static_cast<std::size_t>(std::max_element(e.begin() + static_cast<std::ptrdiff_t>(n),
                                                      e.begin() + static_cast<std::ptrdiff_t>(end)) -
                                     e.begin());
        auto const low = top > reach ? top - reach : 0;
        bool const higher_before =
            std::any_of(e.begin() + static_cast<std::ptrdiff_t>(low),
                        e.begin() + static_cast<std::ptrdiff_t>(top), [&](double v) { return v > e[top]; });
        if (top == n || !higher_before) {
            if (!higher_before && e[top] > 0) found.push_back(top);
            n = top + reach + 1;
        } else {
            n = top;
        }
    }
    return found;
}

/// Lags 0..`last`, and some more, of the sound itself.
std::vector<double> autocorrelation_of(std::span<double const> x, int last) {
    std::vector<double> r(static_cast<std::size_t>(last) / 8 * 8 + 8), padded(x.size() + r.size() - 1);
    std::copy(x.begin(), x.end(), padded.begin());
    filter(padded, x, r); // the sound as its own filter
    return r;
}

} // namespace

std::vector<double> residual(std::span<double const> x, Frequency rate, PowerSpectrum const* spectrum) {
    int const order = static_cast<int>(std::lround(in_hertz(rate) / 1000)) + 2;
    auto const size = static_cast<Eigen::Index>(x.size());
    std::vector<double> e(x.size(), 0.0);
    if (size <= order) return e;
    auto r = spectrum ? band_autocorrelation(*spectrum, 0.5 * rate, order) : autocorrelation_of(x, order);
    if (r[0] <= 0) return e;
    r[0] *= 1 + 1e-9;
    auto backwards = predict(r, order, rate).a;
    std::reverse(backwards.begin(), backwards.end());
    filter(x, backwards, std::span(e).subspan(backwards.size() - 1));
    double const skew = Eigen::Map<Eigen::ArrayXd const>(e.data(), size).cube().sum();
    if (skew < 0)
        for (auto& v : e) v = -v;
    return e;
}

std::vector<std::size_t> peaks_of_periods(std::vector<double> const& e, Frequency rate, Frequency fo) {
    return peaks_apart(e, static_cast<std::size_t>(std::max(1.0, 0.6 * in_hertz(rate) / in_hertz(fo))));
}

std::vector<std::size_t> pulses_in(std::vector<double> const& e, Frequency rate) {
    auto found = peaks_apart(e, static_cast<std::size_t>(std::max(1.0, creak_gap * in_hertz(rate))));
    double mean = 0;
    for (double v : e) mean += v * v;
    double const level = std::sqrt(mean / static_cast<double>(std::max<std::size_t>(e.size(), 1)));
    std::erase_if(found, [&](std::size_t n) { return e[n] < stands_out_by * level; });
    return found;
}

std::vector<double> closed_phase_weights(std::span<double const> x, Frequency rate,
                                         std::vector<std::size_t> const& epochs, double closed) {
    auto const memory = static_cast<std::size_t>(std::max(2.0, std::round(weight_memory * in_hertz(rate))));
    std::vector<double> weights(x.size(), 0.0);
    auto const weigh = [&](std::size_t from, std::size_t end) {
        from = std::max(from, memory), end = std::min(end, x.size());
        if (from >= end) return;
        double energy = 0;
        for (std::size_t n = from - memory; n < from; ++n) energy += x[n] * x[n];
        for (std::size_t n = from; n < end; ++n) {
            weights[n] = std::max(energy, 0.0);
            energy += x[n] * x[n] - x[n - memory] * x[n - memory];
        }
    };
    if (epochs.size() < 3) {
        weigh(0, x.size());
        return weights;
    }
    auto const after = static_cast<std::size_t>(std::ceil(just_after * in_hertz(rate)));
    for (std::size_t i = 0; i + 1 < epochs.size(); ++i) {
        double const way = std::min(closed * static_cast<double>(epochs[i + 1] - epochs[i]),
                                    longest_ringing * in_hertz(rate));
        weigh(epochs[i] + after, epochs[i] + static_cast<std::size_t>(way));
    }
    return weights;
}

} // namespace vowelway::analysis
