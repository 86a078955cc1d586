// SPDX-License-Identifier: MIT
#include "vowelway/core/resonance.hpp"

using namespace vowelway;

Resonance first() {
#if BAD
    return {700, 50, false, {}}; // seven hundred what?
#else
    return {700_Hz, 50_Hz, false, {}};
#endif
}
