// SPDX-License-Identifier: MIT
// How loud a stream is to the ear, and the gain that makes it as loud as it should be.
// Threads: a meter belongs to one thread at a time; the rest are plain values and functions that keep
// nothing.
#pragma once

#include "vowelway/core/units.hpp"
#include "vowelway/sound/programme.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace vowelway::sound {

/// Loudness against full scale (LUFS).
using Lufs = Scale<struct LufsKind>;

/// What broadcasters ask for: EBU R 128. The peak is ours, and lower.
inline constexpr Lufs wanted_loudness{-23};
inline constexpr Decibels highest_peak{-6};

struct Loudness {
    Lufs integrated{-120}; ///< below -70 LUFS there is nothing but -120
    Decibels peak{-200};   ///< the true peak, between the samples too, against full scale
};

/// Integrated loudness of one channel: the K-weighting and the gating of ITU-R BS.1770-4 (the filters'
/// coefficients for 48 kHz are its tables 1 and 2; blocks of 0.4 s every 0.1 s; gates at -70 LUFS and 10 LU
/// below the mean). Memory does not grow with the length: blocks are counted in steps of 0.01 LU. A stream
/// shorter than a block is one block. The true peak is read at four times the rate (annex 2 of the same), by
/// our own interpolator: within 0.1 dB up to 12 kHz. The last eight samples are taken as they are.
class LoudnessMeter {
  public:
    LoudnessMeter();
    void hear(std::span<float const> samples);
    Loudness result() const;

  private:
    struct Biquad {
        double b0, b1, b2, a1, a2, s1 = 0, s2 = 0;
        double operator()(double x);
    };
    void step_done();
    void look_between(double x);

    Biquad shelf_, high_pass_;
    std::array<double, 4> steps_{}; // energy of the last four tenths of a second
    double step_ = 0;
    std::size_t in_step_ = 0, steps_done_ = 0;
    double peak_ = 0;
    std::array<double, 32> last_{}; // sixteen samples, twice, so that any sixteen in a row lie together
    std::size_t at_ = 0;
    struct Bin {
        double count = 0, energy = 0;
    };
    std::vector<Bin> bins_;
};

/// What play() needs to come out at `wanted_loudness`, or as loud as `highest_peak` lets it.
struct Balance {
    double gain = 1;
    Loudness loudness;         ///< with that gain
    bool held_by_peak = false; ///< quieter than wanted
};
/// Plays it once to hear how loud it is.
Balance balance(Programme const& programme);

} // namespace vowelway::sound
