// SPDX-License-Identifier: MIT
#include "vowelway/core/resonance.hpp"

using namespace vowelway;

Frequency second_harmonic(Resonance const& r, Pitch fo) {
#if BAD
    return frequency_of(Harmonic{2}, r.centre); // a resonance is not sung
#else
    return r.centre > 0_Hz ? frequency_of(Harmonic{2}, fo) : 0_Hz;
#endif
}
