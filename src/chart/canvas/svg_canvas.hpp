// SPDX-License-Identifier: MIT
// Paper as SVG. Letters are drawn by their outlines, each once a face, so that a page looks the same where
// the fonts are missing; the words stand over them as text that is not painted, to be found, marked and read
// aloud.
#pragma once

#include "chart/cairo/pango_text.hpp"
#include "vowelway/chart/canvas.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace vowelway::chart {

class SvgCanvas : public Canvas {
  public:
    /// Borrows both.
    SvgCanvas(PangoText const& text, Theme const& theme) : text_(&text), theme_(&theme) {}

    using Canvas::fill;
    void fill(Path const& path, Ink color) override;
    void stroke(Path const& path, Pen const& pen) override;
    void text(Point at, std::string_view utf8, TextStyle const& style) override;
    TextMeasurer const& measurer() const override { return *text_; }

    /// All that was drawn, as a file: `page` as laid out, drawn theme.size times as large.
    std::string document(Size page, std::string_view title, std::string_view description);

  private:
    void flush();
    std::string glyph(PangoFont* font, PangoGlyph glyph);

    PangoText const* text_;
    Theme const* theme_;
    std::string body_, outlines_;
    std::map<std::pair<std::string, PangoGlyph>, std::string>
        glyphs_;             ///< name of the outline by face and glyph; empty: blank
    std::optional<Pen> pen_; ///< strokes of one pen wait for each other: one object in the file
    Path waiting_;
};

} // namespace vowelway::chart
