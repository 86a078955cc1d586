// SPDX-License-Identifier: MIT
#include "chart/cairo/pango_text.hpp"

#include "core/memory.hpp"
#include "core/ranges.hpp"
#include "core/visible.hpp"

#include "vowelway/chart/draw.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <fontconfig/fontconfig.h>
#include <pango/pangofc-fontmap.h>

#include <algorithm>
#include <array>

#ifdef __SANITIZE_ADDRESS__
// Fontconfig keeps its values behind offsets, which the leak checker cannot follow; what lives as long as
// the process then looks lost.
extern "C" char const* __lsan_default_suppressions(); // NOLINT: the name is the sanitizer's
extern "C" char const* __lsan_default_suppressions() { return "leak:libfontconfig\n"; }
extern "C" char const* __lsan_default_options(); // NOLINT
extern "C" char const* __lsan_default_options() { return "print_suppressions=0"; }
#endif

namespace vowelway::chart {
namespace {

/// Looking only where the packages put the fonts spares reading the whole machine's configuration
/// (tens of milliseconds) and keeps other fonts out of the result.
constexpr char const* own_configuration =
    R"(<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>
<dir>/usr/share/fonts/truetype/charis</dir><dir>/usr/share/fonts/truetype/noto</dir>
<cachedir>/var/cache/fontconfig</cachedir><cachedir prefix="xdg">fontconfig</cachedir></fontconfig>)";

using Configuration = Handle<FcConfig, FcConfigDestroy>;
using FontMap = Handle<PangoFontMap, g_object_unref>;

/// What a font must hold for the charts: IPA; clefs, notes, rests.
constexpr char32_t vowel_signs[] = U"aɑæɐʌəɛɜeøœɔoɪʊʏiyuɯɨʃʒçθðŋɲʎɹɾɥβɣɡˈː‿",
                   music_signs[] = U"\U0001D11E\U0001D122\U0001D158\U0001D157\U0001D13D\U0001D110";

/// Whether a font of the family has all the signs.
bool has_family(FcConfig* config, std::string const& family, std::u32string_view signs) {
    Handle<FcPattern, FcPatternDestroy> const pattern(
        FcPatternBuild(nullptr, FC_FAMILY, FcTypeString, family.c_str(), static_cast<char*>(nullptr)));
    Handle<FcCharSet, FcCharSetDestroy> const wanted_signs(FcCharSetCreate());
    for (auto const sign : signs) FcCharSetAddChar(wanted_signs.get(), sign);
    FcPatternAddCharSet(pattern.get(), FC_CHARSET, wanted_signs.get());
    Handle<FcObjectSet, FcObjectSetDestroy> const wanted(
        FcObjectSetBuild(FC_FAMILY, static_cast<char*>(nullptr)));
    Handle<FcFontSet, FcFontSetDestroy> const found(FcFontList(config, pattern.get(), wanted.get()));
    return found && found->nfont > 0;
}

bool has_fonts(FcConfig* config, Theme const& theme) {
    return has_family(config, theme.text.name, vowel_signs) &&
           has_family(config, theme.music.name, music_signs);
}

[[noreturn]] void refuse(FcConfig* config, FontFamily const& family, FontFamily const& own,
                         char const* package, std::string const& use) {
    bool const installed = has_family(config, family.name, {});
    auto const wrong =
        installed ? worded("the font \"{0}\" lacks characters that the charts need for {1}", family.name, use)
                  : worded("the font \"{0}\" is not installed; the charts use it for {1}", family.name, use);
    bool const ours = family.name == own.name;
    throw InputError(wrong,
                     ours ? worded("install it, on Debian: apt-get install {0}", package)
                          : worded("install it, or name another in the theme, such as {0}", own.name),
                     family.place);
}

// The libraries behind it end the process when memory runs out: this is about what a page takes of it,
// threads of theirs included.
constexpr std::size_t mebibytes_to_draw = 256;

PangoFontMap* made_map(Configuration const& config) {
    require_memory(mebibytes_to_draw);
    auto* const made = pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT);
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(made), config.get());
    return made;
}

