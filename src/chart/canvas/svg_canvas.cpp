// SPDX-License-Identifier: MIT
#include "chart/canvas/svg_canvas.hpp"

#include "core/xml.hpp"

#include <fmt/format.h>

#include <cmath>
#include <span>
#include <string>

namespace vowelway::chart {
namespace {

constexpr double em = 1000; // of the outlines

/// A number of `unit`ths, as short as SVG reads it; a sign or a point divides it from the one before.
void put(std::string& out, long value, int unit) {
    std::string text = value < 0 ? "-" : "";
    long const size = std::abs(value);
    if (unit == 1) {
        text += std::to_string(size);
    } else {
        if (size >= unit || size == 0) text += std::to_string(size / unit);
        if (long const rest = size % unit) {
            auto digits = std::to_string(unit + rest).substr(1);
            digits.erase(digits.find_last_not_of('0') + 1);
            text += "." + digits;
        }
    }
    bool const digit_before = !out.empty() && ((out.back() >= '0' && out.back() <= '9') || out.back() == '.');
    if (digit_before && text.front() != '-') out += ' ';
    out += text;
}

/// Path data, relative, rounded to 1/unit; the rounding does not add up.
class PathData {
  public:
    explicit PathData(int unit) : unit_(unit) {}
    void move(Point p) {
        step("m", {&p, 1});
        start_ = at_;
    }
    void line(Point p) {
        auto const to = rounded(p);
        if (to.second == at_.second)
            out_ += "h", put(out_, to.first - at_.first, unit_);
        else if (to.first == at_.first)
            out_ += "v", put(out_, to.second - at_.second, unit_);
        else
            step("l", {&p, 1});
        at_ = to;
    }
    void curve(std::span<Point const> points) { step("c", points); }
    void close() {
        out_ += "z";
        at_ = start_;
    }
    std::string const& str() const { return out_; }

  private:
    using Cell = std::pair<long, long>;
    Cell rounded(Point p) const { return {std::lround(p.x * unit_), std::lround(p.y * unit_)}; }
    void step(char const* verb, std::span<Point const> points) {
        out_ += verb;
        Cell last = at_;
        for (auto const& p : points) {
            last = rounded(p);
            put(out_, last.first - at_.first, unit_);
            put(out_, last.second - at_.second, unit_);
        }
        at_ = last;
    }
    int unit_;
    std::string out_;
    Cell at_{0, 0}, start_{0, 0};
};

/// Hundredths of a point are finer than any printer.
std::string data_of(Path const& path) {
    PathData data(100);
    auto at = path.points().begin();
    for (auto const verb : path.verbs()) {
        switch (verb) {
        case Path::Verb::move:
            data.move(*at++);
            break;
        case Path::Verb::line:
            data.line(*at++);
            break;
        case Path::Verb::curve:
            data.curve({at, at + 3});
            at += 3;
            break;
        case Path::Verb::close:
            data.close();
            break;
        }
    }
    return data.str();
}

std::string number(double value) {
    std::string out;
    put(out, std::lround(value * 100), 100);
    return out;
}

std::string hex(Color c) {
    auto const byte = [](double v) { return std::lround(v * 255); };
    return fmt::format("#{:02x}{:02x}{:02x}", byte(c.red), byte(c.green), byte(c.blue));
}

/// What tells a face from another: the font without its size.
std::string face_of(PangoFont* font) {
    Handle<PangoFontDescription, pango_font_description_free> const description(pango_font_describe(font));
    pango_font_description_unset_fields(description.get(), PANGO_FONT_MASK_SIZE);
    return Handle<char, g_free>(pango_font_description_to_string(description.get())).get();
}

/// An outline, 1000 to the em, y downwards; empty for a blank.
std::string outline(PangoFont* font, PangoGlyph glyph) {
    Handle<cairo_surface_t, cairo_surface_destroy> const surface(
        cairo_recording_surface_create(CAIRO_CONTENT_ALPHA, nullptr));
    Handle<cairo_t, cairo_destroy> const cr(cairo_create(surface.get()));
    auto* const scaled = pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(font));
    if (!scaled) return {};
    Handle<cairo_font_options_t, cairo_font_options_destroy> const options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_set_font_options(cr.get(), options.get());
    cairo_set_font_face(cr.get(), cairo_scaled_font_get_font_face(scaled));
    cairo_set_font_size(cr.get(), em);
    cairo_glyph_t const at{glyph, 0, 0};
    cairo_glyph_path(cr.get(), &at, 1);
    Handle<cairo_path_t, cairo_path_destroy> const path(cairo_copy_path(cr.get()));
    PathData data(1);
    bool ink = false;
    for (int i = 0; i < path->num_data; i += path->data[i].header.length) {
        auto const* d = path->data + i;
        auto const point = [&](int k) { return Point{d[k].point.x, d[k].point.y}; };
        switch (d->header.type) {
        case CAIRO_PATH_MOVE_TO:
            if (i + d->header.length < path->num_data) data.move(point(1)); // cairo ends a path with a move
            break;
        case CAIRO_PATH_LINE_TO:
            data.line(point(1)), ink = true;
            break;
        case CAIRO_PATH_CURVE_TO: {
            Point const points[] = {point(1), point(2), point(3)};
            data.curve(points), ink = true;
            break;
        }
        case CAIRO_PATH_CLOSE_PATH:
            data.close();
            break;
        }
    }
    return ink ? data.str() : std::string{};
}

} // namespace

