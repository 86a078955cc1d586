// SPDX-License-Identifier: MIT
// One thing after the other. Private to the layer.
#pragma once

#include "vowelway/sound/programme.hpp"

#include <string>
#include <utility>

namespace vowelway::sound {

inline constexpr Duration pause = seconds(0.6);

/// Adds an item behind what is there.
inline void then(Programme& programme, std::string what, Duration length,
                 std::function<std::unique_ptr<Part>()> make, Decibels level = {},
                 Duration fade = seconds(0.05)) {
    Duration const start = programme.items.empty() ? seconds(0.1) : length_of(programme) + pause;
    programme.items.push_back({std::move(what), start, length, std::move(make), level, fade});
}

/// Adds an item at the moment the last one begins, for a chord.
inline void with(Programme& programme, std::function<std::unique_ptr<Part>()> make) {
    auto item = programme.items.back();
    item.what.clear();
    item.make = std::move(make);
    programme.items.push_back(std::move(item));
}

} // namespace vowelway::sound
