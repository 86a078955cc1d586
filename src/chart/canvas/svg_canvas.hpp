// SPDX-License-Identifier: MIT
// Paper as SVG. Where the measurer knows the letters' outlines they are drawn by them, each once a face, so
// that a page looks the same where the fonts are missing; the words stand over them as text that is not
// painted, to be found, marked and read aloud. Otherwise the words are text in the theme's fonts.
#pragma once

#include "chart/caption.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/chart/letter_forms.hpp"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::chart {

class SvgCanvas : public Canvas {
  public:
    /// Borrows both.
    SvgCanvas(TextMeasurer const& text, Theme const& theme) : text_(&text), theme_(&theme) {}

    using Canvas::fill;
    void fill(Path const& path, Ink color) override;
    void stroke(Path const& path, Pen const& pen) override;
    void text(Point at, std::string_view utf8, TextStyle const& style) override;
    TextMeasurer const& measurer() const override { return *text_; }

    /// All that was drawn, as a file: `page` as laid out, drawn theme.size times as large.
    std::string document(Size page, std::string_view title, std::string_view description);

  private:
    void flush();
    std::string glyph(LetterForms const& forms, SetText::Letter const& letter);
    void plain_text(Point at, std::string_view utf8, TextStyle const& style);

    TextMeasurer const* text_;
    Theme const* theme_;
    std::string body_, outlines_;
    std::map<std::pair<std::string, unsigned>, std::string>
        glyphs_;             ///< name of the outline by face and glyph; empty: blank
    std::optional<Pen> pen_; ///< strokes of one pen wait for each other: one object in the file
    Path waiting_;
};

/// The pages as files of their own, drawn theme.size times as large as they were laid out.
std::vector<Document> as_svg(std::span<Page const> pages, TextMeasurer const& text, Theme const& theme,
                             Caption const& caption);

} // namespace vowelway::chart
