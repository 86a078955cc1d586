// SPDX-License-Identifier: MIT
#include "vowelway/io/theme/read_theme.hpp"
#include "vowelway/core/wording.hpp"

#include "core/text.hpp"
#include "io/built_in_texts.hpp"
#include "yaml/tree.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace vowelway::io {
namespace {

using yaml::Node;

void read_colors(Node const& node, Theme& theme) {
    yaml::map(node, worded("the colours"), "colours: {text: \"#1a1a21\", paper: \"#ffffff\"}");
    std::string known;
    for (std::size_t i = 0; i < ink_count; ++i) known += std::string(to_string(static_cast<Ink>(i))) + " ";
    yaml::only_keys(node, known);
    for (auto const& [key, value] : node.fields) {
        // An unquoted #1a1a21 is a comment to YAML: the value is then empty.
        if (value.kind == Node::Kind::null)
            throw yaml::error_at(
                key, worded("the colour of {0} is empty", key.text),
                worded("put it in quotes, {0}: \"#1a1a21\"; a bare # begins a comment", key.text));
        auto const color = parse_color(yaml::scalar(value, worded("a colour")));
        if (!color)
            throw yaml::error_at(
                value, worded("\"{0}\" is not a colour", value.text),
                worded("write # and six hexadecimal digits, red, green and blue: \"#1a4f8c\""));
        theme[*parse_ink(key.text)] = *color;
    }
}

/// Refused where the colour stands, or, where the theme only changed the paper, there.
void refuse_unreadable(Theme const& theme, Node const* colors) {
    auto const faint = unreadable(theme);
    if (faint.empty()) return;
    auto const name = std::string(to_string(faint.front()));
    auto const* at = colors ? colors->find(name) : nullptr;
    if (!at && colors) at = colors->find("paper");
    auto const& paper = theme[Ink::paper];
    auto const wrong =
        worded("{0} cannot be read on the paper: their contrast is {1}, text needs {2} (WCAG 2.2, 1.4.3)",
               name, fmt::format("{:.1f}", contrast(theme[faint.front()], paper)),
               fmt::format("{:g}", least_text_contrast));
    auto const remedy = paper.luminance() > 0.18 ? worded("make {0} darker, or the paper lighter", name)
                                                 : worded("make {0} lighter, or the paper darker", name);
    throw at ? yaml::error_at(*at, wrong, remedy) : InputError(wrong, remedy);
}

FontFamily family(Node const& node) {
    auto const& name = yaml::scalar(node, worded("a font"));
    if (text::trim(name).empty())
        throw yaml::error_at(node, worded("the font has no name"),
                             worded("give the name of an installed font family: Charis SIL"));
    return {name, node.place};
}

double size(Node const& node) {
    std::string_view rest = yaml::scalar(node, worded("the size"));
    auto const value = text::eat_number(rest);
    if (!value || !text::trim(rest).empty() || *value < 1 || *value > Theme::largest_size)
        throw yaml::error_at(node, worded("the size is \"{0}\"", node.text),
                             worded("give a factor from 1 to {0}; 1.3 is large print",
                                    fmt::format("{:g}", Theme::largest_size)));
    return *value;
}

} // namespace

Theme parse_theme(std::string const& text, std::string const& file) {
    auto const root = yaml::parse(text, file);
    yaml::map(root, worded("a theme"), "vowelway: 1");
    yaml::only_keys(root, "vowelway theme description colours text music size");
    auto const* version = root.find("vowelway");
    if (!version || yaml::scalar(*version, worded("the version")) != "1")
        throw yaml::error_at(version ? *version : root, worded("this is not a theme of version 1"),
                             worded("begin the file with vowelway: 1"));
    auto const* name = root.find("theme");
    if (!name) throw yaml::error_at(root, worded("the theme has no name"), worded("add theme: NAME"));
    Theme theme;
    theme.name = yaml::scalar(*name, worded("the name"));
    if (auto const* n = root.find("description"))
        theme.description = yaml::scalar(*n, worded("the description"));
    auto const* colors = root.find("colours");
    if (colors) read_colors(*colors, theme);
    refuse_unreadable(theme, colors);
    if (auto const* n = root.find("text")) theme.text = family(*n);
    if (auto const* n = root.find("music")) theme.music = family(*n);
    if (auto const* n = root.find("size")) theme.size = size(*n);
    return theme;
}

std::vector<std::string> theme_names() {
    std::vector<std::string> names;
    for (auto const& text : built_in_theme_texts()) names.emplace_back(text.name);
    return names;
}

std::optional<Theme> built_in_theme(std::string const& name) {
    for (auto const& text : built_in_theme_texts())
        if (text.name == name) return parse_theme(std::string(text.yaml), "built-in theme " + name);
    return std::nullopt;
}

} // namespace vowelway::io
