// SPDX-License-Identifier: MIT
#include "chart/canvas/svg_canvas.hpp"

#include "core/xml.hpp"

#include <fmt/format.h>

#include <cmath>
#include <span>
#include <string>

namespace vowelway::chart {
namespace {

constexpr double svg_em = 1000; // of the outlines

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

std::string data_of(Path const& path, int unit) {
    PathData data(unit);
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

/// Hundredths of a point are finer than any printer.
std::string data_of(Path const& path) { return data_of(path, 100); }

std::string number(double value) {
    std::string out;
    put(out, std::lround(value * 100), 100);
    return out;
}

std::string hex(Color c) {
    auto const byte = [](double v) { return std::lround(v * 255); };
    return fmt::format("#{:02x}{:02x}{:02x}", byte(c.red), byte(c.green), byte(c.blue));
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

std::string SvgCanvas::glyph(LetterForms const& forms, SetText::Letter const& letter) {
    auto const [at, fresh] = glyphs_.try_emplace({letter.face, letter.form});
    if (!fresh) return at->second;
    auto const outline = forms.outline(letter);
    if (outline.empty()) return {};
    at->second = fmt::format("g{}", glyphs_.size());
    outlines_ += fmt::format("<path id=\"{}\" d=\"{}\"/>\n", at->second, data_of(outline, 1));
    return at->second;
}

void SvgCanvas::text(Point at, std::string_view utf8, TextStyle const& style) {
    flush();
    auto const* const forms = text_->forms();
    if (!forms) return plain_text(at, utf8, style);
    double const unit = svg_em / style.size; // outline units in a point
    body_ += fmt::format("<g fill=\"{}\" transform=\"translate({} {})scale({:.4g})\">",
                         hex((*theme_)[style.color]), number(at.x), number(at.y), style.size / svg_em);
    auto const set = forms->set(utf8, style);
    for (auto const& letter : set.letters) {
        auto const name = glyph(*forms, letter);
        if (name.empty()) continue;
        body_ += "<use href=\"#" + name + "\"";
        if (long const x = std::lround(letter.x * unit)) body_ += fmt::format(" x=\"{}\"", x);
        if (long const y = std::lround(letter.y * unit)) body_ += fmt::format(" y=\"{}\"", y);
        body_ += "/>";
    }
    body_ += fmt::format("<text opacity=\"0\" textLength=\"{}\">{}</text></g>\n",
                         std::lround(set.advance * unit), escaped_for_xml(utf8));
}

void SvgCanvas::plain_text(Point at, std::string_view utf8, TextStyle const& style) {
    auto const& family = style.face == Face::music ? theme_->music : theme_->text;
    body_ += fmt::format("<text x=\"{}\" y=\"{}\" fill=\"{}\" font-family=\"{}, serif\" font-size=\"{}\"",
                         number(at.x), number(at.y), hex((*theme_)[style.color]),
                         escaped_for_xml(family.name), number(style.size));
    body_ += " xml:space=\"preserve\""; // blanks were measured: none is to be dropped
    if (style.bold) body_ += " font-weight=\"bold\"";
    if (style.italic) body_ += " font-style=\"italic\"";
    auto const width = text_->measure(utf8, style).advance; // another font must not run into its neighbours
    if (width > 0)
        body_ += fmt::format(" textLength=\"{}\" lengthAdjust=\"spacingAndGlyphs\"", number(width));
    body_ += ">" + escaped_for_xml(utf8) + "</text>\n";
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
                       escaped_for_xml(description), outlines_, svg_em, body_);
}

std::vector<Document> as_svg(std::span<Page const> pages, TextMeasurer const& text, Theme const& theme,
                             Caption const& caption) {
    std::vector<Document> all;
    for (auto const& page : pages) {
        SvgCanvas canvas(text, theme);
        canvas.fill(Box{0, 0, page.size.width, page.size.height}, Ink::paper);
        page.drawing.replay(canvas);
        auto const suffix = pages.size() == 1 ? std::string() : "-" + std::to_string(all.size() + 1);
        all.push_back({suffix, canvas.document(page.size, caption.title, caption.description)});
    }
    return all;
}

} // namespace vowelway::chart
