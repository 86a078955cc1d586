// SPDX-License-Identifier: MIT
// The look: a few inks on paper. Colour never speaks alone; a texture, a line style or a sign says the same.
#pragma once

#include "vowelway/chart/canvas.hpp"

namespace vowelway::chart {

namespace ink { // roles; a theme gives them their colours when a page is drawn
using enum Ink;
inline constexpr Ink black = Ink::text, white = Ink::paper;
} // namespace ink

// Sizes in points. Nothing is set smaller than `small`.
namespace type {
inline constexpr double title = 21, heading = 11, body = 10, label = 8.5, small = 7.5;
}

inline TextStyle plain(double size, Ink color = ink::black) { return {.size = size, .color = color}; }
inline TextStyle bold(double size, Ink color = ink::black) {
    return {.size = size, .color = color, .bold = true};
}
inline TextStyle slanted(double size, Ink color = ink::black) {
    return {.size = size, .color = color, .italic = true};
}
inline TextStyle music(double size, Ink color = ink::black) {
    return {.size = size, .color = color, .face = Face::music};
}

/// Page margins.
inline constexpr double margin_side = 40, margin_top = 36, margin_bottom = 40;

} // namespace vowelway::chart
