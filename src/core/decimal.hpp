// SPDX-License-Identifier: MIT
// A decimal number at the start of a text, the same in every locale and from every standard library. Private.
#pragma once

#include <charconv>
#include <cmath>
#include <cstddef>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <version>

namespace vowelway::text {

struct Decimal {
    double value = 0;
    std::size_t length = 0; ///< characters read
};

/// As decimal(), by the C library: for standard libraries whose from_chars reads no double (libc++ 14). The C
/// library must write the decimal point as a point, as that of WebAssembly always does.
inline std::optional<Decimal> decimal_by_strtod(std::string_view s) {
    auto const digit = [&](std::size_t i) { return i < s.size() && s[i] >= '0' && s[i] <= '9'; };
    bool any = false, nonzero = false;
    std::size_t end = s.starts_with('-') ? 1 : 0;
    auto const eat_digits = [&] {
        for (; digit(end); ++end) any = true, nonzero = nonzero || s[end] != '0';
    };
    eat_digits();
    if (end < s.size() && s[end] == '.') ++end, eat_digits();
    if (!any) return std::nullopt;
    if (end < s.size() && (s[end] == 'e' || s[end] == 'E')) {
        auto exponent = end + 1;
        if (exponent < s.size() && (s[exponent] == '+' || s[exponent] == '-')) ++exponent;
        if (digit(exponent)) {
            while (digit(exponent)) ++exponent;
            end = exponent;
        }
    }
    double const value = std::strtod(std::string(s.substr(0, end)).c_str(), nullptr);
    if (!std::isfinite(value) || (value == 0 && nonzero)) return std::nullopt; // too large or too small
    return Decimal{value, end};
}

/// The finite number at the start of `s`, rounded to the nearest: digits with a point or an exponent or both,
/// a minus before it. Nothing where there is none, or where it is outside the range of a double.
inline std::optional<Decimal> decimal(std::string_view s) {
#if defined(__cpp_lib_to_chars) && __cpp_lib_to_chars >= 201611L
    Decimal out;
    auto const [end, error] = std::from_chars(s.data(), s.data() + s.size(), out.value);
    if (error != std::errc{} || !std::isfinite(out.value)) return std::nullopt;
    out.length = static_cast<std::size_t>(end - s.data());
    return out;
#else
    return decimal_by_strtod(s);
#endif
}

} // namespace vowelway::text
