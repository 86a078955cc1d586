// SPDX-License-Identifier: MIT
#include "vowelway/core/units.hpp"

using namespace vowelway;

Frequency lowest(Length tract) {
#if BAD
    return tract; // a tract of 17 cm has no 17 Hz
#else
    return hertz(35000 / (4 * in_centimetres(tract)));
#endif
}
