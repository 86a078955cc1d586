// SPDX-License-Identifier: MIT
#include "io/score/lyric_lines.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <map>

namespace vowelway::io {

namespace {

/// "1", "2" by value, then names in the order of the alphabet.
struct ByNumber {
    bool operator()(std::string const& a, std::string const& b) const {
        auto const number = [](std::string_view s) { return text::eat_number(s).value_or(1e9); };
        auto const x = number(a), y = number(b);
        return x != y ? x < y : a < b;
    }
};

std::string number_of(pugi::xml_node lyric) {
    std::string const number = lyric.attribute("number").value();
    return number.empty() ? "1" : number;
}

bool ours(pugi::xml_node lyric) { return lyric.attribute("name").value() == mark_name; }

} // namespace

LyricLines lyric_lines(Part const& part) {
    struct Line {
        LineScript script;
        bool named_ipa = false;
    };
    std::map<std::string, Line, ByNumber> lines;
    LyricLines out;
    for (auto const& measure : part.measures)
        for (auto const& event : measure.events)
            for (auto const& note : event.with_words())
                for (auto const& lyric : note.children("lyric")) {
                    if (ours(lyric)) continue;
                    auto& line = lines[number_of(lyric)];
                    std::string_view const name = lyric.attribute("name").value();
                    line.named_ipa |= name == "ipa" || name == "IPA";
                    line.script.add(read_lyric(lyric).raw);
                    if (!out.language.empty()) continue;
                    std::string tag = lyric.attribute("xml:lang").value();
                    if (tag.empty()) tag = lyric.child("text").attribute("xml:lang").value();
                    out.language = tag.substr(0, tag.find('-'));
                }
    if (lines.size() > static_cast<std::size_t>(most_lyric_lines))
        throw InputError(
            worded("part \"{0}\" has more than {1} lines of words", part.info.name, most_lyric_lines),
            worded("export the score again"));
    for (auto const& [number, line] : lines)
        (line.named_ipa || line.script.ipa() ? out.phonetic : out.text).push_back(number);
    return out;
}

std::optional<LyricText> lyric_on(PartEvent const& event, std::string const& line) {
    for (auto const& note : event.with_words())
        for (auto const& lyric : note.children("lyric")) {
            if (ours(lyric) || number_of(lyric) != line) continue;
            auto text = read_lyric(lyric);
            if (!text.syllables.empty() || text.humming || text.laughing) return text;
        }
    return std::nullopt;
}

std::optional<std::string> phonetic_on(PartEvent const& event, std::string const& line) {
    for (auto const& note : event.with_words())
        for (auto const& lyric : note.children("lyric")) {
            if (ours(lyric) || number_of(lyric) != line) continue;
            auto const raw = read_lyric(lyric).raw;
            auto text = std::string(text::trim(raw));
            if (auto const inside = bracketed_ipa(text)) text = *inside;
            while (text.ends_with('-')) text.pop_back();
            while (text.starts_with('-')) text.erase(0, 1);
            if (!text.empty()) return text;
        }
    return std::nullopt;
}

} // namespace vowelway::io
