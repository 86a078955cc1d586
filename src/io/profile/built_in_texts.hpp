// SPDX-License-Identifier: MIT
// profiles/*.yaml as texts within the program; the source file is made by cmake/profiles.cmake.
#pragma once

#include <span>
#include <string_view>

namespace vowelway::profile {

struct BuiltInText {
    std::string_view name, yaml;
};
std::span<BuiltInText const> built_in_texts();

} // namespace vowelway::profile
