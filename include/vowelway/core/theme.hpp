// SPDX-License-Identifier: MIT
// How charts look: the colour of each role, the fonts, the size of the type. Plain values, here because the
// reader of theme files (io) and the charts both use them and do not see each other.
#pragma once

#include "vowelway/core/error.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway {

/// Red, green and blue of sRGB (IEC 61966-2-1), 0..1.
struct Color {
    double red = 0, green = 0, blue = 0;

    static constexpr Color hex(std::uint32_t rrggbb) {
        return {(rrggbb >> 16U & 0xffU) / 255.0, (rrggbb >> 8U & 0xffU) / 255.0, (rrggbb & 0xffU) / 255.0};
    }
    /// Relative luminance, 0 black .. 1 white (WCAG 2.2,
    /// https://www.w3.org/TR/WCAG22/#dfn-relative-luminance).
    double luminance() const;
    /// The grey of the same luminance.
    Color grey() const;
    friend constexpr bool operator==(Color const&, Color const&) = default;
};

/// "#1a2b3c" with six hexadecimal digits; nothing for another text.
std::optional<Color> parse_color(std::string_view text);

/// Contrast of two colours, 1 (none) .. 21 (black on white) (WCAG 2.2,
/// https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio).
double contrast(Color const& a, Color const& b);

/// The least contrast of text (WCAG 2.2, success criterion 1.4.3).
inline constexpr double least_text_contrast = 4.5;

/// What is drawn has a role, no colour.
enum class Ink : std::uint8_t {
    text,  ///< words, notes, weighty lines
    soft,  ///< secondary text
    rule,  ///< lines between things
    hair,  ///< lines behind things
    wash,  ///< areas behind things
    paper, ///< the ground
    first, ///< fR1
    first_wash,
    first_fill, ///< the zone above fR1
    second,     ///< fR2
    second_wash,
    modify, ///< the advices
    migrate,
    migrate_wash,
};
inline constexpr std::size_t ink_count = 14;
std::string_view to_string(Ink ink);
std::optional<Ink> parse_ink(std::string_view name);
/// Those that words are set in.
inline constexpr std::array text_inks{Ink::text,   Ink::soft,   Ink::first,
                                      Ink::second, Ink::modify, Ink::migrate};

struct FontFamily {
    std::string name;
    Place place = {}; ///< where it was asked for; for the message when it is not installed
};

struct Theme {
    static constexpr double largest_size = 1.6; ///< more, and a page holds no system

    std::string name = "paper", description = {};
    std::array<Color, ink_count> colors{Color::hex(0x1a1a21), Color::hex(0x5c5969), Color::hex(0xa8a6b3),
                                        Color::hex(0xdbdbe3), Color::hex(0xf4f4f6), Color::hex(0xffffff),
                                        Color::hex(0x1a4f8c), Color::hex(0xe3edf7), Color::hex(0xbfc5cb),
                                        Color::hex(0x944d0a), Color::hex(0xfaedd9), Color::hex(0x9e1a38),
                                        Color::hex(0x216b5c), Color::hex(0xdeede8)};
    FontFamily text{"Charis SIL"};  ///< words and IPA
    FontFamily music{"Noto Music"}; ///< musical symbols of Unicode
    double size = 1;                ///< of everything on the page, 1..largest_size; less then fits on it

    Color const& operator[](Ink ink) const { return colors[static_cast<std::size_t>(ink)]; }
    Color& operator[](Ink ink) { return colors[static_cast<std::size_t>(ink)]; }
    /// The same without colour; contrasts stay as they are.
    Theme grey() const;
};

/// The text inks whose contrast with the paper is below `least_text_contrast`.
std::vector<Ink> unreadable(Theme const& theme);

} // namespace vowelway
