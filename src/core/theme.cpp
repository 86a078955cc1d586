// SPDX-License-Identifier: MIT
#include "vowelway/core/theme.hpp"

#include "core/ranges.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace vowelway {
namespace {

constexpr std::array<std::string_view, ink_count> names{
    "text",       "soft",       "rule",   "hair",        "wash",   "paper",   "first",
    "first_wash", "first_fill", "second", "second_wash", "modify", "migrate", "migrate_wash"};

double linear(double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); }
double encoded(double v) { return v <= 0.0031308 ? v * 12.92 : 1.055 * std::pow(v, 1 / 2.4) - 0.055; }

} // namespace

double Color::luminance() const {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

Color Color::grey() const {
    double const v = std::clamp(encoded(luminance()), 0.0, 1.0);
    return {v, v, v};
}

std::optional<Color> parse_color(std::string_view text) {
    if (text.size() != 7 || text.front() != '#') return std::nullopt;
    std::uint32_t value = 0;
    auto const [end, error] = std::from_chars(text.data() + 1, text.data() + 7, value, 16);
    if (error != std::errc{} || end != text.data() + 7) return std::nullopt;
    return Color::hex(value);
}

double contrast(Color const& a, Color const& b) {
    auto const [darker, lighter] = std::minmax({a.luminance(), b.luminance()});
    return (lighter + 0.05) / (darker + 0.05);
}

std::string_view to_string(Ink ink) { return names[static_cast<std::size_t>(ink)]; }

std::optional<Ink> parse_ink(std::string_view name) {
    auto const at = ranges::find(names, name);
    if (at == names.end()) return std::nullopt;
    return static_cast<Ink>(at - names.begin());
}

Theme Theme::grey() const {
    auto result = *this;
    for (auto& color : result.colors) color = color.grey();
    return result;
}

std::vector<Ink> unreadable(Theme const& theme) {
    std::vector<Ink> result;
    for (auto const ink : text_inks)
        if (contrast(theme[ink], theme[Ink::paper]) < least_text_contrast) result.push_back(ink);
    return result;
}

} // namespace vowelway
