// SPDX-License-Identifier: MIT
// Refusals and remarks of the sources whose words stand there bare, so that no other language can have them.
#pragma once

#include "support/source_dir.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::test {

/// Reads C++ as far as needed: which calls are open where a text stands.
class BareRefusals {
  public:
    explicit BareRefusals(std::string_view source) : rest_(source) {}

    /// The texts of at least two words within a refusal or a remark that no worded() or to_word() holds.
    std::vector<std::string> find() {
        while (!rest_.empty()) {
            if (rest_.starts_with("//") || rest_.starts_with("#"))
                skip(rest_.find('\n'));
            else if (rest_.starts_with("R\""))
                skip(rest_.find(")" + std::string(rest_.substr(2, rest_.find('(') - 2)) + "\"") + 2);
            else if (rest_.front() == '\'' && (name_.empty() || std::isdigit(name_.back()) == 0))
                read_quoted('\'');
            else if (rest_.front() == '"')
                judge(read_quoted('"'));
            else
                step();
        }
        return std::move(found_);
    }

  private:
    void skip(std::size_t count) {
        rest_.remove_prefix(std::min(rest_.size(), count));
        name_.clear();
    }
    void step() {
        char const c = rest_.front();
        rest_.remove_prefix(1);
        if (c == '(' || c == '{') {
            open_.push_back(name_);
            name_.clear();
        } else if (c == ')' || c == '}') {
            if (!open_.empty()) open_.pop_back();
            name_.clear();
        } else if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_' || c == '.' || c == ':') {
            name_ += c;
        } else {
            name_.clear();
        }
    }
    std::string read_quoted(char quote) {
        std::string text;
        rest_.remove_prefix(1);
        while (!rest_.empty() && rest_.front() != quote) {
            if (rest_.front() == '\\') rest_.remove_prefix(1);
            text += rest_.front();
            rest_.remove_prefix(1);
        }
        skip(1);
        return text;
    }
    void judge(std::string const& text) {
        auto const within = [&](std::string_view call) {
            return std::any_of(open_.begin(), open_.end(), [&](auto const& n) { return n.ends_with(call); });
        };
        constexpr std::array<std::string_view, 6> speak{"InputError",        "error_at",         "Remark",
                                                        "remarks.push_back", "bad_command_line", "say"};
        if (within("worded") || within("to_word") || std::none_of(speak.begin(), speak.end(), within)) return;
        bool prose = false;
        for (std::size_t i = 2; i < text.size(); ++i)
            prose = prose || (text[i - 1] == ' ' && std::islower(static_cast<unsigned char>(text[i])) != 0 &&
                              std::isalpha(static_cast<unsigned char>(text[i - 2])) != 0);
        if (prose) found_.push_back(text);
    }

    std::string_view rest_;
    std::string name_;
    std::vector<std::string> open_, found_;
};

/// "file: text" of every one in src.
inline std::vector<std::string> bare_refusals_of_the_program() {
    std::vector<std::string> out;
    for (auto const& entry :
         std::filesystem::recursive_directory_iterator(std::filesystem::path(source_dir()) / "src")) {
        auto const& path = entry.path();
        if (path.extension() != ".cpp" && path.extension() != ".hpp") continue;
        std::ifstream in(path, std::ios::binary);
        std::stringstream all;
        all << in.rdbuf();
        auto const source = all.str();
        for (auto const& text : BareRefusals(source).find())
            out.push_back(path.filename().string() + ": " + text);
    }
    return out;
}

} // namespace vowelway::test
