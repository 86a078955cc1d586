// SPDX-License-Identifier: MIT
#include "chart/cairo/cairo_canvas.hpp"

#include "chart/canvas/style.hpp"
#include "core/visible.hpp"

#include <cairo-pdf.h>

#include <array>
#include <cmath>
#include <cstdint>
#include <stdexcept>
#include <string_view>
#include <utility>

namespace vowelway::chart {
namespace {

using Surface = Handle<cairo_surface_t, cairo_surface_destroy>;
using Context = Handle<cairo_t, cairo_destroy>;

void check(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("cairo: ") + cairo_status_to_string(status));
}

cairo_status_t append(void* bytes, unsigned char const* data, unsigned length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<char const*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

constexpr Color white = Color::hex(0xffffff);

/// Whether a text heads what follows. Vowels are as large and bold, and short.
bool is_heading(std::string_view text, TextStyle const& style) {
    return style.bold && style.size >= type::heading && text.size() > 4;
}

bool same_type(TextStyle const& a, TextStyle const& b) {
    return a.size == b.size && a.bold == b.bold && a.italic == b.italic;
}

void draw(Page const& page, cairo_t* cr, PangoText const& text, Theme const& theme, double scale,
          bool tagged = false) {
    cairo_save(cr);
    cairo_scale(cr, scale, scale);
    CairoCanvas canvas(cr, text, theme, tagged);
    bool const printed =
        cairo_surface_get_type(cairo_get_target(cr)) == CAIRO_SURFACE_TYPE_PDF && theme[Ink::paper] == white;
    if (!printed)
        canvas.fill(Box{0, 0, page.size.width, page.size.height},
                    Ink::paper); // a PDF's paper is white by itself
    // The library forgets all before a fill of the whole page, tags too. One over all pages would be better;
    // it ends a tag with its page.
    if (tagged) cairo_tag_begin(cr, "Document", nullptr);
    page.drawing.replay(canvas);
    canvas.flush();
    canvas.end_tag();
    if (tagged) cairo_tag_end(cr, "Document");
    cairo_restore(cr);
    if (!tagged) check(cairo_status(cr)); // a tag refused shows when the page ends
}

} // namespace

void CairoCanvas::trace(Path const& path) {
    auto at = path.points().begin();
    for (auto const verb : path.verbs()) {
        switch (verb) {
        case Path::Verb::move:
            cairo_move_to(cr_, at->x, at->y), ++at;
            break;
        case Path::Verb::line:
            cairo_line_to(cr_, at->x, at->y), ++at;
            break;
        case Path::Verb::curve:
            cairo_curve_to(cr_, at[0].x, at[0].y, at[1].x, at[1].y, at[2].x, at[2].y);
            at += 3;
            break;
        case Path::Verb::close:
            cairo_close_path(cr_);
            break;
        }
    }
}

void CairoCanvas::use(Ink color) {
    auto const& c = (*theme_)[color];
    cairo_set_source_rgb(cr_, c.red, c.green, c.blue);
}

void CairoCanvas::fill(Path const& path, Ink color) {
    flush();
    cairo_new_path(cr_);
    trace(path);
    use(color);
    cairo_fill(cr_);
}

void CairoCanvas::stroke(Path const& path, Pen const& pen) {
    if (!pending_ || !(*pending_ == pen)) {
        flush();
        cairo_new_path(cr_);
        pending_ = pen;
    }
    trace(path);
}

/// Strokes of one pen are drawn together: one object in the file instead of many.
void CairoCanvas::flush() {
    if (!pending_) return;
    auto const pen = *std::exchange(pending_, std::nullopt);
    use(pen.color);
    cairo_set_line_width(cr_, pen.width);
    cairo_set_line_cap(cr_, pen.round ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(cr_, pen.round ? CAIRO_LINE_JOIN_ROUND : CAIRO_LINE_JOIN_MITER);
    cairo_set_dash(cr_, pen.dashes.data(), static_cast<int>(pen.dashes.size()), 0);
    cairo_stroke(cr_);
}

void CairoCanvas::text(Point at, std::string_view utf8, TextStyle const& style) {
    flush();
    use(style.color);
    cairo_move_to(cr_, at.x, at.y);
    if (!tagged_) return pango_cairo_show_layout_line(cr_, text_->line(utf8, style));
    tag(style, utf8);
    // A blank that nobody sees parts it from the next for whoever listens.
    auto const spoken = style.face == Face::text ? std::string(utf8) + ' ' : std::string(utf8);
    pango_cairo_show_layout_line(cr_, text_->line(spoken, style));
}

/// The structure of a PDF (ISO 32000-1, 14.8.4), for a reader that goes from heading to heading and reads the
/// rest in the order of drawing: texts of one style after another are a paragraph, such as the syllables of a
/// line. A sign is no word.
void CairoCanvas::tag(TextStyle const& style, std::string_view utf8) {
    if (style.face == Face::music) return end_tag();
    bool const heading = is_heading(utf8, style);
    if (!heading && same_type(style, paragraph_) && *open_ == 'P') return;
    end_tag();
    open_ = !heading ? "P" : style.size >= type::title ? "H1" : "H2";
    paragraph_ = style;
    cairo_tag_begin(cr_, open_, nullptr);
}

void CairoCanvas::end_tag() {
    if (*open_) cairo_tag_end(cr_, open_);
    open_ = "";
}

namespace {

/// Nothing where the library refuses the tags.
std::optional<std::string> written_pdf(std::span<Page const> pages, PangoText const& text, Theme const& theme,
                                       Caption const& caption, bool tagged) {
    std::string bytes;
    Surface const surface(cairo_pdf_surface_create_for_stream(
        append, &bytes, pages.front().size.width * theme.size, pages.front().size.height * theme.size));
    auto* const pdf = surface.get();
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_TITLE, visible(caption.title).c_str());
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_SUBJECT, visible(caption.description).c_str());
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATOR, "vowelway");
    // A fixed day: the same plan gives the same bytes.
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");
    cairo_pdf_surface_set_metadata(pdf, CAIRO_PDF_METADATA_MOD_DATE, "2000-01-01T00:00:00Z");
    {
        Context const cr(cairo_create(pdf));
        for (auto const& page : pages) {
            cairo_pdf_surface_set_size(pdf, page.size.width * theme.size, page.size.height * theme.size);
            draw(page, cr.get(), text, theme, theme.size, tagged);
            cairo_show_page(cr.get());
        }
        if (cairo_status(cr.get()) == CAIRO_STATUS_TAG_ERROR) return std::nullopt;
    }
    cairo_surface_finish(pdf);
    if (cairo_surface_status(pdf) == CAIRO_STATUS_TAG_ERROR) return std::nullopt;
    check(cairo_surface_status(pdf));
    return bytes;
}

} // namespace

