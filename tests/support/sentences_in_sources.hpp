// SPDX-License-Identifier: MIT
// The English sentences that the sources say: the texts given to worded() and to_word(), and, in src/cli,
// what the commands and options say of themselves (the last text of value(), flag(), add() and their like).
#pragma once

#include "support/source_dir.hpp"

#include <array>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <string_view>

namespace vowelway::test {

/// Reads C++ as far as needed: texts, what stands between them, and which bracket is open.
class SentenceReader {
  public:
    explicit SentenceReader(std::string_view source) : rest_(source) {}

    /// The text at the next quote, adjacent ones together; false at the end.
    bool next_text() {
        while (!rest_.empty()) {
            if (rest_.starts_with("//"))
                skip_to("\n");
            else if (rest_.starts_with("#include"))
                skip_to("\n");
            else if (rest_.starts_with("R\""))
                skip_raw();
            else if (rest_.front() == '\'' && !digit_before_)
                skip_character();
            else if (rest_.front() == '"')
                return read_texts();
            else
                step();
        }
        return false;
    }
    std::string const& text() const { return text_; }
    /// What stands before the text since the one before it, without blanks at the end.
    std::string_view before() const {
        std::string_view out = before_;
        return out.substr(0, out.find_last_not_of(" \n") + 1);
    }
    std::string_view after() const { return rest_; }

  private:
    void step() {
        digit_before_ = rest_.front() >= '0' && rest_.front() <= '9';
        between_ += rest_.front();
        rest_.remove_prefix(1);
    }
    void skip_to(std::string_view end) {
        rest_.remove_prefix(std::min(rest_.size(), rest_.find(end)));
        digit_before_ = false;
    }
    void skip_raw() {
        auto const open = rest_.find('(');
        auto const close = ")" + std::string(rest_.substr(2, open - 2)) + "\"";
        rest_.remove_prefix(std::min(rest_.size(), rest_.find(close) + close.size()));
        between_ = "R";
    }
    void skip_character() {
        rest_.remove_prefix(1);
        while (!rest_.empty() && rest_.front() != '\'') rest_.remove_prefix(rest_.front() == '\\' ? 2 : 1);
        rest_.remove_prefix(std::min<std::size_t>(1, rest_.size()));
    }
    bool read_texts() {
        before_ = std::move(between_);
        text_.clear();
        while (rest_.starts_with('"')) {
            rest_.remove_prefix(1);
            while (!rest_.starts_with('"')) {
                bool const escaped = rest_.front() == '\\';
                if (escaped) rest_.remove_prefix(1);
                text_ += escaped && rest_.front() == 'n' ? '\n' : rest_.front();
                rest_.remove_prefix(1);
            }
            rest_.remove_prefix(1);
            auto const more = std::min(rest_.find_first_not_of(" \n"), rest_.size());
            if (rest_.substr(more).starts_with('"')) rest_.remove_prefix(more);
        }
        between_.clear();
        digit_before_ = false;
        return true;
    }

    std::string_view rest_;
    std::string text_, before_, between_;
    bool digit_before_ = false; // 1'000 begins no character
};

/// Sentence and the source that says it.
inline std::map<std::string, std::string> sentences_in(std::filesystem::path const& file, bool of_commands) {
    std::ifstream in(file, std::ios::binary);
    std::stringstream all;
    all << in.rdbuf();
    auto const source = all.str();
    std::map<std::string, std::string> out;
    SentenceReader reader(source);
    constexpr std::array<std::string_view, 7> calls{".value(", ".values(", ".repeated(", ".flag(",
                                                    ".add(",   ".footer(", ">footer("};
    bool in_call = false; // of a command's or an option's words: the last text before the bracket closes
    while (reader.next_text()) {
        auto const before = reader.before();
        bool const told = before.ends_with("worded(") || before.ends_with("to_word(");
        if (told) out[reader.text()] = file.filename();
        if (!of_commands) continue;
        for (auto const call : calls)
            if (before.find(call) != std::string_view::npos) in_call = true;
        if (told) in_call = false; // it brings its own
        if (in_call && reader.after().starts_with(')')) {
            out[reader.text()] = file.filename();
            in_call = false;
        }
    }
    return out;
}

/// What the average voices say of how a vowel was estimated.
inline std::map<std::string, std::string> sentences_of_profiles() {
    std::map<std::string, std::string> out;
    constexpr std::string_view key = "estimated: \"";
    for (auto const& entry :
         std::filesystem::directory_iterator(std::filesystem::path(source_dir()) / "profiles")) {
        if (entry.path().extension() != ".yaml") continue;
        std::ifstream in(entry.path());
        for (std::string line; std::getline(in, line);)
            if (auto const at = line.find(key); at != std::string::npos)
                out[line.substr(at + key.size(), line.find('"', at + key.size()) - at - key.size())] =
                    entry.path().filename();
    }
    return out;
}

inline std::map<std::string, std::string> sentences_of_the_program() {
    auto out = sentences_of_profiles();
    for (auto const* folder : {"src", "include"})
        for (auto const& entry :
             std::filesystem::recursive_directory_iterator(std::filesystem::path(source_dir()) / folder)) {
            auto const& path = entry.path();
            auto const name = path.generic_string();
            if ((path.extension() != ".cpp" && path.extension() != ".hpp") ||
                name.ends_with("core/wording.hpp"))
                continue;
            out.merge(sentences_in(path, name.find("/src/cli/") != std::string::npos));
        }
    return out;
}

} // namespace vowelway::test
