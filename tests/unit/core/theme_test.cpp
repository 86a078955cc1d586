// SPDX-License-Identifier: MIT
#include "vowelway/core/theme.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

TEST_CASE("contrast as WCAG 2.2 defines it") {
    auto const white = Color::hex(0xffffff), black = Color::hex(0x000000);
    CHECK(contrast(black, white) == doctest::Approx(21).epsilon(1e-9)); // the definition: 21:1 at most
    CHECK(contrast(white, black) == contrast(black, white));
    CHECK(contrast(white, white) == doctest::Approx(1));
    // The grey border of 4.5:1 on white lies between #767676 and #777777 (W3C, Understanding SC 1.4.3; from
    // memory).
    CHECK(contrast(Color::hex(0x767676), white) > 4.5);
    CHECK(contrast(Color::hex(0x777777), white) < 4.5);
    // Luminance of the primaries is their weight in the definition.
    CHECK(Color::hex(0xff0000).luminance() == doctest::Approx(0.2126));
    CHECK(Color::hex(0x00ff00).luminance() == doctest::Approx(0.7152));
    CHECK(Color::hex(0x0000ff).luminance() == doctest::Approx(0.0722));
}

TEST_CASE("grey keeps every contrast") {
    Theme const theme;
    auto const grey = theme.grey();
    for (std::size_t i = 0; i < ink_count; ++i) {
        auto const ink = static_cast<Ink>(i);
        CAPTURE(std::string(to_string(ink)));
        CHECK(grey[ink].red == grey[ink].blue);
        CHECK(contrast(grey[ink], grey[Ink::paper]) ==
              doctest::Approx(contrast(theme[ink], theme[Ink::paper])).epsilon(1e-3));
    }
}

TEST_CASE("colours are # and six digits, inks have names of their own") {
    CHECK(parse_color("#1a4F8c") == Color::hex(0x1a4f8c));
    for (char const* text : {"", "#", "#12345", "#1234567", "123456", "#12345g", "#-12345", "#+12345", "red"})
        CHECK_FALSE(parse_color(text));
    for (std::size_t i = 0; i < ink_count; ++i)
        CHECK(parse_ink(to_string(static_cast<Ink>(i))) == static_cast<Ink>(i));
    CHECK_FALSE(parse_ink("pink"));
}

TEST_CASE("text that fades into the paper is found") {
    Theme theme;
    CHECK(unreadable(theme).empty());
    theme[Ink::soft] = Color::hex(0x777777);
    CHECK(unreadable(theme) == std::vector{Ink::soft});
    theme[Ink::hair] = theme[Ink::paper]; // no text is set in it
    CHECK(unreadable(theme).size() == 1);
}
