// SPDX-License-Identifier: MIT
// The sound of a whole vocal tract of known areas, excited by noise: no all-pole model in it.
// Chain matrices of lossy sections with yielding walls (M. M. Sondhi & J. Schroeter, IEEE Trans. Acoust.
// Speech Signal Process. 35, 1987, 955), ended by the impedance of a piston; written apart from the library's
// own tract.
#pragma once

#include "support/probe_synthesis.hpp"

namespace probe_synthesis {

using Complex = std::complex<double>;

/// Flow at the lips over flow at the glottis. Areas in cm2 from the glottis, sections of `length` cm.
inline Complex lip_flow(std::vector<double> const& areas, double length, double hz) {
    double const c = 35000, density = 0.00114, w = 2 * pi * std::max(hz, 1.0);
    Complex const jw{0, w};
    double const a = 130 * pi, b = 900 * pi * pi, w02 = 406 * pi * 406 * pi;
    Complex const alpha = std::sqrt(jw * 4.0), beta = jw * w02 / ((jw + a) * jw + b) + alpha;
    Complex const gamma = std::sqrt((alpha + jw) / (beta + jw)), sigma = gamma * (beta + jw);
    Complex A{1}, B{0}, C{0}, D{1};
    for (double area : areas) {
        Complex const x = sigma * length / c, z = density * c / area * gamma;
        Complex const ch = std::cosh(x), sh = std::sinh(x);
        Complex const nA = ch * A - z * sh * C, nB = ch * B - z * sh * D;
        Complex const nC = -sh / z * A + ch * C, nD = -sh / z * B + ch * D;
        A = nA, B = nB, C = nC, D = nD;
    }
    double const lips = areas.back(), R = 128 * density * c / (9 * pi * pi * lips),
                 L = 8 * density / (3 * pi * std::sqrt(pi * lips));
    Complex const load = jw * R * L / (R + jw * L);
    return 1.0 / (A - C * load);
}

/// Frequencies (Hz) at which |lip_flow| has a peak between 150 and `top`.
inline std::vector<double> tract_peaks(std::vector<double> const& areas, double length, double top) {
    std::vector<double> found;
    auto const size = [&](double f) { return std::abs(lip_flow(areas, length, f)); };
    for (double f = 150; f < top; f += 1)
        if (size(f) > size(f - 1) && size(f) >= size(f + 1)) found.push_back(f);
    return found;
}

/// In place, radix 2; the inverse is not scaled.
inline void transform(std::vector<Complex>& x, bool inverse) {
    auto const n = x.size();
    for (std::size_t i = 1, j = 0; i < n; ++i) {
        auto bit = n >> 1;
        for (; j & bit; bit >>= 1) j ^= bit;
        j ^= bit;
        if (i < j) std::swap(x[i], x[j]);
    }
    for (std::size_t half = 1; half < n; half *= 2) {
        Complex const turn = std::polar(1.0, (inverse ? 1 : -1) * pi / static_cast<double>(half));
        for (std::size_t block = 0; block < n; block += 2 * half) {
            Complex w = 1;
            for (std::size_t k = 0; k < half; ++k, w *= turn) {
                Complex const even = x[block + k], odd = w * x[block + k + half];
                x[block + k] = even + odd;
                x[block + k + half] = even - odd;
            }
        }
    }
}

/// Two seconds of white noise through the tract, radiated (pressure goes with the derivative of the flow).
inline Samples tract_whisper(std::vector<double> const& areas, double length, double rate,
                             std::mt19937& random) {
    std::size_t const n = 32768;
    std::normal_distribution<double> normal;
    std::vector<Complex> x(n, 0.0);
    for (std::size_t k = 1; k < n / 2; ++k) {
        double const hz = rate * static_cast<double>(k) / static_cast<double>(n);
        x[k] = Complex(normal(random), normal(random)) * lip_flow(areas, length, hz) * Complex(0, hz);
        x[n - k] = std::conj(x[k]);
    }
    transform(x, true);
    Samples sound(n);
    for (std::size_t i = 0; i < n; ++i) sound[i] = x[i].real();
    return sound;
}

} // namespace probe_synthesis
