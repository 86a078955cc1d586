// SPDX-License-Identifier: MIT
// The vibrato a voice is heard with.
#pragma once

#include "vowelway/core/units.hpp"

namespace vowelway {

/// A sine around the pitch: `extent` to either side, 0 for none. What is usual in classical singing (common
/// practice, no source).
struct Vibrato {
    Cents extent{50};
    Frequency rate = hertz(5.5);
    friend bool operator==(Vibrato const&, Vibrato const&) = default;
};
inline constexpr Cents widest_vibrato{200};
inline constexpr Frequency slowest_vibrato = hertz(3), fastest_vibrato = hertz(9);

} // namespace vowelway
