// SPDX-License-Identifier: MIT
// UTF-8 one character at a time. Private to the library.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace vowelway::utf8 {

/// The character at the start of `s`, taken off it; nothing at the end or where the bytes are not UTF-8.
inline std::optional<char32_t> eat(std::string_view& s) {
    if (s.empty()) return std::nullopt;
    auto const byte = [&](std::size_t i) { return static_cast<std::uint8_t>(s[i]); };
    std::uint8_t const lead = byte(0);
    std::size_t const length = lead < 0x80       ? 1
                               : lead >> 5 == 6  ? 2
                               : lead >> 4 == 14 ? 3
                               : lead >> 3 == 30 ? 4
                                                 : 0;
    if (length == 0 || s.size() < length) return std::nullopt;
    char32_t c = length == 1 ? lead : lead & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) {
        if (byte(i) >> 6 != 2) return std::nullopt;
        c = c << 6 | (byte(i) & 0x3Fu);
    }
    constexpr char32_t least[] = {0, 0, 0x80, 0x800, 0x10000};
    if (c < least[length] || c > 0x10FFFF || (c >= 0xD800 && c < 0xE000)) return std::nullopt;
    s.remove_prefix(length);
    return c;
}

inline std::string encode(char32_t c) {
    auto const byte = [](char32_t bits) { return static_cast<char>(static_cast<std::uint8_t>(bits)); };
    if (c < 0x80) return {byte(c)};
    if (c < 0x800) return {byte(0xC0 | c >> 6), byte(0x80 | (c & 0x3F))};
    if (c < 0x10000) return {byte(0xE0 | c >> 12), byte(0x80 | (c >> 6 & 0x3F)), byte(0x80 | (c & 0x3F))};
    return {byte(0xF0 | c >> 18), byte(0x80 | (c >> 12 & 0x3F)), byte(0x80 | (c >> 6 & 0x3F)),
            byte(0x80 | (c & 0x3F))};
}

/// Whether the whole text is UTF-8.
inline bool valid(std::string_view s) {
    while (!s.empty())
        if (!eat(s)) return false;
    return true;
}

} // namespace vowelway::utf8
