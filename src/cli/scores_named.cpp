// SPDX-License-Identifier: MIT
#include "cli/scores_named.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace vowelway::cli {

namespace fs = std::filesystem;

namespace {

bool has_notes(std::string const& path) {
    std::ifstream file(path);
    constexpr int head = 200; // lines
    std::string line;
    for (int i = 0; i < head && std::getline(file, line); ++i)
        if (line.starts_with("notes:")) return true;
    return false;
}

std::vector<std::string> scores_in(fs::path const& folder) {
    std::vector<std::string> out;
    for (auto const& entry :
         fs::recursive_directory_iterator(folder, fs::directory_options::skip_permission_denied))
        if (std::error_code none; entry.is_regular_file(none) && looks_like_score(entry.path().string()))
            out.push_back(entry.path().string());
    std::sort(out.begin(), out.end());
    if (out.empty())
        throw InputError(worded("there is no score in this folder"),
                         worded("a score ends in .musicxml, .xml or .mxl, or is a YAML passage with notes"),
                         Place{folder.string(), 0, 0, {}});
    return out;
}

} // namespace

bool looks_like_score(std::string const& path) {
    auto const ending = fs::path(path).extension();
    if (ending == ".mxl" || ending == ".musicxml" || ending == ".xml" || ending == ".song") return true;
    return (ending == ".yaml" || ending == ".yml") && has_notes(path);
}

std::vector<std::string> scores_named(std::vector<std::string> const& names) {
    std::vector<std::string> out;
    for (auto const& name : names) {
        std::error_code none;
        if (!fs::is_directory(name, none)) {
            out.push_back(name);
            continue;
        }
        for (auto& score : scores_in(name)) out.push_back(std::move(score));
    }
    return out;
}

} // namespace vowelway::cli
