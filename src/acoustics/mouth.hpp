// SPDX-License-Identifier: MIT
// A tract that gestures deform. Private to the library.
#pragma once

#include "acoustics/tube.hpp"
#include "vowelway/acoustics/gesture.hpp"

#include <array>
#include <optional>
#include <vector>

namespace vowelway::acoustics::tube {

/// A tube, its gesture and the poles fR1 .. fR4 (fewer if higher ones are lost).
struct Posture {
    GestureVector gesture{};
    Tube tube;
    std::vector<Complex> poles;
};

class Mouth {
  public:
    /// `least` and `most`: how far each part can go from here, -1..0 and 0..1, of a travel that is `travel`
    /// times that of a neutral vowel.
    Mouth(Tube home, GestureVector const& least, GestureVector const& most,
          GestureVector const& travel = {1, 1, 1, 1, 1, 1, 1});

    Posture const& home() const { return home_; }
    /// The tube of a gesture. No gesture widens a section past `widest`, as no mouth opens without end.
    Tube shaped(GestureVector const& gesture) const;
    /// Relative change of fR1 and fR2 with each part of the gesture.
    using Jacobian = std::array<GestureVector, 2>;
    Jacobian jacobian(Posture const& at) const;
    /// The posture of a gesture, its first poles followed from those of a near posture, whose slopes help;
    /// nothing if fR1 or fR2 is lost or the airway all but closes.
    std::optional<Posture> moved(Posture const& from, GestureVector const& gesture, std::size_t poles = 4,
                                 Jacobian const* slopes = nullptr) const;

    /// From a posture, the cheapest gesture (weights `cost`, each part within its limits) that moves fR1 and
    /// fR2 to home's times these factors; nothing if it stays more than `tolerance` (relative) away.
    std::optional<Posture> towards(Posture const& from, double factor1, double factor2,
                                   GestureVector const& cost, double tolerance, int most_steps) const;

  private:
    /// Growth of ln area of a section for a gesture, before the bound on its width.
    double growth(std::size_t section, GestureVector const& gesture) const;

    Posture home_;
    double widest_; // cm²
    GestureVector least_, most_;
    std::vector<GestureVector> widening_;    // d ln area of each section
    std::vector<GestureVector> lengthening_; // d ln length of each section
};

} // namespace vowelway::acoustics::tube
