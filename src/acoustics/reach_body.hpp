// SPDX-License-Identifier: MIT
// The model behind a set of reachable shapes. Private to the layer.
#pragma once

#include "acoustics/mouth.hpp"
#include "vowelway/acoustics/reachable.hpp"

namespace vowelway::acoustics {

struct ReachableSet::Body {
    tube::Mouth mouth;
    ResonanceSet own;
    GestureVector cost;
    double compliant_ratio; // upper end of the compliant band over fR1, at home
    Frequency highest_r1;

    Shape shape_of(tube::Posture const& posture) const;
    bool usable() const { return mouth.home().poles.size() >= 2; } // fR1 and fR2 are there
};

} // namespace vowelway::acoustics
