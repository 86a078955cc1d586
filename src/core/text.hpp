// SPDX-License-Identifier: MIT
// Small helpers for reading what people type. Private to the library.
#pragma once

#include "core/decimal.hpp"

#include <optional>
#include <string_view>

namespace vowelway::text {

inline std::string_view trim(std::string_view s) {
    auto const blank = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
    while (!s.empty() && blank(s.front())) s.remove_prefix(1);
    while (!s.empty() && blank(s.back())) s.remove_suffix(1);
    return s;
}

/// Removes `prefix` from the front if it stands there.
inline bool eat(std::string_view& s, std::string_view prefix) {
    if (!s.starts_with(prefix)) return false;
    s.remove_prefix(prefix.size());
    return true;
}

/// A finite decimal number at the start of `s`, taken off it.
inline std::optional<double> eat_number(std::string_view& s) {
    auto from = s;
    bool const plus = eat(from, "+");
    if (plus && (from.empty() || from.front() == '-')) return std::nullopt;
    auto const number = decimal(from);
    if (!number) return std::nullopt;
    s = from.substr(number->length);
    return number->value;
}

} // namespace vowelway::text
