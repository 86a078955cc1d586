// SPDX-License-Identifier: MIT
// Paper by Cairo: PDF, SVG and PNG, as bytes.
#pragma once

#include "chart/pango_text.hpp"
#include "vowelway/chart/drawing.hpp"

#include <cairo.h>

#include <optional>
#include <span>
#include <string>

namespace vowelway::chart {

/// What the file says of itself.
struct Caption {
    std::string title;
    std::string description;
};

class CairoCanvas : public Canvas {
  public:
    /// Borrows the context. `grey` turns every colour into its grey.
    CairoCanvas(cairo_t* context, PangoText const& text, bool grey) : cr_(context), text_(&text), grey_(grey) {}

    using Canvas::fill;
    void fill(Path const& path, Color color) override;
    void stroke(Path const& path, Pen const& pen) override;
    void text(Point at, std::string_view utf8, TextStyle const& style) override;
    TextMeasurer const& measurer() const override { return *text_; }
    /// Strokes may wait for others of their pen; this draws them. Call it when all is drawn.
    void flush();

  private:
    void trace(Path const& path);
    void use(Color color);

    cairo_t* cr_;
    PangoText const* text_;
    bool grey_;
    std::optional<Pen> pending_;
};

std::string as_pdf(std::span<Page const> pages, PangoText const& text, bool grey, Caption const& caption);
std::string as_svg(Page const& page, PangoText const& text, bool grey, Caption const& caption);
std::string as_png(Page const& page, PangoText const& text, bool grey, double dpi);

} // namespace vowelway::chart
