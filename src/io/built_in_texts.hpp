// SPDX-License-Identifier: MIT
// The YAML files of profiles, profiles/sung, profiles/techniques, profiles/themes and profiles/wordings as
// texts within the program; the source file is made by cmake/profiles.cmake. Private to the layer.
#pragma once

#include <span>
#include <string_view>

namespace vowelway::io {

struct BuiltInText {
    std::string_view name, yaml;
};
std::span<BuiltInText const> built_in_voice_texts();
std::span<BuiltInText const> built_in_sung_voice_texts();
std::span<BuiltInText const> built_in_technique_texts();
std::span<BuiltInText const> built_in_theme_texts();
std::span<BuiltInText const> built_in_wording_texts();

} // namespace vowelway::io
