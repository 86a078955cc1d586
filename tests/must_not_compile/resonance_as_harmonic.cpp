// SPDX-License-Identifier: MIT
#include "vowelway/core/resonance.hpp"

using namespace vowelway;

Frequency place(ResonanceNumber k, Pitch fo) {
#if BAD
    return frequency_of(k, fo); // fR2 is not 2fo
#else
    return frequency_of(Harmonic{k.number}, fo);
#endif
}
