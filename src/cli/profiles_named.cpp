// SPDX-License-Identifier: MIT
#include "cli/profiles_named.hpp"

#include "cli/command.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <filesystem>
#include <fstream>

namespace vowelway::cli {

namespace {

std::vector<std::string> profiles_in(std::filesystem::path const& folder) {
    std::vector<std::string> out;
    for (auto const& entry : std::filesystem::directory_iterator(folder))
        if (looks_like_profile(entry.path().string())) out.push_back(entry.path().string());
    std::sort(out.begin(), out.end());
    if (out.empty())
        throw InputError(worded("there is no profile in this folder"),
                         worded("a profile is a YAML file with a line singer: NAME"),
                         Place{folder.string(), 0, 0, {}});
    return out;
}

/// A whole number with an optional +, taken off the front.
std::optional<int> eat_semitones(std::string_view& text) {
    if (text.starts_with('+')) text.remove_prefix(1);
    int value = 0;
    auto const [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc()) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return value;
}

} // namespace

bool looks_like_profile(std::string const& path) {
    auto const ending = std::filesystem::path(path).extension();
    if (ending != ".yaml" && ending != ".yml") return false;
    std::ifstream file(path);
    constexpr int head = 60; // lines: comments may stand before it
    std::string line;
    for (int i = 0; i < head && std::getline(file, line); ++i)
        if (line.starts_with("singer:")) return true;
    return false;
}

std::vector<std::string> profiles_named(std::vector<std::string> const& names) {
    std::vector<std::string> out;
    for (auto const& name : names) {
        std::error_code none;
        if (!std::filesystem::is_directory(name, none)) {
            out.push_back(name);
            continue;
        }
        for (auto& profile : profiles_in(name)) out.push_back(std::move(profile));
    }
    return out;
}

plan::KeyRange parse_keys(std::string const& option, std::string const& text) {
    std::string_view rest = text;
    auto const low = eat_semitones(rest);
    auto high = low;
    if (low && rest.starts_with("..")) {
        rest.remove_prefix(2);
        high = eat_semitones(rest);
    }
    if (!low || !high || !rest.empty())
        bad_command_line(option, worded("{0} is not a range of semitones; write -6..6", text));
    if (*low > *high || *low < -24 || *high > 24)
        bad_command_line(option, worded("{0}: the lower comes first, within two octaves up and down", text));
    return {*low, *high};
}

} // namespace vowelway::cli
