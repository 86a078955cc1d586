// SPDX-License-Identifier: MIT
// What must hold of every page: nothing leaves it, and no text covers another or a note.
#pragma once

#include "vowelway/chart/drawing.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace vowelway::sample {

inline std::string described(chart::Box const& b) {
    return "(" + std::to_string(static_cast<int>(b.left)) + "," + std::to_string(static_cast<int>(b.top)) +
           " " + std::to_string(static_cast<int>(b.width)) + "x" +
           std::to_string(static_cast<int>(b.height)) + ")";
}

/// What is wrong with a page, one line each; empty when all is well. Boxes may touch by `slack` points.
inline std::vector<std::string> faults(chart::Page const& page, double slack = 0.6) {
    using Kind = chart::Drawing::Mark::Kind;
    std::vector<std::string> result;
    auto marks = page.drawing.marks();
    for (auto const& m : marks)
        if (m.box.left < -0.01 || m.box.top < -0.01 || m.box.right() > page.size.width + 0.01 ||
            m.box.bottom() > page.size.height + 0.01)
            result.push_back("leaves the page: \"" + std::string(m.text) + "\" " + described(m.box));
    std::erase_if(marks, [](auto const& m) { return m.kind == Kind::shape; });
    std::ranges::sort(marks, {}, [](auto const& m) { return m.box.left; });
    for (std::size_t i = 0; i < marks.size(); ++i)
        for (std::size_t j = i + 1; j < marks.size() && marks[j].box.left < marks[i].box.right(); ++j) {
            if (marks[i].kind == Kind::music && marks[j].kind == Kind::music)
                continue; // heads and signs of one chord
            auto a = marks[i].box, b = marks[j].box;
            for (auto* box : {&a, &b}) {
                double const dx = std::min(slack, box->width / 2 - 0.05),
                             dy = std::min(slack, box->height / 2 - 0.05);
                *box = {box->left + dx, box->top + dy, box->width - 2 * dx, box->height - 2 * dy};
            }
            if (a.overlaps(b))
                result.push_back("overlap: \"" + std::string(marks[i].text) + "\" " +
                                 described(marks[i].box) + " and \"" + std::string(marks[j].text) + "\" " +
                                 described(marks[j].box));
        }
    return result;
}

} // namespace vowelway::sample