std::string as_pdf(std::span<Page const> pages, PangoText const& text, Theme const& theme,
                   Caption const& caption) {
    // No page is known whose tags Cairo 1.16 still refuses; one would be written without.
    if (auto bytes = written_pdf(pages, text, theme, caption, true)) return *std::move(bytes);
    return written_pdf(pages, text, theme, caption, false).value();
}

namespace {

/// 24 shades of each colour: no more is seen on an edge of type, and a page packs to two thirds.
void fewer_shades(cairo_surface_t* surface) {
    std::array<std::uint8_t, 256> nearest{};
    for (std::size_t v = 0; v < nearest.size(); ++v)
        nearest[v] =
            static_cast<std::uint8_t>(std::lround(std::round(static_cast<double>(v) * 23 / 255) * 255 / 23));
    cairo_surface_flush(surface);
    auto* const data = cairo_image_surface_get_data(surface);
    std::size_t const size = static_cast<std::size_t>(cairo_image_surface_get_stride(surface)) *
                             static_cast<std::size_t>(cairo_image_surface_get_height(surface));
    for (std::size_t i = 0; i < size; ++i) data[i] = nearest[data[i]];
    cairo_surface_mark_dirty(surface);
}

} // namespace

std::string as_png(Page const& page, PangoText const& text, Theme const& theme, double dpi) {
    double const scale = theme.size * dpi / 72;
    Surface const surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24,
                                                     static_cast<int>(std::ceil(page.size.width * scale)),
                                                     static_cast<int>(std::ceil(page.size.height * scale))));
    check(cairo_surface_status(surface.get()));
    {
        Context const cr(cairo_create(surface.get()));
        draw(page, cr.get(), text, theme, scale);
    }
    fewer_shades(surface.get());
    std::string bytes;
    check(cairo_surface_write_to_png_stream(surface.get(), append, &bytes));
    return bytes;
}

} // namespace vowelway::chart
