// SPDX-License-Identifier: MIT
#include "vowelway/chart/canvas.hpp"

#include "core/ranges.hpp"

#include <algorithm>

namespace vowelway::chart {

Path& Path::add(Verb verb, std::initializer_list<Point> points) {
    verbs_.push_back(verb);
    points_.insert(points_.end(), points);
    return *this;
}

Path& Path::rectangle(Box const& b) {
    return move({b.left, b.top})
        .line({b.right(), b.top})
        .line({b.right(), b.bottom()})
        .line({b.left, b.bottom()})
        .close();
}

Path& Path::circle(Point c, double r) {
    double const k = 0.5523 * r; // the usual cubic approximation of a quarter circle
    move({c.x + r, c.y});
    curve({c.x + r, c.y + k}, {c.x + k, c.y + r}, {c.x, c.y + r});
    curve({c.x - k, c.y + r}, {c.x - r, c.y + k}, {c.x - r, c.y});
    curve({c.x - r, c.y - k}, {c.x - k, c.y - r}, {c.x, c.y - r});
    curve({c.x + k, c.y - r}, {c.x + r, c.y - k}, {c.x + r, c.y});
    return close();
}

Path& Path::append(Path const& path) {
    verbs_.insert(verbs_.end(), path.verbs_.begin(), path.verbs_.end());
    points_.insert(points_.end(), path.points_.begin(), path.points_.end());
    return *this;
}

Path Path::moved(Point by, double scale) const {
    Path result = *this;
    for (auto& p : result.points_) p = {p.x * scale + by.x, p.y * scale + by.y};
    return result;
}

Box Path::bounds() const {
    if (points_.empty()) return {};
    auto const [left, right] = ranges::minmax_element(points_, {}, &Point::x);
    auto const [top, bottom] = ranges::minmax_element(points_, {}, &Point::y);
    return {left->x, top->y, right->x - left->x, bottom->y - top->y};
}

Box Canvas::write(Point at, std::string_view utf8, TextStyle const& style, Align align) {
    auto const extent = measurer().measure(utf8, style);
    if (align == Align::centre) at.x -= extent.advance / 2;
    if (align == Align::right) at.x -= extent.advance;
    text(at, utf8, style);
    return extent.box(at);
}

} // namespace vowelway::chart
