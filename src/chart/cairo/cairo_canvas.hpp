// SPDX-License-Identifier: MIT
// Paper by Cairo: PDF and PNG.
#pragma once

#include "chart/cairo/pango_text.hpp"
#include "chart/caption.hpp"
#include "vowelway/chart/drawing.hpp"

#include <cairo.h>

#include <optional>
#include <span>
#include <string>

namespace vowelway::chart {

class CairoCanvas : public Canvas {
  public:
    /// Borrows them all. `tagged`: each text says in the file what it is, a heading or words.
    CairoCanvas(cairo_t* context, PangoText const& text, Theme const& theme, bool tagged = false)
        : cr_(context), text_(&text), theme_(&theme), tagged_(tagged) {}

    using Canvas::fill;
    void fill(Path const& path, Ink color) override;
    void stroke(Path const& path, Pen const& pen) override;
    void text(Point at, std::string_view utf8, TextStyle const& style) override;
    TextMeasurer const& measurer() const override { return *text_; }
    /// Strokes may wait for others of their pen; this draws them. Call it when all is drawn.
    void flush();
    /// Ends the heading or paragraph that is open. Call it when all is drawn.
    void end_tag();

  private:
    void tag(TextStyle const& style, std::string_view utf8);
    void trace(Path const& path);
    void use(Ink color);

    cairo_t* cr_;
    PangoText const* text_;
    Theme const* theme_;
    bool tagged_;
    char const* open_ = ""; ///< the tag that is open
    TextStyle paragraph_;   ///< of the texts in it
    std::optional<Pen> pending_;
};

// Pages are drawn theme.size times as large as they were laid out.
std::string as_pdf(std::span<Page const> pages, PangoText const& text, Theme const& theme,
                   Caption const& caption);
std::string as_png(Page const& page, PangoText const& text, Theme const& theme, double dpi);

} // namespace vowelway::chart
