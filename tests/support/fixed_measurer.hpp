// SPDX-License-Identifier: MIT
// Text of a size that no font decides: goldens are the same on every machine.
#pragma once

#include "core/utf8.hpp"
#include "vowelway/chart/canvas.hpp"

namespace vowelway::sample {

/// Every character is half an em wide; combining marks take no room, figures have no descender. A musical
/// symbol is as large as a note head.
class FixedMeasurer : public chart::TextMeasurer {
  public:
    chart::TextExtent measure(std::string_view text, chart::TextStyle const& style) const override {
        if (style.face == chart::Face::music)
            return {.advance = 0.4 * style.size,
                    .left = 0.05 * style.size,
                    .right = 0.35 * style.size,
                    .above = 0.27 * style.size};
        bool const figures = text.find_first_not_of("0123456789") == std::string_view::npos;
        double width = 0;
        while (auto const c = utf8::eat(text))
            if (*c < 0x300 || *c > 0x36F) width += 0.5 * style.size;
        return {.advance = width,
                .left = 0,
                .right = width,
                .above = 0.7 * style.size,
                .below = figures ? 0 : 0.2 * style.size};
    }
};

} // namespace vowelway::sample
