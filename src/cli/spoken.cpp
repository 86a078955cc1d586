// SPDX-License-Identifier: MIT
#include "cli/spoken.hpp"

#include "vowelway/io/wording/read_wording.hpp"

#include <cstdlib>
#include <string>
#include <string_view>

namespace vowelway::cli {

namespace {

/// Empty where nothing was asked for; the parser refuses an empty value.
std::string asked_for(int argc, char const* const* argv) {
    constexpr std::string_view option = "--say", with_value = "--say=";
    for (int i = 1; i < argc; ++i) {
        std::string_view const word = argv[i];
        if (word == "--") break;
        if (word == option && i + 1 < argc) return argv[i + 1];
        if (word.starts_with(with_value)) return std::string(word.substr(with_value.size()));
    }
    auto const* const named = std::getenv("VOWELWAY_SAY");
    return named ? named : "";
}

} // namespace

void speak_as_asked(int argc, char const* const* argv) {
    if (auto const name = asked_for(argc, argv); !name.empty()) set_wording(io::find_wording(name));
}

} // namespace vowelway::cli
