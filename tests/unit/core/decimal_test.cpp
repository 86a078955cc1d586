// SPDX-License-Identifier: MIT
// The numbers of a person's files are the same from every standard library: the reading by from_chars (where
// there is one) and the reading by the C library give the same bits. IEEE 754-2019, 5.12.2: text with 17
// significant digits gives back the double it was written from.
#include "core/decimal.hpp"

#include <doctest/doctest.h>

#include <bit>
#include <cstdint>
#include <cstdio>
#include <random>
#include <string>

using namespace vowelway::text;

namespace {

bool same(std::optional<Decimal> const& a, std::optional<Decimal> const& b) {
    if (!a || !b) return !a && !b;
    return std::bit_cast<std::uint64_t>(a->value) == std::bit_cast<std::uint64_t>(b->value) &&
           a->length == b->length;
}

} // namespace

TEST_CASE("a double written with 17 digits is read back to its last bit, in both ways") {
    std::mt19937_64 random(20261127); // its sequence is laid down by the C++ standard
    int read = 0;
    for (int i = 0; i < 200'000; ++i) {
        auto const value = std::bit_cast<double>(random());
        if (!std::isfinite(value)) continue;
        char text[64];
        std::snprintf(text, sizeof text, "%.17g", value);
        auto const a = decimal(text), b = decimal_by_strtod(text);
        REQUIRE_MESSAGE(a.has_value(), text);
        REQUIRE_MESSAGE(same(a, b), text);
        REQUIRE(a->value == value);
        REQUIRE(a->length == std::string(text).size());
        ++read;
    }
    CHECK(read > 190'000);
}

TEST_CASE("numbers as people write them are read alike in both ways") {
    std::mt19937_64 random(7);
    for (int i = 0; i < 200'000; ++i) {
        auto text = std::to_string(random() % 20'000) + "." + std::to_string(random() % 1'000'000);
        text.resize(text.size() - random() % 7);
        if (random() % 4 == 0) text += "e" + std::to_string(static_cast<int>(random() % 40) - 20);
        if (random() % 4 == 0) text = "-" + text;
        if (random() % 4 == 0) text += " Hz";
        REQUIRE_MESSAGE(same(decimal(text), decimal_by_strtod(text)), text);
    }
}

TEST_CASE("the edges of a double are read alike in both ways") {
    struct Case {
        char const* text;
        std::optional<Decimal> is;
    };
    for (auto const& [text, is] : {
             Case{"", {}},
             {"-", {}},
             {".", {}},
             {"+1", {}},
             {" 1", {}},
             {"inf", {}},
             {"nan", {}},
             {"e5", {}},
             {"0x10", {{0, 1}}},
             {".5", {{0.5, 2}}},
             {"5.", {{5, 2}}},
             {"1e", {{1, 1}}},
             {"1e+", {{1, 1}}},
             {"1e5x", {{1e5, 3}}},
             {"1.5.2", {{1.5, 3}}},
             {"1,5", {{1, 1}}},
             {"-0", {{-0.0, 2}}},
             {"0e-400", {{0, 6}}},
             {"1e400", {}},
             {"1e-400", {}},
             {"2e-324", {}},
             {"4.9e-324", {{0x1p-1074, 8}}},
             {"1.7976931348623158e308", {{0x1.fffffffffffffp1023, 22}}},
             {"1.7976931348623159e308", {}},
             {"2.2250738585072011e-308", {{0x0.fffffffffffffp-1022, 23}}}, // the greatest subnormal
             {"9007199254740993", {{9007199254740992.0, 16}}},             // half-way: to even
             {"9007199254740993.00000000000000000001", {{9007199254740994.0, 37}}},
         }) {
        CAPTURE(text);
        CHECK(same(decimal(text), is));
        CHECK(same(decimal_by_strtod(text), is));
    }
}
