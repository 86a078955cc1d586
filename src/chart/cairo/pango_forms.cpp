// SPDX-License-Identifier: MIT
// The letters of Pango's text, and their outlines.
#include "chart/cairo/pango_text.hpp"

namespace vowelway::chart {
namespace {

constexpr double outline_em = 1000; // of the outlines

/// What tells a face from another: the font without its size.
std::string face_of(PangoFont* font) {
    Handle<PangoFontDescription, pango_font_description_free> const description(pango_font_describe(font));
    pango_font_description_unset_fields(description.get(), PANGO_FONT_MASK_SIZE);
    return Handle<char, g_free>(pango_font_description_to_string(description.get())).get();
}

} // namespace

SetText PangoText::set(std::string_view utf8, TextStyle const& style) const {
    SetText out;
    int pen = 0;
    auto const points = [](int units) { return static_cast<double>(units) / PANGO_SCALE; };
    for (auto const* run = line(utf8, style)->runs; run; run = run->next) {
        auto const* const item = static_cast<PangoGlyphItem const*>(run->data);
        auto* const font = item->item->analysis.font;
        auto const face = face_of(font);
        fonts_.try_emplace(face, font);
        for (int i = 0; i < item->glyphs->num_glyphs; ++i) {
            auto const& info = item->glyphs->glyphs[i];
            if (info.glyph != PANGO_GLYPH_EMPTY && !(info.glyph & PANGO_GLYPH_UNKNOWN_FLAG))
                out.letters.push_back(
                    {face, info.glyph, points(pen + info.geometry.x_offset), points(info.geometry.y_offset)});
            pen += info.geometry.width;
        }
    }
    out.advance = points(pen);
    return out;
}

Path PangoText::outline(SetText::Letter const& letter) const {
    auto const known = fonts_.find(letter.face);
    if (known == fonts_.end()) return {};
    Handle<cairo_surface_t, cairo_surface_destroy> const surface(
        cairo_recording_surface_create(CAIRO_CONTENT_ALPHA, nullptr));
    Handle<cairo_t, cairo_destroy> const cr(cairo_create(surface.get()));
    auto* const scaled = pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(known->second));
    if (!scaled) return {};
    Handle<cairo_font_options_t, cairo_font_options_destroy> const options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_set_font_options(cr.get(), options.get());
    cairo_set_font_face(cr.get(), cairo_scaled_font_get_font_face(scaled));
    cairo_set_font_size(cr.get(), outline_em);
    cairo_glyph_t const at{letter.form, 0, 0};
    cairo_glyph_path(cr.get(), &at, 1);
    Handle<cairo_path_t, cairo_path_destroy> const path(cairo_copy_path(cr.get()));
    Path out;
    bool ink = false;
    for (int i = 0; i < path->num_data; i += path->data[i].header.length) {
        auto const* d = path->data + i;
        auto const point = [&](int k) { return Point{d[k].point.x, d[k].point.y}; };
        switch (d->header.type) {
        case CAIRO_PATH_MOVE_TO:
            if (i + d->header.length < path->num_data) out.move(point(1)); // cairo ends a path with a move
            break;
        case CAIRO_PATH_LINE_TO:
            out.line(point(1)), ink = true;
            break;
        case CAIRO_PATH_CURVE_TO:
            out.curve(point(1), point(2), point(3)), ink = true;
            break;
        case CAIRO_PATH_CLOSE_PATH:
            out.close();
            break;
        }
    }
    return ink ? out : Path{};
}

} // namespace vowelway::chart
