// SPDX-License-Identifier: MIT
#include "analysis/undo.hpp"

#include "analysis/fft.hpp"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr double most_undone = 0.01; // of the power: 20 dB

using Complex = std::complex<double>;

Complex of_reflection(Reflection const& r, Frequency f) {
    return 1.0 + r.gain * std::polar(1.0, -2 * std::numbers::pi * in_hertz(f) * in_seconds(r.delay));
}

/// Of the analogue Butterworth filter: the product over its poles on the unit circle.
Complex of_low_cut(LowCut const& c, Frequency f) {
    Complex const s{0, f / c.corner};
    Complex all = 1;
    for (int k = 0; k < c.order; ++k)
        all *= s / (s - std::polar(1.0, std::numbers::pi * (0.5 + (2 * k + 1) / (2.0 * c.order))));
    double const size = std::abs(all), least = std::sqrt(most_undone);
    return size >= least ? all : size > 0 ? all * (least / size) : Complex(least);
}

} // namespace

double response(Reflection const& r, Frequency f) { // the norm of of_reflection
    return 1 + r.gain * (r.gain + 2 * std::cos(2 * std::numbers::pi * in_hertz(f) * in_seconds(r.delay)));
}
double response(LowCut const& c, Frequency f) { return std::norm(of_low_cut(c, f)); }

PowerSpectrum undone(PowerSpectrum spectrum, Processing const& p) {
    for (std::size_t k = 0; k < spectrum.power.size(); ++k) {
        auto const f = spectrum.bin * static_cast<double>(k);
        if (p.reflection) spectrum.power[k] /= response(*p.reflection, f);
        if (p.low_cut) spectrum.power[k] /= response(*p.low_cut, f);
    }
    return spectrum;
}

std::vector<float> undone(std::span<float const> samples, Frequency rate, Processing const& p) {
    auto const margin = static_cast<std::size_t>(0.05 * in_hertz(rate)); // what rings on does not come round
    std::vector<double> padded(samples.begin(), samples.end());
    auto const length = fast_length(samples.size() + margin);
    padded.resize(length);
    RealFft fft;
    auto bins = fft.forward(padded);
    for (std::size_t k = 0; k < bins.size(); ++k) {
        auto const f = rate * (static_cast<double>(k) / static_cast<double>(length));
        if (p.reflection) bins[k] /= of_reflection(*p.reflection, f);
        if (p.low_cut) bins[k] /= of_low_cut(*p.low_cut, f);
    }
    auto const& y = fft.inverse(bins, length);
    std::vector<float> out(samples.size());
    for (std::size_t n = 0; n < out.size(); ++n) out[n] = static_cast<float>(y[n]);
    return out;
}

} // namespace vowelway::analysis
