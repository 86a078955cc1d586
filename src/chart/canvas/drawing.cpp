// SPDX-License-Identifier: MIT
#include "vowelway/chart/drawing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

Box grown(Box b, double by) { return {b.left - by, b.top - by, b.width + 2 * by, b.height + 2 * by}; }

/// Tenths of a point, and no negative zero.
std::string tenths(double v) {
    double const rounded = std::round(v * 10) / 10;
    return fmt::format("{:.1f}", rounded == 0 ? 0.0 : rounded);
}
std::string point(Point p) { return tenths(p.x) + "," + tenths(p.y); }

std::string path(Path const& p) {
    std::string out;
    auto at = p.points().begin();
    for (auto const verb : p.verbs()) {
        switch (verb) {
        case Path::Verb::move:
            out += " M" + point(*at++);
            break;
        case Path::Verb::line:
            out += " L" + point(*at++);
            break;
        case Path::Verb::curve:
            out += " C" + point(at[0]) + " " + point(at[1]) + " " + point(at[2]);
            at += 3;
            break;
        case Path::Verb::close:
            out += " Z";
            break;
        }
    }
    return out;
}

} // namespace

void Drawing::fill(Path const& path, Ink color) {
    if (path.empty()) return;
    boxes_.push_back(path.bounds());
    items_.emplace_back(Fill{path, color});
}

void Drawing::stroke(Path const& path, Pen const& pen) {
    if (path.empty()) return;
    boxes_.push_back(grown(path.bounds(), pen.width / 2));
    items_.emplace_back(Stroke{path, pen});
}

void Drawing::text(Point at, std::string_view utf8, TextStyle const& style) {
    if (utf8.empty()) return;
    auto const ink = measurer_->measure(utf8, style).box(at);
    boxes_.push_back(ink);
    items_.emplace_back(Text{at, std::string(utf8), style, ink});
}

void Drawing::replay(Canvas& onto, Point by, double scale) const {
    for (auto const& item : items_) {
        if (auto const* f = std::get_if<Fill>(&item)) onto.fill(f->path.moved(by, scale), f->color);
        if (auto const* s = std::get_if<Stroke>(&item)) {
            auto pen = s->pen;
            pen.width *= scale;
            for (auto& dash : pen.dashes) dash *= scale;
            onto.stroke(s->path.moved(by, scale), pen);
        }
        if (auto const* t = std::get_if<Text>(&item)) {
            auto style = t->style;
            style.size *= scale;
            onto.text({t->at.x * scale + by.x, t->at.y * scale + by.y}, t->utf8, style);
        }
    }
}

std::vector<Drawing::Mark> Drawing::marks() const {
    std::vector<Mark> result;
    result.reserve(items_.size());
    for (std::size_t i = 0; i < items_.size(); ++i) {
        Mark mark{Mark::Kind::shape, boxes_[i], {}};
        if (auto const* t = std::get_if<Text>(&items_[i])) {
            mark.kind = t->style.face == Face::music ? Mark::Kind::music : Mark::Kind::text;
            mark.text = t->utf8;
        }
        result.push_back(mark);
    }
    return result;
}

double Drawing::top(double from, double to, double fallback) const {
    double y = fallback;
    for (auto const& b : boxes_)
        if (b.left < to && b.right() > from) y = std::min(y, b.top);
    return y;
}

double Drawing::bottom(double from, double to, double fallback) const {
    double y = fallback;
    for (auto const& b : boxes_)
        if (b.left < to && b.right() > from) y = std::max(y, b.bottom());
    return y;
}

std::string Drawing::strokes() const {
    std::string out;
    for (auto const& item : items_) {
        if (auto const* f = std::get_if<Fill>(&item))
            out += "fill " + std::string(to_string(f->color)) + path(f->path);
        if (auto const* s = std::get_if<Stroke>(&item)) {
            out += fmt::format("stroke {} {:.2f}", to_string(s->pen.color), s->pen.width);
            for (double d : s->pen.dashes) out += fmt::format(" {:.1f}", d);
            out += path(s->path);
        }
        if (auto const* t = std::get_if<Text>(&item)) {
            out += fmt::format("{} {} {} {}{}{} {}", t->style.face == Face::music ? "music" : "text",
                               point(t->at), to_string(t->style.color), tenths(t->style.size),
                               t->style.bold ? " bold" : "", t->style.italic ? " italic" : "", t->utf8);
        }
        out += "\n";
    }
    return out;
}

} // namespace vowelway::chart
