// SPDX-License-Identifier: MIT
// The vowels against the chart of the International Phonetic Association (2020) and Wells (1995),
// "Computer-coding the IPA: a proposed extension of SAMPA"; both typed here anew, from memory, apart from the
// table of the library.
#include "vowelway/core/error.hpp"
#include "vowelway/core/vowel.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace vowelway;

namespace {

struct Row {
    char const* ipa;
    char const* x_sampa;
};
constexpr Row wells[] = {
    {"i", "i"}, {"y", "y"}, {"ɨ", "1"}, {"ʉ", "}"}, {"ɯ", "M"},   {"u", "u"},   {"ɪ", "I"},
    {"ʏ", "Y"}, {"ʊ", "U"}, {"e", "e"}, {"ø", "2"}, {"ɘ", "@\\"}, {"ɵ", "8"},   {"ɤ", "7"},
    {"o", "o"}, {"ə", "@"}, {"ɛ", "E"}, {"œ", "9"}, {"ɜ", "3"},   {"ɞ", "3\\"}, {"ʌ", "V"},
    {"ɔ", "O"}, {"æ", "{"}, {"ɐ", "6"}, {"a", "a"}, {"ɶ", "&"},   {"ɑ", "A"},   {"ɒ", "Q"},
};
constexpr Row wells_marks[] = {
    {"\u031D", "_r"}, {"\u031E", "_o"}, {"\u031F", "_+"},  {"\u0320", "_-"},
    {"\u0339", "_O"}, {"\u031C", "_c"}, {"\u0308", "_\""}, {"\u033D", "_x"},
    {"\u0318", "_A"}, {"\u0319", "_q"}, {"\u0303", "_~"},  {"\u02DE", "`"},
    {"\u032F", "_^"}, {"\u0306", "_X"}, {"\u02D1", ":\\"}, {"\u02D0", ":"},
};

// The rows of the chart, close to open; in each the unrounded and rounded members, front to back.
struct ChartRow {
    std::vector<char const*> unrounded, rounded;
};
std::vector<ChartRow> const chart = {
    {{"i", "ɨ", "ɯ"}, {"y", "ʉ", "u"}}, {{"ɪ"}, {"ʏ", "ʊ"}}, {{"e", "ɘ", "ɤ"}, {"ø", "ɵ", "o"}}, {{"ə"}, {}},
    {{"ɛ", "ɜ", "ʌ"}, {"œ", "ɞ", "ɔ"}}, {{"æ", "ɐ"}, {}},    {{"a", "ɑ"}, {"ɶ", "ɒ"}},
};

std::string remedy(char const* text) {
    try {
        parse_vowel(text);
    } catch (InputError const& e) {
        CHECK(e.wrong() == "\"" + std::string(text) + "\" is not a vowel");
        return e.remedy();
    }
    return "no error";
}
bool has(std::string const& text, char const* part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("every vowel of the chart, both ways, in IPA and X-SAMPA") {
    CHECK(vowel_symbols().size() == std::size(wells));
    for (auto const& [ipa, x_sampa] : wells) {
        CAPTURE(ipa);
        auto const vowel = parse_ipa(ipa);
        CHECK(parse_x_sampa(x_sampa) == vowel);
        CHECK(parse_vowel(ipa) == vowel);
        CHECK(vowel.ipa() == ipa);
        CHECK(vowel.x_sampa() == x_sampa);
    }
}

TEST_CASE("every diacritic on every vowel, both ways") {
    for (auto const& base : wells)
        for (auto const& mark : wells_marks) {
            auto const ipa = std::string(base.ipa) + mark.ipa;
            auto const x_sampa = std::string(base.x_sampa) + mark.x_sampa;
            CAPTURE(ipa);
            auto const vowel = parse_ipa(ipa);
            CHECK(vowel != parse_ipa(base.ipa));
            CHECK(vowel == parse_x_sampa(x_sampa));
            CHECK(vowel.ipa() == ipa);
            CHECK(vowel.x_sampa() == x_sampa);
            CHECK(vowel.plain() == parse_ipa(base.ipa));
        }
}

TEST_CASE("diacritics combine in any order, and contradictions are refused") {
    CHECK(parse_vowel("ɑ̃ː") == parse_vowel("A~:"));
    CHECK(parse_vowel("e\u031E\u0303") == parse_vowel("e\u0303\u031E"));
    CHECK(parse_vowel("ɑ̃ː").quality() == parse_vowel("ɑ̃"));
    CHECK(parse_vowel("ɪ\u032F").quality() == parse_vowel("ɪ"));
    CHECK(parse_vowel("ẽ") == parse_vowel("e~")); // one character or two
    CHECK(parse_vowel("\u1EBD") == parse_vowel("e\u0303"));
    CHECK(parse_vowel("ä") == parse_vowel("a_\""));
    CHECK(parse_vowel("ɚ") == parse_vowel("@`"));
    CHECK(parse_vowel("ɝ") == parse_vowel("3`"));
    CHECK(parse_vowel("/a/") == parse_vowel("a"));
    CHECK(parse_vowel("[ a ]") == parse_vowel("a"));
    for (auto const* both :
         {"e\u031D\u031E", "e\u031F\u0320", "o\u0339\u031C", "a\u0308\u033D", "aːˑ", "e_r_o"}) {
        CAPTURE(both);
        CHECK_THROWS_AS(parse_vowel(both), InputError);
    }
}

TEST_CASE("what only looks like IPA is named, never taken") {
    CHECK(has(remedy("ε"), "write ɛ")); // Greek
    CHECK(has(remedy("α"), "write ɑ"));
    CHECK(has(remedy("а"), "write a")); // Cyrillic
    CHECK(has(remedy("о"), "write o"));
    CHECK(has(remedy("ә"), "write ə"));
    CHECK(has(remedy("ɩ"), "write ɪ")); // symbols of older charts
    CHECK(has(remedy("ɷ"), "write ʊ"));
    CHECK(has(remedy("k"), "\"k\" is not known"));
    CHECK(has(remedy("ai"), "\"i\" is not known"));
    CHECK(remedy("") != "no error");
    CHECK(remedy("//") != "no error");
    CHECK(remedy("a\xff") != "no error");
    CHECK(remedy("\u0303a") != "no error"); // the mark before its letter
}

TEST_CASE("lists of vowels") {
    CHECK(parse_vowels("i e a o u").size() == 5);
    CHECK(parse_vowels(" i,e ; a\to\nu ").size() == 5);
    CHECK(parse_vowels("").empty());
    CHECK(parse_vowels("ɑ̃ A~")[0] == parse_vowels("ɑ̃ A~")[1]);
    CHECK_THROWS_AS(parse_vowels("i e k"), InputError);
}

TEST_CASE("a vowel at the start of a transcription, with its marks") {
    auto const found = vowel_prefix("ɑ̃ːto");
    REQUIRE(found);
    CHECK(found->vowel == parse_vowel("ɑ̃ː"));
    CHECK(found->bytes == std::string("ɑ̃ː").size());
    CHECK_FALSE(vowel_prefix("to"));
    CHECK_FALSE(vowel_prefix(""));
    CHECK_FALSE(vowel_prefix("ˈa"));
}

TEST_CASE("places are those of the chart: rows by height, pairs by rounding, columns by backness") {
    std::size_t counted = 0;
    double above = -1;
    for (auto const& row : chart) {
        double const height = chart_place(parse_vowel(row.unrounded.front())).height;
        CHECK(height > above);
        above = height;
        for (auto const* members : {&row.unrounded, &row.rounded}) {
            double before = -1;
            for (auto const* vowel : *members) {
                CAPTURE(vowel);
                auto const place = chart_place(parse_vowel(vowel));
                CHECK(place.height == height);
                CHECK(place.backness > before);
                CHECK(place.rounding == (members == &row.rounded ? 1 : 0));
                before = place.backness;
                ++counted;
            }
        }
    }
    CHECK(counted == std::size(wells));
}

TEST_CASE("diacritics move a vowel the way they say, by less than a step") {
    auto const at = [](char const* text) { return chart_place(parse_vowel(text)); };
    CHECK(at("e_r").height < at("e").height);
    CHECK(at("e_r").height > at("I").height);
    CHECK(at("e_o").height > at("e").height);
    CHECK(at("u_+").backness < at("u").backness);
    CHECK(at("i_-").backness > at("i").backness);
    CHECK(at("a_\"").backness > at("a").backness);
    CHECK(at("u_\"").backness < at("u").backness);
    CHECK(at("u_x").height > at("u").height);
    CHECK(at("a_x").height < at("a").height);
    CHECK(at("o_c").rounding < at("o").rounding);
    CHECK(at("e_O").rounding > at("e").rounding);
    CHECK(chart_distance(parse_vowel("e"), parse_vowel("e")) == 0);
    CHECK(chart_distance(parse_vowel("e"), parse_vowel("e~")) > 0);
    CHECK(chart_distance(parse_vowel("i"), parse_vowel("ɪ")) <
          chart_distance(parse_vowel("i"), parse_vowel("a")));
    CHECK(chart_distance(parse_vowel("i"), parse_vowel("a")) ==
          chart_distance(parse_vowel("a"), parse_vowel("i")));
}

TEST_CASE("the order of the rim runs from close front over open to close back") {
    auto vowels = parse_vowels("u o ɔ ɑ a ɛ e i ə y");
    std::sort(vowels.begin(), vowels.end(), before_on_the_rim);
    std::string order;
    for (auto const& v : vowels) order += v.ipa();
    CHECK(order == "iyeɛaəɑɔou");
    for (auto const& a : wells)
        for (auto const& b : wells) { // an order: never both ways, and total over different vowels
            auto const x = parse_vowel(a.ipa), y = parse_vowel(b.ipa);
            CHECK(before_on_the_rim(x, y) + before_on_the_rim(y, x) == (x == y ? 0 : 1));
        }
}

TEST_CASE("a base that is no symbol of the chart is refused, not followed") {
    CHECK_THROWS_AS(chart_place(Vowel{.base = U'k'}), InputError);
    CHECK_THROWS_AS(Vowel{.base = U'k'}.x_sampa(), InputError);
}
