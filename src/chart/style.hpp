// SPDX-License-Identifier: MIT
// The look: a few inks on white. Colour never speaks alone; a texture, a line style or a sign says the same.
#pragma once

#include "vowelway/chart/canvas.hpp"

namespace vowelway::chart {

namespace ink {
inline constexpr Color black{0.10, 0.10, 0.13};
inline constexpr Color soft{0.36, 0.35, 0.41};  // secondary text
inline constexpr Color rule{0.66, 0.65, 0.70};  // lines between things
inline constexpr Color hair{0.86, 0.86, 0.89};  // lines behind things
inline constexpr Color wash{0.955, 0.955, 0.965};
inline constexpr Color white{1, 1, 1};
inline constexpr Color first{0.10, 0.31, 0.55};  // fR1
inline constexpr Color first_wash{0.89, 0.93, 0.97};
inline constexpr Color second{0.58, 0.30, 0.04}; // fR2
inline constexpr Color second_wash{0.98, 0.93, 0.85};
inline constexpr Color modify{0.62, 0.10, 0.22};
inline constexpr Color migrate{0.13, 0.42, 0.36};
} // namespace ink

// Sizes in points. Nothing is set smaller than `small`.
namespace type {
inline constexpr double title = 21, heading = 11, body = 10, label = 8.5, small = 7.5;
}

inline TextStyle plain(double size, Color color = ink::black) { return {.size = size, .color = color}; }
inline TextStyle bold(double size, Color color = ink::black) { return {.size = size, .color = color, .bold = true}; }
inline TextStyle slanted(double size, Color color = ink::black) { return {.size = size, .color = color, .italic = true}; }
inline TextStyle music(double size, Color color = ink::black) {
    return {.size = size, .color = color, .face = Face::music};
}

/// Page margins.
inline constexpr double margin_side = 40, margin_top = 36, margin_bottom = 40;

} // namespace vowelway::chart
