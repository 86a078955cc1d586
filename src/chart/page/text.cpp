// SPDX-License-Identifier: MIT
#include "chart/page/text.hpp"

#include "chart/canvas/style.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {

double draw_heading(Canvas& canvas, double x, double y, double width, std::string_view text) {
    canvas.write({x, y + 10}, text, bold(type::heading));
    canvas.line({x, y + 14.5}, {x + width, y + 14.5}, {.width = 0.8, .color = ink::black});
    return y + 17;
}

std::string beat_of(double beat) {
    double const rounded = std::round(beat * 100) / 100;
    return rounded == std::floor(rounded) ? fmt::format("{:.0f}", rounded) : fmt::format("{:g}", rounded);
}

std::string slashed(Vowel const& vowel) { return "/" + vowel.quality().ipa() + "/"; }

} // namespace vowelway::chart