Configuration own_fonts() {
    require_memory(mebibytes_to_draw);
    Configuration config(FcConfigCreate());
    auto const* const text = reinterpret_cast<FcChar8 const*>(own_configuration);
    if (!FcConfigParseAndLoadFromMemory(config.get(), text, FcTrue) || !FcConfigBuildFonts(config.get()))
        config.reset(FcConfigCreate());
    return config;
}

/// The lists of fonts are read once for the process; Pango's maps of them, which keep what was loaded, are
/// not made for threads, so each thread has its own. The whole machine's are loaded only for a theme that
/// needs them.
PangoFontMap* font_map(Theme const& theme) {
    static Configuration const own = own_fonts();
    if (has_fonts(own.get(), theme)) {
        thread_local FontMap const map(made_map(own));
        return map.get();
    }
    static Configuration const all(FcInitLoadConfigAndFonts());
    Theme const usual;
    if (!has_family(all.get(), theme.text.name, vowel_signs))
        refuse(all.get(), theme.text, usual.text, "fonts-sil-charis", worded("words and IPA"));
    if (!has_family(all.get(), theme.music.name, music_signs))
        refuse(all.get(), theme.music, usual.music, "fonts-noto-core", worded("clefs and notes"));
    thread_local FontMap const map(made_map(all));
    return map.get();
}

/// One line, whatever the text holds.
std::string one_line(std::string_view text) {
    std::string result = visible(text);
    ranges::replace_if(
        result, [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return result;
}

} // namespace

PangoText::PangoText(Theme const& theme) : text_family_(theme.text.name), music_family_(theme.music.name) {
    context_.reset(pango_font_map_create_context(font_map(theme)));
    pango_cairo_context_set_resolution(context_.get(), 72); // a point is a point
    Handle<cairo_font_options_t, cairo_font_options_destroy> const options(cairo_font_options_create());
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context_.get(), options.get());
    pango_context_set_round_glyph_positions(context_.get(), FALSE);
    pango_context_set_language(context_.get(), pango_language_from_string("und"));
}

PangoText::Shaped const& PangoText::shaped(std::string_view utf8, TextStyle const& style) const {
    std::string key = std::to_string(static_cast<long>(style.size * 100)) + (style.bold ? "b" : "") +
                      (style.italic ? "i" : "") + (style.face == Face::music ? "m " : " ");
    key += utf8;
    auto const [at, fresh] = shaped_.try_emplace(std::move(key));
    auto& entry = at->second;
    if (!fresh) return entry;

    Handle<PangoFontDescription, pango_font_description_free> const font(pango_font_description_new());
    pango_font_description_set_family(font.get(),
                                      (style.face == Face::music ? music_family_ : text_family_).c_str());
    pango_font_description_set_absolute_size(font.get(), style.size * PANGO_SCALE);
    if (style.bold) pango_font_description_set_weight(font.get(), PANGO_WEIGHT_BOLD);
    if (style.italic) pango_font_description_set_style(font.get(), PANGO_STYLE_ITALIC);

    entry.layout.reset(pango_layout_new(context_.get()));
    auto* const layout = entry.layout.get();
    pango_layout_set_font_description(layout, font.get());
    pango_layout_set_single_paragraph_mode(layout, TRUE);
    auto const text = one_line(utf8);
    pango_layout_set_text(layout, text.data(), static_cast<int>(text.size()));
    entry.line = pango_layout_get_line_readonly(layout, 0);

    PangoRectangle ink, logical;
    pango_layout_line_get_extents(entry.line, &ink, &logical);
    auto const points = [](int units) { return static_cast<double>(units) / PANGO_SCALE; };
    entry.extent = {.advance = points(logical.width),
                    .left = points(ink.x),
                    .right = points(ink.x + ink.width),
                    .above = points(-ink.y),
                    .below = points(ink.y + ink.height)};
    return entry;
}

TextExtent PangoText::measure(std::string_view utf8, TextStyle const& style) const {
    return shaped(utf8, style).extent;
}

PangoLayoutLine* PangoText::line(std::string_view utf8, TextStyle const& style) const {
    return shaped(utf8, style).line;
}

std::unique_ptr<TextMeasurer> chart_fonts(Theme const& theme) { return std::make_unique<PangoText>(theme); }

} // namespace vowelway::chart
