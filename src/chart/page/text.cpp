// SPDX-License-Identifier: MIT
#include "chart/page/text.hpp"

#include "chart/canvas/style.hpp"
#include "chart/page/marks.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {

double draw_heading(Canvas& canvas, double x, double y, double width, std::string_view text) {
    canvas.write({x, y + 10}, text, bold(type::heading));
    canvas.line({x, y + 14.5}, {x + width, y + 14.5}, {.width = 0.8, .color = ink::black});
    return y + 17;
}

double paragraph(Canvas& canvas, double x, double y, double width, std::string_view text,
                 TextStyle const& style, double line_height) {
    for (auto const& line : wrapped(canvas.measurer(), text, style, width))
        canvas.write({x, y += line_height}, fitted(canvas.measurer(), line, style, width), style);
    return y;
}

std::string beat_of(double beat) {
    double const rounded = std::round(beat * 100) / 100;
    return rounded == std::floor(rounded) ? fmt::format("{:.0f}", rounded) : fmt::format("{:g}", rounded);
}

std::string slashed(Vowel const& vowel) { return "/" + vowel.quality().ipa() + "/"; }

} // namespace vowelway::chart
