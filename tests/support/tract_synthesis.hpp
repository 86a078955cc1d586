// SPDX-License-Identifier: MIT
// The sound of a whole vocal tract of known areas, excited by noise: no all-pole model in it.
// Chain matrices of lossy sections with yielding walls (M. M. Sondhi & J. Schroeter, IEEE Trans. Acoust.
// Speech Signal Process. 35, 1987, 955), ended by the impedance of a piston; written apart from the library's
// own tract.
#pragma once

#include "support/probe_synthesis.hpp"

namespace probe_synthesis {

using Complex = std::complex<double>;

/// Pressure and flow at the far end of a row of sections from those at its beginning.
struct Chain {
    Complex a{1}, b{0}, c{0}, d{1};
};

/// Areas in cm2 from the glottis, sections of `length` cm; s = j 2 pi f, or any complex frequency in rad/s.
inline Chain chain(std::span<double const> areas, double length, Complex s) {
    double const c = 35000, density = 0.00114;
    double const a = 130 * pi, b = 900 * pi * pi, w02 = 406 * pi * 406 * pi;
    Complex const alpha = std::sqrt(s * 4.0), beta = s * w02 / ((s + a) * s + b) + alpha;
    Complex const gamma = std::sqrt((alpha + s) / (beta + s)), sigma = gamma * (beta + s);
    Chain m;
    for (double area : areas) {
        Complex const x = sigma * length / c, z = density * c / area * gamma;
        Complex const ch = std::cosh(x), sh = std::sinh(x);
        m = {ch * m.a - z * sh * m.c, ch * m.b - z * sh * m.d, -sh / z * m.a + ch * m.c,
             -sh / z * m.b + ch * m.d};
    }
    return m;
}

/// Impedance of the air before lips of this area, cm2.
inline Complex lip_load(double area, Complex s) {
    double const c = 35000, density = 0.00114, R = 128 * density * c / (9 * pi * pi * area),
                 L = 8 * density / (3 * pi * std::sqrt(pi * area));
    return s * R * L / (R + s * L);
}

/// Flow at the lips over flow at the glottis. Areas in cm2 from the glottis, sections of `length` cm.
inline Complex lip_flow(std::vector<double> const& areas, double length, double hz) {
    Complex const s{0, 2 * pi * std::max(hz, 1.0)};
    auto const m = chain(areas, length, s);
    return 1.0 / (m.a - m.c * lip_load(areas.back(), s));
}

/// Flow at the lips for a pressure in series with the flow behind the first `place` sections, over a glottis
/// of this resistance (dyn s/cm5).
inline Complex lip_flow_of_noise(std::span<double const> areas, double length, std::size_t place,
                                 double glottis, double hz) {
    Complex const s{0, 2 * pi * std::max(hz, 1.0)};
    auto const behind = chain(areas.first(place), length, s), before = chain(areas.subspan(place), length, s);
    auto const load = lip_load(areas.back(), s);
    auto const back = (behind.a * glottis - behind.b) / (behind.d - behind.c * glottis);
    auto const through = before.a - before.c * load;
    return 1.0 / (back * through + load * before.d - before.b);
}

/// The natural frequencies (Hz) of tract and glottis that have come from these of the closed tract, in order:
/// where sound goes on without a source. They do not depend on where the noise is made, nor is one pulled by
/// its neighbour as a peak is. Newton's steps, the roots already found divided out, while the glottis opens.
template <std::size_t count>
std::array<double, count> natural_frequencies(std::span<double const> areas, double length, double glottis,
                                              std::array<double, count> const& closed) {
    std::array<Complex, count> roots;
    for (std::size_t k = 0; k < count; ++k) roots[k] = {-2 * pi * 30, 2 * pi * closed[k]};
    for (double open = 1e6; open > 0; open = open > glottis ? std::max(open / 1.2, glottis) : 0)
        for (std::size_t k = 0; k < count; ++k) {
            auto const rest = [&](Complex s) {
                auto const m = chain(areas, length, s);
                auto const load = lip_load(areas.back(), s);
                auto left = (load * m.c - m.a) + (m.b - load * m.d) / open;
                for (std::size_t j = 0; j < k; ++j) left /= (s - roots[j]) / 1e4;
                return left;
            };
            for (int step = 0; step < 30; ++step) {
                auto const slope = (rest(roots[k] + 1.0) - rest(roots[k] - 1.0)) / 2.0,
                           change = rest(roots[k]) / slope;
                roots[k] -= change;
                if (std::abs(change) < 0.01) break;
            }
        }
    std::array<double, count> found;
    for (std::size_t k = 0; k < count; ++k) found[k] = roots[k].imag() / (2 * pi);
    std::sort(found.begin(), found.end());
    return found;
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
