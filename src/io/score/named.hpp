// SPDX-License-Identifier: MIT
// Names of the format and what they mean. Private to the library.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace vowelway::io {

template <class T, std::size_t n>
std::optional<T> named(std::array<std::pair<std::string_view, T>, n> const& table, std::string_view name) {
    for (auto const& [known, value] : table)
        if (known == name) return value;
    return std::nullopt;
}

} // namespace vowelway::io
