// SPDX-License-Identifier: MIT
#include "chart/page/title.hpp"

#include "chart/page/marks.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr std::string_view caution = "Comfort decides: never push, never chase a number. Hoarse or sore: "
                                     "stop, rest; if it lasts, see a doctor. "
                                     "A model, not medical advice.";

std::string measured(Singer const& singer) {
    if (singer.average) return std::string(average_voice_notice);
    auto text = std::string("resonances: ") + std::string(to_string(singer.provenance.method));
    if (!singer.provenance.date.empty()) text += ", " + singer.provenance.date;
    return text;
}

} // namespace

Head head_of(Singer const& singer, std::string_view technique) {
    return {.title = {},
            .aside = {},
            .who = singer.average ? singer.name : fmt::format("{}, {}", singer.name, to_string(singer.voice)),
            .how = fmt::format("technique: {}", technique),
            .source = measured(singer),
            .average = singer.average,
            .sentence = {}};
}

Head head_of(plan::Plan const& plan, std::string_view sentence) {
    auto head = head_of(plan.singer, plan.technique);
    head.title =
        plan.passage.title.empty() ? fmt::format("Vowel plan {}", plan.range.str()) : plan.passage.title;
    head.aside = plan.passage.composer;
    if (auto const told = transposition_of(plan.passage); !told.empty()) head.how += ", " + told;
    head.sentence = sentence;
    return head;
}

double draw_title(Canvas& canvas, Head const& head, double width) {
    auto const& m = canvas.measurer();
    double y = 17;
    auto const aside_style = slanted(type::body, ink::soft);
    auto const aside = fitted(m, head.aside, aside_style, width * 0.45);
    double const aside_width = m.measure(aside, aside_style).advance;
    canvas.write({width, y}, aside, aside_style, Align::right);
    canvas.write({0, y}, fitted(m, head.title, bold(type::title), width - aside_width - 14),
                 bold(type::title));
    y += 18;
    auto const source_style = head.average ? bold(type::body, ink::modify) : plain(type::body);
    auto const how = head.how.empty() || head.source.empty() ? head.how : head.how + "   ·   ";
    double const source_width = m.measure(head.source, source_style).advance,
                 how_width = m.measure(how, plain(type::body)).advance;
    double const room = width - source_width - how_width - 12;
    bool const beside =
        m.measure(head.who, bold(type::heading)).advance <= room; // else the name has a line of its own
    canvas.write({0, y}, fitted(m, head.who, bold(type::heading), beside ? room : width),
                 bold(type::heading));
    if (!beside) y += 13;
    canvas.write({width, y}, head.source, source_style, Align::right);
    canvas.write({width - source_width, y}, how, plain(type::body), Align::right);
    y += 5;
    canvas.line({0, y}, {width, y}, {.width = 1.2, .color = ink::black});
    y += 3;
    for (auto const& line : wrapped(m, head.sentence, slanted(type::body), width)) {
        y += 11.5;
        canvas.write({0, y}, line, slanted(type::body));
    }
    return y + 8;
}

void draw_margins(Canvas& canvas, Head const& head, std::string_view what, Size paper, std::size_t page,
                  std::size_t pages) {
    auto const style = plain(type::small, ink::soft);
    double const right = paper.width - margin_side, width = right - margin_side, y = paper.height - 26;
    auto const& m = canvas.measurer();
    canvas.line({margin_side, y - 10}, {right, y - 10}, {.width = 0.4, .color = ink::rule});
    auto const number = fmt::format("{} / {}", page, pages);
    canvas.write({right, y}, number, style, Align::right);
    auto lines = wrapped(m, caution, style, width - 40);
    for (std::size_t i = 0; i < std::min<std::size_t>(lines.size(), 2); ++i)
        canvas.write({margin_side, y + 9.5 * static_cast<double>(i)}, lines[i], style);
    if (page == 1) {
        canvas.write({right, margin_top - 12}, what, style, Align::right);
        return;
    }
    auto const who = fitted(m, head.average ? fmt::format("{} ({})", head.who, head.source) : head.who, style,
                            width * 0.6);
    double const who_width = m.measure(who, style).advance;
    canvas.write({right, margin_top - 12}, who, style, Align::right);
    canvas.write({margin_side, margin_top - 12}, fitted(m, head.title, style, width - who_width - 12), style);
}

} // namespace vowelway::chart
