// SPDX-License-Identifier: MIT
// The symbols of the music face, Noto Music, that are set by their ink.
#pragma once

#include "chart/canvas/style.hpp"
#include "chart/engraving/score_layout.hpp"

namespace vowelway::chart {

inline constexpr double em = 4 * space; ///< size of the music face that fits the staff

/// How far a symbol's visual centre lies above its baseline, its ink's left edge and width, in thousandths of
/// the em (read from the font), and the scale that suits the staff.
struct Symbol {
    char const* utf8;
    double centre, left, width, scale;
};

namespace symbol {
inline constexpr Symbol black_head{"\U0001D158", 134, 51, 296, 1}, half_head{"\U0001D157", 134, 51, 296, 1},
    whole_head{"\U0001D15D", 134, 50, 414, 1}, breve_head{"\U0001D15C", 135, 50, 613, 1};
inline constexpr Symbol sharp{"♯", 178, 51, 451, 0.82}, flat{"♭", 112, 51, 245, 1.0},
    natural{"♮", 96, 51, 255, 1.0}, double_sharp{"\U0001D12A", 131, 50, 260, 1.0},
    double_flat{"\U0001D12B", 112, 50, 367, 1.0}, quarter_sharp{"\U0001D132", 500, 50, 135, 1.6},
    quarter_flat{"\U0001D133", 420, 50, 150, 1.4};
inline constexpr Symbol common_time{"\U0001D134", 500, 50, 422, 1}, cut_time{"\U0001D135", 500, 50, 422, 1};
} // namespace symbol

/// Sets a symbol with its centre at y and its ink beginning at x.
inline void put(Canvas& canvas, Symbol const& s, double x, double y, double scale = 1) {
    double const size = em * s.scale * scale;
    canvas.text({x - s.left / 1000 * size, y + s.centre / 1000 * size}, s.utf8, music(size));
}

inline double width_of(Symbol const& s, double scale = 1) { return s.width / 1000 * em * s.scale * scale; }

} // namespace vowelway::chart
