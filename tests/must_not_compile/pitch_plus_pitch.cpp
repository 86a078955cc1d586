// SPDX-License-Identifier: MIT
#include "vowelway/core/pitch.hpp"

using namespace vowelway;

Pitch higher(Pitch a, Pitch b) {
#if BAD
    return a + b; // two pitches have no sum
#else
    return a + (b - a);
#endif
}
