// SPDX-License-Identifier: MIT
#include "vowelway/analysis/excitation.hpp"

#include "analysis/epochs.hpp"
#include "analysis/fft.hpp"
#include "analysis/resample.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace vowelway {
namespace {

constexpr Frequency looked_at = hertz(8000);
constexpr double frame_length = 0.060, frame_hop = 0.060; // s
constexpr double lowest_pitch = 70, highest_pitch = 1000;  // Hz
constexpr double regular = 0.45;     // at least, for a pitch
constexpr double peaked = 6.0;       // at least, for a creak
constexpr double nearly_best = 0.85; // a shorter period this good is preferred: no octave too low

struct Period {
    double samples = 0, likeness = 0;
};

/// The period in `e` (one frame) by its normalised autocorrelation, tapering undone.
Period period_of(std::vector<double> const& autocorrelation, double rate, std::size_t length) {
    auto const from = static_cast<std::size_t>(rate / highest_pitch), to = static_cast<std::size_t>(rate / lowest_pitch);
    if (autocorrelation[0] <= 0) return {};
    auto const at = [&](std::size_t lag) {
        return autocorrelation[lag] / autocorrelation[0] * static_cast<double>(length) / static_cast<double>(length - lag);
    };
    double best = 0;
    for (std::size_t lag = from; lag <= to; ++lag) best = std::max(best, at(lag));
    for (std::size_t lag = from; lag <= to; ++lag) {
        double const here = at(lag);
        if (here < nearly_best * best || here < at(lag - 1) || here < at(lag + 1)) continue;
        double const left = at(lag - 1), right = at(lag + 1), bend = left - 2 * here + right;
        double const shift = bend < 0 ? 0.5 * (left - right) / bend : 0;
        return {static_cast<double>(lag) + shift, here};
    }
    return {};
}

double median(std::vector<double> values) {
    auto const middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

Excitation recognise_excitation(std::span<float const> steady, Frequency rate) {
    Excitation found;
    auto const sound = resample(steady, rate, looked_at);
    auto const e = residual(sound.samples, sound.rate);
    double second = 0, fourth = 0;
    for (double v : e) second += v * v, fourth += v * v * v * v;
    if (second <= 0) return found;
    found.peakedness = fourth / (second * second) * static_cast<double>(e.size());

    double const hz = in_hertz(sound.rate);
    auto const length = static_cast<std::size_t>(frame_length * hz), hop = static_cast<std::size_t>(frame_hop * hz);
    RealFft fft;
    std::vector<double> frame(fast_length(2 * length));
    std::vector<double> periods, likeness;
    for (std::size_t from = 0; from + length <= e.size(); from += hop) {
        std::fill(frame.begin(), frame.end(), 0.0);
        std::copy_n(e.begin() + static_cast<std::ptrdiff_t>(from), length, frame.begin());
        auto bins = fft.forward(frame);
        for (auto& b : bins) b = std::norm(b);
        auto const period = period_of(fft.inverse(bins, frame.size()), hz, length);
        if (period.samples > 0) periods.push_back(period.samples);
        likeness.push_back(period.likeness);
    }
    if (!likeness.empty()) found.regularity = median(likeness);
    if (found.regularity >= regular && !periods.empty()) {
        found.kind = ProbeKind::sung;
        found.rate = hertz(hz / median(periods));
    } else if (found.peakedness >= peaked) {
        found.kind = ProbeKind::creak;
        auto const epochs = find_epochs(sound.samples, sound.rate, std::nullopt);
        if (epochs.size() > 2)
            found.rate = hertz(static_cast<double>(epochs.size() - 1) * hz /
                               static_cast<double>(epochs.back() - epochs.front()));
    }
    return found;
}

} // namespace vowelway
