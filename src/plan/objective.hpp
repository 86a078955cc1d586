// SPDX-License-Identifier: MIT
// What is heard of a shape, written once for the numbers that decide (float) and those that explain (double).
// Private to the layer.
#pragma once

#include "plan/cost.hpp"

#include <algorithm>
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
          front_weight_(real(acoustics::distance({{0}, {0}}, {{0}, {1}}).value)),
          openness_(real(home.spoken.openness.value)), front_(real(home.spoken.front.value)),
          text_(real(aim.technique.text)), saturation_(real(1 / aim.technique.text_saturation.value)) {}

    /// Index in the landscape's tables of the shape d1 semitones of fR1 above home and none of fR2; rows
    /// beyond the lattice take its edge. A shape d2 semitones of fR2 above it is at row(d1) + d2.
    std::ptrdiff_t row(int d1) const {
        return std::ptrdiff_t{std::clamp(row_.step + d1, 0, Landscape::rows - 2)} * Landscape::columns +
               column_.step;
    }
    /// The semitones of fR2 that lie on the lattice.
    int first_d2() const { return -column_.step; }
    int last_d2() const { return Landscape::columns - 2 - column_.step; }

    /// The heard vowel is not the intended one: grows with the distance, saturating.
    Real text(std::ptrdiff_t at) const {
        Real const off_open = blend(land_.opennesses(), at) - openness_,
                   off_front = front_weight_ * (blend(land_.fronts(), at) - front_);
        Real const off = std::sqrt(off_open * off_open + off_front * off_front);
        return text_ * off / (1 + saturation_ * off);
    }
    /// Level missing against what the singer has at ease.
    Real ring(std::ptrdiff_t at) const {
        Real const missing = wanted_ - blend(land_.levels(), at);
        return per_decibel_ * (missing > 0 ? missing : 0);
    }

  private:
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
    Real up_, right_, wanted_, per_decibel_, front_weight_, openness_, front_, text_, saturation_;
};

} // namespace vowelway::plan