void SvgCanvas::fill(Path const& path, Ink color) {
    flush();
    body_ += fmt::format("<path fill=\"{}\" d=\"{}\"/>\n", hex((*theme_)[color]), data_of(path));
}

void SvgCanvas::stroke(Path const& path, Pen const& pen) {
    if (!pen_ || !(*pen_ == pen)) flush();
    pen_ = pen;
    waiting_.append(path);
}

void SvgCanvas::flush() {
    if (!pen_) return;
    body_ += fmt::format("<path fill=\"none\" stroke=\"{}\" stroke-width=\"{}\"", hex((*theme_)[pen_->color]),
                         number(pen_->width));
    if (pen_->round) body_ += " stroke-linecap=\"round\" stroke-linejoin=\"round\"";
    if (!pen_->dashes.empty()) {
        std::string dashes;
        for (double const d : pen_->dashes) dashes += (dashes.empty() ? "" : " ") + number(d);
        body_ += " stroke-dasharray=\"" + dashes + "\"";
    }
    body_ += " d=\"" + data_of(waiting_) + "\"/>\n";
    pen_.reset();
    waiting_ = {};
}

std::string SvgCanvas::glyph(PangoFont* font, PangoGlyph glyph) {
    auto const [at, fresh] = glyphs_.try_emplace({face_of(font), glyph});
    if (!fresh) return at->second;
    auto const data = outline(font, glyph);
    if (data.empty()) return {};
    at->second = fmt::format("g{}", glyphs_.size());
    outlines_ += fmt::format("<path id=\"{}\" d=\"{}\"/>\n", at->second, data);
    return at->second;
}

void SvgCanvas::text(Point at, std::string_view utf8, TextStyle const& style) {
    flush();
    double const unit = em / style.size / PANGO_SCALE; // outline units in one of Pango's
    body_ += fmt::format("<g fill=\"{}\" transform=\"translate({} {})scale({:.4g})\">",
                         hex((*theme_)[style.color]), number(at.x), number(at.y), style.size / em);
    int pen = 0;
    for (auto const* run = text_->line(utf8, style)->runs; run; run = run->next) {
        auto const* const item = static_cast<PangoGlyphItem const*>(run->data);
        for (int i = 0; i < item->glyphs->num_glyphs; ++i) {
            auto const& info = item->glyphs->glyphs[i];
            bool const drawn = info.glyph != PANGO_GLYPH_EMPTY && !(info.glyph & PANGO_GLYPH_UNKNOWN_FLAG);
            if (auto const name = drawn ? glyph(item->item->analysis.font, info.glyph) : std::string{};
                !name.empty()) {
                body_ += "<use href=\"#" + name + "\"";
                if (long const x = std::lround((pen + info.geometry.x_offset) * unit))
                    body_ += fmt::format(" x=\"{}\"", x);
                if (long const y = std::lround(info.geometry.y_offset * unit))
                    body_ += fmt::format(" y=\"{}\"", y);
                body_ += "/>";
            }
            pen += info.geometry.width;
        }
    }
    body_ += fmt::format("<text opacity=\"0\" textLength=\"{}\">{}</text></g>\n", std::lround(pen * unit),
                         escaped_for_xml(utf8));
}

std::string SvgCanvas::document(Size page, std::string_view title, std::string_view description) {
    flush();
    return fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                       "<svg role=\"img\" xmlns=\"http://www.w3.org/2000/svg\" width=\"{}pt\" "
                       "height=\"{}pt\" viewBox=\"0 0 {} {}\">\n"
                       "<title>{}</title>\n<desc>{}</desc>\n<defs>\n{}</defs>\n<g font-family=\"serif\" "
                       "font-size=\"{:g}\" stroke-miterlimit=\"10\">\n{}</g>\n</svg>\n",
                       number(page.width * theme_->size), number(page.height * theme_->size),
                       number(page.width), number(page.height), escaped_for_xml(title),
                       escaped_for_xml(description), outlines_, em, body_);
}

} // namespace vowelway::chart
