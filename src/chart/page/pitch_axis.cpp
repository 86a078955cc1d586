// SPDX-License-Identifier: MIT
#include "chart/page/pitch_axis.hpp"

#include "chart/canvas/style.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace vowelway::chart {
namespace {

bool black_key(int key) {
    int const k = ((key % 12) + 12) % 12;
    return k == 1 || k == 3 || k == 6 || k == 8 || k == 10;
}

} // namespace

double PitchAxis::clamped(Pitch p) const { return std::clamp(y(p), top, bottom); }

void PitchAxis::draw(Canvas& canvas, double left, double right) const {
    double const height = row();
    auto const y_of = [&](double key) { return y(key); };
    for (int key = static_cast<int>(low); key <= static_cast<int>(high); ++key) {
        double const y = y_of(key);
        if (black_key(key)) canvas.fill(Box{left, y - height / 2, right - left, height}, ink::wash);
        auto const name = tuning.name(tuning.pitch(key)).pitch;
        bool const c = name.step == 'C' && name.alter == 0;
        if (black_key(key)) continue;
        if (height < 8.4 && !c && name.step != 'F' && name.step != 'A') continue;
        canvas.write({left - 5, y + 3}, name.str(), c ? bold(type::label) : plain(type::label, ink::soft),
                     Align::right);
        if (!c) continue;
        if (height >= 8.4)
            canvas.write({right + 2, y + 2.6}, fmt::format("{:.0f}", in_hertz(tuning.pitch(key).frequency())),
                         plain(type::small, ink::soft));
    }
    // The lines of bass and treble staff, each at its own semitone, so that one sees where one is.
    double const from = left - room_left + 4, to = left - 27;
    constexpr int bass[] = {43, 47, 50, 53, 57}, treble[] = {64, 67, 71, 74, 77};
    auto const lines = [&](std::span<int const> keys, char const* clef, int on) {
        bool any = false;
        for (int const key : keys) {
            if (key < low || key > high) continue;
            canvas.line({from, y_of(key)}, {to, y_of(key)}, {.width = 0.6, .color = ink::black});
            any = true;
        }
        if (!any || on < low || on > high) return;
        double const gap = height > 8.8 ? 7.0 : std::max(4.0, height);
        bool const g = on == 67;
        Point const at{from + 3, y_of(on) + (g ? 1.0 : 3.0) * gap};
        auto const ink = canvas.measurer().measure(clef, music(4 * gap)).box(at);
        if (ink.top >= top - 20 && ink.bottom() <= bottom + 6)
            canvas.text(at, clef, music(4 * gap)); // no room where only its tip is in range
    };
    lines(bass, "\U0001D122", 53);
    lines(treble, "\U0001D11E", 67);
}

} // namespace vowelway::chart
