// SPDX-License-Identifier: MIT
// What is heard of a shape, written once for the numbers that decide (float) and those that explain (double).
// Private to the layer.
#pragma once

#include "plan/cost.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace vowelway::plan {

/// Text and ring of the shapes around a home. A step of the grid is a step of the landscape's lattice, so the
/// shares of the blend between its points are the same for every shape.
template <class Real> class Objective {
  public:
    Objective(Landscape const& land, Home const& home, Aim const& aim)
        : land_(land), row_(Landscape::row_of(home.r1)), column_(Landscape::column_of(home.r2)),
          up_(row_.share), right_(column_.share),
          wanted_(
              real((expected_level(home.at_ease, aim, land.pitch()) - aim.technique.ring_tolerance).value)),
          per_decibel_(real(aim.technique.ring * ring_factor(land.loudness()))),
          front_weight_(real(acoustics::front_weight)), text_(real(aim.technique.text)),
          saturation_(real(1 / aim.technique.text_saturation.value)),
          other_(real(is_asked(home, aim) ? aim.technique.other_vowel_asked : aim.technique.other_vowel)) {
        for (auto const& b : home.borders)
            borders_[&b - home.borders.data()] = {real(b.open), real(b.front), real(b.from)};
        // Accepted is what lies between where the vowel is itself and where it drifts, closing or in
        // front, while the shape is kept, as far as the technique lets it.
        auto const kept = land.at(home.r1, home.r2).heard;
        double const drift = aim.technique.drift.value, open = home.spoken.openness.value,
                     front = home.spoken.front.value;
        open_low_ = real(std::clamp(kept.openness.value, open - drift, open));
        open_high_ = real(open);
        front_low_ = real(std::clamp(kept.front.value, front - drift, front));
        front_high_ = real(std::clamp(kept.front.value, front, front + drift));
        // Where the kept shape is taken for another vowel already, only going farther counts.
        beyond_kept_ = std::max(beyond(real(kept.openness.value), real(kept.front.value)), Real{0});
    }

    /// Index in the landscape's tables of the shape d1 semitones of fR1 above home and none of fR2; rows
    /// beyond the lattice take its edge. A shape d2 semitones of fR2 above it is at row(d1) + d2.
    std::ptrdiff_t row(int d1) const {
        return std::ptrdiff_t{std::clamp(row_.step + d1, 0, Landscape::rows - 2)} * Landscape::columns +
               column_.step;
    }
    /// The semitones of fR2 that lie on the lattice.
    int first_d2() const { return -column_.step; }
    int last_d2() const { return Landscape::columns - 2 - column_.step; }

    /// The heard vowel is none of those accepted: grows with the distance, saturating; and it is taken for
    /// another vowel, when the shape kept would not be.
    Real text(std::ptrdiff_t at) const {
        Real const open = blend(land_.opennesses(), at), front = blend(land_.fronts(), at), none = 0, all = 1;
        Real const off_open = std::max(std::max(open - open_high_, open_low_ - open), none),
                   off_front =
                       front_weight_ * std::max(std::max(front - front_high_, front_low_ - front), none);
        Real const off = std::sqrt(off_open * off_open + off_front * off_front);
        Real const over = (beyond(open, front) - beyond_kept_) * other_per_bark;
        return text_ * off / (1 + saturation_ * off) + other_ * std::max(std::min(over, all), none);
    }
    /// Level missing against what the singer has at ease.
    Real ring(std::ptrdiff_t at) const {
        Real const missing = wanted_ - blend(land_.levels(), at);
        return per_decibel_ * (missing > 0 ? missing : 0);
    }

  private:
    /// How fast the cost of another vowel rises beyond a border, a Bark: a step would make advice flip over a
    /// hair.
    static constexpr Real other_per_bark = 3;

    struct Border {
        Real open, front, from;
    };
    /// How far beyond the nearest border a place lies, in Bark.
    Real beyond(Real open, Real front) const {
        Real out = borders_[0].open * open + borders_[0].front * front - borders_[0].from;
        for (std::size_t i = 1; i < borders_.size(); ++i)
            out = std::max(out, borders_[i].open * open + borders_[i].front * front - borders_[i].from);
        return out;
    }
    static Real real(double v) { return static_cast<Real>(v); }
    Real blend(float const* table, std::ptrdiff_t at) const {
        float const* const v = table + at;
        Real const low = v[0] + right_ * (v[1] - v[0]);
        Real const high =
            v[Landscape::columns] + right_ * (v[Landscape::columns + 1] - v[Landscape::columns]);
        return low + up_ * (high - low);
    }

    Landscape const& land_;
    Landscape::Position row_, column_;
    Real up_, right_, wanted_, per_decibel_, front_weight_, text_, saturation_, other_;
    std::array<Border, 4> borders_{};
    Real beyond_kept_ = 0;
    Real open_low_ = 0, open_high_ = 0, front_low_ = 0, front_high_ = 0;
};

} // namespace vowelway::plan
