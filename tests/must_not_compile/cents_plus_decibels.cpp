// SPDX-License-Identifier: MIT
#include "vowelway/core/units.hpp"

using namespace vowelway;

double sum(Cents c, Decibels d) {
#if BAD
    return (c + d).value; // intervals and levels are of different kinds
#else
    return c.value + d.value;
#endif
}
