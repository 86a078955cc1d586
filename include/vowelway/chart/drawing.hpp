// SPDX-License-Identifier: MIT
// A canvas that remembers: layout measures with it, pages are made of it, tests read it.
// Threads: a Drawing, with its measurer, belongs to one thread at a time.
#pragma once

#include "vowelway/chart/canvas.hpp"

#include <cstddef>
#include <string>
#include <variant>
#include <vector>

namespace vowelway::chart {

class Drawing : public Canvas {
  public:
    /// The measurer must outlive the drawing.
    explicit Drawing(TextMeasurer const& measurer) : measurer_(&measurer) {}

    using Canvas::fill;
    void fill(Path const& path, Ink color) override;
    void stroke(Path const& path, Pen const& pen) override;
    void text(Point at, std::string_view utf8, TextStyle const& style) override;
    TextMeasurer const& measurer() const override { return *measurer_; }

    /// Draws everything again, first made `scale` times as large, then moved.
    void replay(Canvas& onto, Point by = {}, double scale = 1) const;

    /// The ink of one stroke.
    struct Mark {
        enum class Kind { text, music, shape };
        Kind kind = Kind::shape;
        Box box;
        std::string_view text; ///< valid as long as the drawing lives and is not added to
    };
    /// In the order drawn. Curves count with their control points.
    std::vector<Mark> marks() const;

    /// The highest and the lowest ink between two abscissae; `fallback` where there is none.
    double top(double from, double to, double fallback) const;
    double bottom(double from, double to, double fallback) const;

    /// One line a stroke, in tenths of a point: for reading and comparing.
    std::string strokes() const;

  private:
    struct Fill {
        Path path;
        Ink color;
    };
    struct Stroke {
        Path path;
        Pen pen;
    };
    struct Text {
        Point at;
        std::string utf8;
        TextStyle style;
        Box ink;
    };
    TextMeasurer const* measurer_;
    std::vector<std::variant<Fill, Stroke, Text>> items_;
    std::vector<Box> boxes_; ///< of each item
};

/// Where a sung note stands on a page, from its staff to what is said of it: for a screen, to be tapped.
struct NoteSpot {
    std::size_t note = 0; ///< index in Passage::notes
    Box box;
    bool begins = true; ///< false: held over from the system before, or a tied head
};

/// One page of a chart.
struct Page {
    Size size;
    Drawing drawing;
    std::vector<NoteSpot> notes = {}; ///< of a passage sheet, in the order drawn
};

} // namespace vowelway::chart
