// SPDX-License-Identifier: MIT
// What charts draw on. Lengths are in points (1/72 inch), x grows to the right and y downwards.
// Threads: a Canvas, a Path and a TextMeasurer belong to one thread at a time.
#pragma once

#include "vowelway/core/theme.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::chart {

struct Point {
    double x = 0, y = 0;
};
struct Box {
    double left = 0, top = 0, width = 0, height = 0;
    double right() const { return left + width; }
    double bottom() const { return top + height; }
    bool overlaps(Box const& b) const {
        return left < b.right() && b.left < right() && top < b.bottom() && b.top < bottom();
    }
};
struct Size {
    double width = 0, height = 0;
};

enum class Face {
    text, ///< words and IPA
    music ///< musical symbols of Unicode; a size of four staff spaces fits the staff, baseline on its bottom
          ///< line
};

struct TextStyle {
    double size = 9;
    Ink color = Ink::text;
    bool bold = false, italic = false;
    Face face = Face::text;
};

/// Where a text's ink lies about the point it is set at (the left end of its baseline), and how far it
/// moves on. `above` and `below` are positive away from the baseline.
struct TextExtent {
    double advance = 0;
    double left = 0, right = 0, above = 0, below = 0;
    Box box(Point at) const { return {at.x + left, at.y - above, right - left, above + below}; }
};

/// Straight lines and cubic curves, in pieces.
class Path {
  public:
    enum class Verb { move, line, curve, close };
    Path& move(Point p) { return add(Verb::move, {p}); }
    Path& line(Point p) { return add(Verb::line, {p}); }
    Path& curve(Point c1, Point c2, Point to) { return add(Verb::curve, {c1, c2, to}); }
    Path& close() { return add(Verb::close, {}); }
    Path& rectangle(Box const& box);
    Path& circle(Point centre, double radius);
    Path& append(Path const& path);

    std::span<Verb const> verbs() const { return verbs_; }
    std::span<Point const> points() const { return points_; }
    bool empty() const { return verbs_.empty(); }
    /// First scaled, then moved.
    Path moved(Point by, double scale = 1) const;
    /// Of the points, control points included.
    Box bounds() const;

  private:
    Path& add(Verb verb, std::initializer_list<Point> points);
    std::vector<Verb> verbs_;
    std::vector<Point> points_;
};

class LetterForms;

/// Knows how large a text will be.
class TextMeasurer {
  public:
    virtual ~TextMeasurer() = default;
    virtual TextExtent measure(std::string_view utf8, TextStyle const& style) const = 0;
    /// The letters themselves, if they are known here: then an SVG looks the same where the fonts are
    /// missing.
    virtual LetterForms const* forms() const { return nullptr; }
};

/// How a line is drawn. Dashes and gaps alternate; none: solid. Round caps make dots of empty pieces.
struct Pen {
    double width = 0.5;
    Ink color = Ink::text;
    std::vector<double> dashes = {};
    bool round = false;
    friend bool operator==(Pen const&, Pen const&) = default;
};

enum class Align { left, centre, right };

class Canvas {
  public:
    virtual ~Canvas() = default;

    virtual void fill(Path const& path, Ink color) = 0;
    virtual void stroke(Path const& path, Pen const& pen) = 0;
    /// `at` is the left end of the baseline.
    virtual void text(Point at, std::string_view utf8, TextStyle const& style) = 0;
    virtual TextMeasurer const& measurer() const = 0;

    void line(Point from, Point to, Pen const& pen) { stroke(Path().move(from).line(to), pen); }
    void fill(Box const& box, Ink color) { fill(Path().rectangle(box), color); }
    /// Sets a text left, centred or right of a point, by its advance; says where its ink went.
    Box write(Point at, std::string_view utf8, TextStyle const& style, Align align = Align::left);
};

} // namespace vowelway::chart
