// SPDX-License-Identifier: MIT
// A legend: samples with their words beside each other, in as many lines as they need.
#pragma once

#include "chart/canvas/style.hpp"

#include <string_view>

namespace vowelway::chart {

class Legend {
  public:
    /// The first line's baseline is at `y`; entries are `gap` apart, lines `line`.
    Legend(Canvas& canvas, double y, double width, double gap, double line = 12.5)
        : canvas_(&canvas), y_(y), width_(width), gap_(gap), line_(line) {}

    /// `draw(x, y)` draws the sample, `sample` wide: its left end and the baseline.
    template <typename Draw> void entry(double sample, std::string_view text, Draw&& draw) {
        auto const style = plain(type::label);
        double const need = sample + 4 + canvas_->measurer().measure(text, style).advance;
        if (x_ > 0 && x_ + need > width_) x_ = 0, y_ += line_;
        draw(x_, y_);
        canvas_->write({x_ + sample + 4, y_}, text, style);
        x_ += need + gap_;
    }
    double y() const { return y_; } ///< baseline of the last line

  private:
    Canvas* canvas_;
    double x_ = 0, y_, width_, gap_, line_;
};

} // namespace vowelway::chart
