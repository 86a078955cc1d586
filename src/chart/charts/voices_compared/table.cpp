// SPDX-License-Identifier: MIT
#include "chart/charts/voices_compared/voices.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

std::string sounding(Tuning const& tuning, plan::Crossing const& c) {
    return fmt::format("{} ±{:.0f}", tuning.name(c.pitch).pitch.str(),
                       std::max(1.0, std::round(in_semitones(c.sd))));
}

constexpr double beside_mark = 9; // the voice's mark stands at the left of a column

/// A column for the vowels, one for each voice, and with two voices one for their difference.
struct VoiceColumns {
    std::size_t voices;
    double first = 34, width = 0;
    TextStyle style;
    bool two() const { return voices == 2; }
    double of(std::size_t voice) const { return first + width * static_cast<double>(voice); }
};

std::string cell(plan::ComparedRow const& row, std::size_t voice, Tuning const& tuning) {
    if (voice >= row.of.size() || !row.of[voice]) return {};
    return sounding(tuning, row.of[voice]->turning) + (row.of[voice]->resonances.estimated ? " e" : "");
}

/// Values are never cut: where a column is narrow they are set smaller.
VoiceColumns columns_of(plan::Comparison const& comparison, std::size_t voices, Tuning const& tuning,
                        double width, TextMeasurer const& measurer) {
    std::size_t const count = voices + (voices == 2 ? 1 : 0);
    VoiceColumns columns{.voices = voices, .style = plain(count > 6 ? type::small : type::label)};
    columns.width = std::min(110.0, (width - columns.first) / static_cast<double>(count));
    double widest = 1;
    for (auto const& row : comparison.rows)
        for (std::size_t v = 0; v < voices; ++v)
            widest = std::max(widest, measurer.measure(cell(row, v, tuning), columns.style).advance);
    columns.style.size *= std::min(1.0, (columns.width - beside_mark - 2) / widest);
    return columns;
}

void draw_heads(Canvas& canvas, VoiceColumns const& columns, plan::Comparison const& comparison, double y) {
    auto const& m = canvas.measurer();
    for (std::size_t v = 0; v < columns.voices; ++v) {
        draw_voice_mark(canvas, {columns.of(v) + 3, y - 3}, 2.8, v, true);
        auto const name = short_voice_name(comparison.singers[v]);
        canvas.write({columns.of(v) + beside_mark, y}, fitted(m, name, columns.style, columns.width - 13),
                     columns.style);
    }
    if (columns.two())
        canvas.write({columns.of(2), y},
                     fitted(m, worded("second above first"), columns.style, columns.width + 40),
                     columns.style);
}

void draw_row(Canvas& canvas, VoiceColumns const& columns, plan::ComparedRow const& row, Tuning const& tuning,
              double y) {
    canvas.write({0, y}, slashed(row.vowel), plain(type::body));
    for (std::size_t v = 0; v < columns.voices; ++v) {
        canvas.write({columns.of(v) + beside_mark, y}, cell(row, v, tuning), columns.style);
    }
    if (!columns.two() || row.differences.empty()) return;
    auto const& d = row.differences.front();
    bool const sure = plan::clear(d.p_r1_higher);
    auto const text = fmt::format("{:+.1f} ±{:.1f}{}", in_semitones(d.r1), in_semitones(d.r1_sd),
                                  sure ? "" : "  (" + worded("may be chance") + ")");
    canvas.write({columns.of(2), y}, text, sure ? bold(type::label) : plain(type::label, ink::soft));
}

bool any_estimated(plan::Comparison const& comparison) {
    return ranges::any_of(comparison.rows, [](plan::ComparedRow const& r) {
        return ranges::any_of(r.of, [](auto const& v) { return v && v->resonances.estimated; });
    });
}

} // namespace

double draw_turning_points(Canvas& canvas, plan::Comparison const& comparison, std::size_t voices,
                           Tuning const& tuning, double y, double width) {
    auto const& m = canvas.measurer();
    auto const columns = columns_of(comparison, voices, tuning, width, m);
    canvas.write({0, y + 10}, worded("Turning points"), bold(type::heading));
    canvas.write({m.measure(worded("Turning points"), bold(type::heading)).advance + 8, y + 10},
                 worded("± in semitones; the meeting lies an octave above"), plain(type::small, ink::soft));
    y += 23;
    draw_heads(canvas, columns, comparison, y);
    y += 3;
    canvas.line({0, y}, {width, y}, {.width = 0.8, .color = ink::black});
    for (auto const& row : comparison.rows) {
        y += 12;
        draw_row(canvas, columns, row, tuning, y);
        canvas.line({0, y + 3}, {width, y + 3}, {.width = 0.35, .color = ink::rule});
    }
    if (any_estimated(comparison))
        canvas.write({0, y += 13}, worded("e: estimated, not measured"), plain(type::small, ink::soft));
    return y + 6;
}

} // namespace vowelway::chart
