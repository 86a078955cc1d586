// SPDX-License-Identifier: MIT
#include "io/score/our_marks.hpp"

#include "io/score/lyrics.hpp"
#include "io/score/part_events.hpp"
#include "io/score/voice_line.hpp"

#include <algorithm>
#include <optional>

namespace vowelway::io {

namespace {

constexpr std::string_view between_keys = "--", heading_word = "heading-";

/// What follows "vowelway-" in the id of an element; nothing where it is not ours.
std::optional<std::string_view> our_id(pugi::xml_node node) {
    std::string_view id = node.attribute("id").value();
    if (id.substr(0, mark_name.size()) != mark_name) return std::nullopt;
    id.remove_prefix(mark_name.size());
    if (id.empty() || id.front() != '-') return std::nullopt;
    return id.substr(1);
}

std::string_view key_in(std::string_view id) {
    auto const end = id.rfind('-');
    return end == id.npos ? std::string_view{} : id.substr(0, end);
}

bool is_of(pugi::xml_node mark, LineKey const& line) {
    auto const id = our_id(mark);
    auto const key = id ? key_in(*id) : std::string_view{};
    return key == line.key || (line.main && (key.empty() || key == line.part));
}

bool is_ours(pugi::xml_node node) {
    std::string_view const name = node.name();
    if (name == "lyric") return node.attribute("name").value() == mark_name;
    return (name == "direction" || name == "credit") && our_id(node);
}

void collect(pugi::xml_node node, LineKey const* line, bool in_part, std::vector<pugi::xml_node>& out) {
    for (auto const& child : node.children()) {
        std::string_view const name = child.name();
        if (is_ours(child)) {
            if (!line || name == "credit" || (in_part && is_of(child, *line))) out.push_back(child);
        } else if (name == "part")
            collect(child, line, line && child.attribute("id").value() == line->part, out);
        else if (name == "measure" || name == "note")
            collect(child, line, in_part, out);
    }
}

std::vector<std::string> split(std::string_view keys) {
    std::vector<std::string> out;
    while (true) {
        auto const end = keys.find(between_keys);
        out.emplace_back(keys.substr(0, end));
        if (end == keys.npos) return out;
        keys.remove_prefix(end + between_keys.size());
    }
}

bool has(std::vector<HeadingLine> const& lines, std::string_view text) {
    return std::any_of(lines.begin(), lines.end(), [&](HeadingLine const& l) { return l.text == text; });
}

} // namespace

LineKey line_key(XmlSource const& source, ScoreOptions const& options) {
    auto const infos = list_parts(source);
    Remarks unsaid;
    int voice = 0;
    auto const info = choose_part(source, infos, options, voice, unsaid);
    auto const lines = lines_to_sing(source, read_part(source, info));
    LineKey out{info.id, infos.size() > 1 ? info.id : std::string(), true, lines.count > 1 || options.lowest};
    if (voice == 0) voice = lines.main;
    out.main = voice == lines.main && !options.lowest;
    if (lines.count > 1) out.key = info.id + "." + std::to_string(voice);
    if (options.lowest) out.key = (out.key.empty() ? info.id : out.key) + ".low";
    return out;
}

std::string mark_id(LineKey const& line, std::string_view rest) {
    std::string out(mark_name);
    out += '-';
    if (!line.key.empty()) out += line.key + "-";
    return out += rest;
}

std::vector<pugi::xml_node> marks_to_replace(pugi::xml_node root, LineKey const* line) {
    std::vector<pugi::xml_node> out;
    collect(root, line, false, out);
    return out;
}

std::vector<HeadingLine> other_headings(pugi::xml_node root, LineKey const& line) {
    std::vector<HeadingLine> out;
    for (auto const& credit : root.children("credit")) {
        auto const id = our_id(credit);
        auto const at = id ? id->find("-" + std::string(heading_word)) : std::string_view::npos;
        if (at == std::string_view::npos) continue; // without a key: of the one line the score had
        auto keys = split(id->substr(0, at));
        keys.erase(std::remove_if(keys.begin(), keys.end(),
                                  [&](std::string const& key) {
                                      return key == line.key || (line.main && key == line.part);
                                  }),
                   keys.end());
        if (!keys.empty()) out.push_back({credit.child_value("credit-words"), std::move(keys)});
    }
    return out;
}

std::vector<HeadingLine> joined(std::vector<HeadingLine> others, std::string_view heading,
                                LineKey const& line) {
    std::vector<HeadingLine> fresh;
    while (!heading.empty()) {
        auto const end = std::min(heading.find('\n'), heading.size());
        fresh.push_back({std::string(heading.substr(0, end)), {line.key}});
        heading.remove_prefix(std::min(end + 1, heading.size()));
    }
    // New lines stand before those that both have, which explain the signs.
    auto at =
        std::find_if(others.begin(), others.end(), [&](HeadingLine const& l) { return has(fresh, l.text); });
    for (auto& one : fresh) {
        auto const same = std::find_if(others.begin(), others.end(),
                                       [&](HeadingLine const& l) { return l.text == one.text; });
        if (same != others.end())
            same->keys.push_back(line.key);
        else
            at = std::next(others.insert(at, std::move(one)));
    }
    return others;
}

} // namespace vowelway::io
