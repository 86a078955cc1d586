// SPDX-License-Identifier: MIT
// Noise that is the same every time, and the small filters that shape it. Private to the layer.
#pragma once

#include "vowelway/core/units.hpp"
#include "vowelway/sound/programme.hpp"

#include <cmath>
#include <cstdint>
#include <numbers>

namespace vowelway::sound {

/// Even noise of mean square 1: splitmix64 (Steele, Lea & Flood 2014), four of its numbers added.
class Noise {
  public:
    explicit Noise(std::uint64_t seed) : state_(seed) {}
    double next() {
        std::uint64_t z = (state_ += 0x9e3779b97f4a7c15U);
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
        z ^= z >> 31U;
        double sum = 0;
        for (unsigned shift = 0; shift < 64; shift += 16)
            sum += static_cast<double>(z >> shift & 0xffffU) + 0.5;
        return (sum / 65536 - 2) * std::numbers::sqrt3; // each part has a variance of 1/12
    }

  private:
    std::uint64_t state_;
};

/// y[n] = A x[n] + B y[n-1] + C y[n-2], gain 1 at 0 Hz (D. H. Klatt, J. Acoust. Soc. Am. 67, 1980, 971).
class Resonator {
  public:
    void tune(double hz, double bandwidth_hz) {
        double const turn = std::numbers::pi / in_hertz(sample_rate);
        double const r = std::exp(-turn * bandwidth_hz);
        c_ = -r * r;
        b_ = 2 * r * std::cos(2 * turn * hz);
        a_ = 1 - b_ - c_;
    }
    double operator()(double x) {
        double const y = a_ * x + b_ * y1_ + c_ * y2_;
        y2_ = y1_;
        y1_ = y;
        return y;
    }

  private:
    double a_ = 1, b_ = 0, c_ = 0, y1_ = 0, y2_ = 0;
};

} // namespace vowelway::sound
