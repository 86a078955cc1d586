// SPDX-License-Identifier: MIT
#include "io/score/our_credits.hpp"

#include "core/text.hpp"
#include "core/xml.hpp"
#include "io/score/lyrics.hpp"
#include "io/score/xml_source.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <optional>
#include <string_view>

namespace vowelway::io {

namespace {

/// The first page of a score that tells its size, in tenths, y upwards.
struct PageBox {
    double width = 0, left = 0, right = 0, top = 0;
};

std::optional<double> tenths(pugi::xml_node parent, char const* name) {
    auto rest = trimmed(parent.child(name));
    return text::eat_number(rest);
}

std::optional<PageBox> page_of(pugi::xml_node root) {
    auto const layout = root.child("defaults").child("page-layout");
    auto const margins = layout.child("page-margins");
    auto const width = tenths(layout, "page-width"), height = tenths(layout, "page-height");
    auto const left = tenths(margins, "left-margin"), right = tenths(margins, "right-margin"),
               top = tenths(margins, "top-margin");
    if (!width || !height || !left || !right || !top) return std::nullopt;
    return PageBox{*width, *left, *width - *right, *height - *top};
}

std::string credit(std::string_view id, std::string_view type, std::string const& place,
                   std::string_view justify, int size, std::string_view text) {
    return fmt::format(
        "<credit page=\"1\" id=\"{}-{}\"><credit-type>{}</credit-type><credit-words{} justify=\"{}\" "
        "valign=\"top\" halign=\"{}\" font-size=\"{}\">{}</credit-words></credit>",
        mark_name, id, type, place, justify, justify, size, escaped_for_xml(text));
}

std::string at(std::optional<PageBox> const& page, double x, double below_top) {
    return page ? fmt::format(" default-x=\"{:.1f}\" default-y=\"{:.1f}\"", x, page->top - below_top) : "";
}

std::string composer_of(pugi::xml_node root) {
    for (auto const& creator : root.child("identification").children("creator"))
        if (std::string_view(creator.attribute("type").value()) == "composer")
            return std::string(trimmed(creator));
    return {};
}

} // namespace

std::vector<std::string> our_credits(pugi::xml_node root, std::vector<HeadingLine> const& heading) {
    constexpr int small = 6, large = 16, usual = 10; // points
    constexpr double line = 15; // tenths: six points with their leading at a staff of 7 mm
    auto const page = page_of(root);
    std::vector<std::string> out;
    for (auto const& told : heading) {
        auto const number = out.size();
        auto id = fmt::format("{}", fmt::join(told.keys, "--"));
        if (!id.empty()) id += "-";
        out.push_back(credit(fmt::format("{}heading-{}", id, number + 1), mark_name,
                             at(page, page ? page->left : 0, line * static_cast<double>(number)), "left",
                             small, told.text));
    }
    if (root.child("credit")) return out;
    auto title = trimmed(root.child("movement-title"));
    if (title.empty()) title = trimmed(root.child("work").child("work-title"));
    if (!title.empty())
        out.push_back(
            credit("title", "title", at(page, page ? page->width / 2 : 0, 0), "center", large, title));
    if (auto const composer = composer_of(root); !composer.empty())
        out.push_back(credit("composer", "composer", at(page, page ? page->right : 0, 4 * line), "right",
                             usual, composer));
    return out;
}

} // namespace vowelway::io
