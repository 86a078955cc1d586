// SPDX-License-Identifier: MIT
#include "chart/charts/voices_compared/voices.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <cmath>

namespace vowelway::chart {

namespace {

Path polygon(Point c, double r, int corners, double turn) {
    Path shape;
    for (int i = 0; i < corners; ++i) {
        double const angle = (turn + i * 360.0 / corners) * 3.14159265358979 / 180;
        Point const at{c.x + r * 1.15 * std::sin(angle), c.y - r * 1.15 * std::cos(angle)};
        if (i == 0)
            shape.move(at);
        else
            shape.line(at);
    }
    shape.close();
    return shape;
}

/// Around its middle.
Path block(Point c, double width, double height) {
    return Path().rectangle({c.x - width / 2, c.y - height / 2, width, height});
}

Path cross(Point c, double r) {
    double const arm = 1.2 * r, half = 0.4 * r;
    Path shape;
    shape.move({c.x - arm, c.y - half});
    for (auto const& [x, y] : {Point{-half, -half}, Point{-half, -arm}, Point{half, -arm}, Point{half, -half},
                               Point{arm, -half}, Point{arm, half}, Point{half, half}, Point{half, arm},
                               Point{-half, arm}, Point{-half, half}, Point{-arm, half}})
        shape.line({c.x + x, c.y + y});
    shape.close();
    return shape;
}

Path voice_shape(Point c, double r, std::size_t voice) {
    switch (voice % most_voices) {
    case 0:
        return Path().circle(c, r * 0.95);
    case 1:
        return block(c, 1.76 * r, 1.76 * r);
    case 2:
        return polygon(c, r, 3, 0);
    case 3:
        return polygon(c, r, 4, 0);
    case 4:
        return polygon(c, r, 3, 180);
    case 5:
        return polygon(c, r, 6, 0);
    case 6:
        return block(c, 2.2 * r, r);
    case 7:
        return block(c, r, 2.2 * r);
    default:
        return cross(c, r);
    }
}

} // namespace

void draw_voice_mark(Canvas& canvas, Point c, double r, std::size_t voice, bool filled) {
    auto const shape = voice_shape(c, r, voice);
    canvas.fill(shape, filled ? ink::black : ink::white);
    canvas.stroke(shape, {.width = 0.8, .color = ink::black});
}

bool all_average(plan::Comparison const& comparison) {
    return ranges::all_of(comparison.singers, &Singer::average);
}

/// The built-in ones; to_word: what their names have in common ("Average tenor").
static bool is_named_average(Singer const& singer) {
    return singer.name.find(reworded(to_word("verage"))) != std::string::npos;
}

std::string voice_name(Singer const& singer, bool all_average) {
    if (all_average && singer.voice != VoiceType::other)
        return std::string(reworded(to_string(singer.voice)));
    bool const told = !singer.average || is_named_average(singer);
    return told ? singer.name : worded("{0} (average)", singer.name);
}

std::string short_voice_name(Singer const& singer) {
    bool const built_in = singer.average && is_named_average(singer);
    return built_in && singer.voice != VoiceType::other ? std::string(reworded(to_string(singer.voice)))
                                                        : singer.name;
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
                 fitted(canvas.measurer(), worded("passaggio: {0}", reworded(plan::generic_passaggio_label)),
                        plain(type::small, ink::soft), width),
                 plain(type::small, ink::soft));
    return y + 5;
}

} // namespace vowelway::chart
