// SPDX-License-Identifier: MIT
#include "chart/charts/voices_compared/voices.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {

void draw_voice_mark(Canvas& canvas, Point c, double r, std::size_t voice, bool filled) {
    Path shape;
    auto const polygon = [&](int corners, double turn) {
        for (int i = 0; i < corners; ++i) {
            double const angle = (turn + i * 360.0 / corners) * 3.14159265358979 / 180;
            Point const at{c.x + r * 1.15 * std::sin(angle), c.y - r * 1.15 * std::cos(angle)};
            if (i == 0)
                shape.move(at);
            else
                shape.line(at);
        }
        shape.close();
    };
    switch (voice % most_voices) {
    case 0:
        shape.circle(c, r * 0.95);
        break;
    case 1:
        shape.rectangle({c.x - r * 0.88, c.y - r * 0.88, 1.76 * r, 1.76 * r});
        break;
    case 2:
        polygon(3, 0);
        break;
    case 3:
        polygon(4, 0);
        break;
    case 4:
        polygon(3, 180);
        break;
    case 5:
        polygon(6, 0);
        break;
    case 6:
        shape.rectangle({c.x - r * 1.1, c.y - r * 0.5, 2.2 * r, r});
        break;
    default:
        shape.rectangle({c.x - r * 0.5, c.y - r * 1.1, r, 2.2 * r});
        break;
    }
    canvas.fill(shape, filled ? ink::black : ink::white);
    canvas.stroke(shape, {.width = 0.8, .color = ink::black});
}

bool all_average(plan::Comparison const& comparison) {
    return ranges::all_of(comparison.singers, &Singer::average);
}

std::string voice_name(Singer const& singer, bool all_average) {
    if (all_average && singer.voice != VoiceType::other) return std::string(to_string(singer.voice));
    bool const told = !singer.average || singer.name.find("verage") != std::string::npos;
    return told ? singer.name : singer.name + " (average)";
}

double draw_voices_legend(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices, double y,
                          double width) {
    auto const style = plain(type::body);
    double x = 0;
    y += 10;
    for (std::size_t v = 0; v < voices; ++v) {
        auto const name = fitted(
            canvas.measurer(), voice_name(comparison.singers[v], all_average(comparison)), style, width - 20);
        double const need = 12 + canvas.measurer().measure(name, style).advance;
        if (x > 0 && x + need > width) x = 0, y += 13.5;
        draw_voice_mark(canvas, {x + 4, y - 3}, 3.2, v, true);
        canvas.write({x + 12, y}, name, style);
        x += need + 14;
    }
    y += 13;
    canvas.write({0, y},
                 fitted(canvas.measurer(), fmt::format("passaggio: {}", plan::generic_passaggio_label),
                        plain(type::small, ink::soft), width),
                 plain(type::small, ink::soft));
    return y + 5;
}

} // namespace vowelway::chart
