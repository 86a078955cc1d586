// SPDX-License-Identifier: MIT
#include "chart/page/probe_table.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::size_t most_rows = 16;
constexpr double probe_row = 12.5;

/// A table on columns given as shares of the width; the first row names them.
struct Cell {
    std::string text;
    TextStyle style = plain(type::label);
};
class ProbeColumns {
  public:
    ProbeColumns(Canvas& canvas, double width, std::vector<double> starts)
        : canvas_(&canvas), width_(width), starts_(std::move(starts)) {}
    void row(std::vector<Cell> const& cells, double y) const {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            double const x = starts_[i] * width_,
                         to = (i + 1 < starts_.size() ? starts_[i + 1] : 1.0) * width_;
            canvas_->write({x, y}, fitted(canvas_->measurer(), cells[i].text, cells[i].style, to - x - 4),
                           cells[i].style);
        }
    }
    void rule(double y, bool strong) const {
        canvas_->line({0, y}, {width_, y},
                      {.width = strong ? 0.8 : 0.35, .color = strong ? ink::black : ink::rule});
    }

  private:
    Canvas* canvas_;
    double width_;
    std::vector<double> starts_;
};

std::string tens(Frequency f) { return fmt::format("{:.0f}", 10 * std::round(in_hertz(f) / 10)); }
std::string signed_tenth(double v) {
    return std::abs(v) < 0.05 ? "0.0" : fmt::format("{}{:.1f}", v < 0 ? "−" : "+", std::abs(v));
}
std::string probe_of(analysis::ProbeKind kind, int takes) {
    return fmt::format("{}{}", reworded(to_string(kind)), takes > 1 ? fmt::format(" ×{}", takes) : "");
}

/// The worst first: they are what the next lesson is about.
std::vector<analysis::Checked const*> in_order(std::vector<analysis::Checked> const& checks) {
    std::vector<analysis::Checked const*> order;
    for (auto const& c : checks) order.push_back(&c);
    auto const rank = [](analysis::Checked const* c) {
        return c->comparison.verdict == analysis::Verdict::moved     ? 0
               : c->comparison.verdict == analysis::Verdict::unclear ? 1
                                                                     : 2;
    };
    ranges::stable_sort(order, {}, rank);
    return order;
}

TextStyle style_of(analysis::Verdict verdict) {
    switch (verdict) {
    case analysis::Verdict::moved:
        return bold(type::label, ink::modify);
    case analysis::Verdict::unclear:
        return slanted(type::label);
    case analysis::Verdict::there:
        break;
    }
    return plain(type::label);
}

std::string bars_of(analysis::Checked const& c) {
    std::string text;
    for (std::size_t i = 0; i < std::min<std::size_t>(c.bars.size(), 3); ++i)
        text += (i ? ", " : "") + c.bars[i];
    return c.bars.size() > 3 ? text + " .." : text;
}

double table_of_checks(Canvas& canvas, ProbeMap const& p, double y, double width) {
    ProbeColumns const table(canvas, width, {0, 0.055, 0.165, 0.355, 0.475, 0.62, 0.745, 0.89});
    auto const small = plain(type::small, ink::soft);
    table.row({{"", small},
               {worded("probe"), small},
               {worded("compared with"), small},
               {worded("fR1, aim"), small},
               {worded("semitones (SD)"), small},
               {worded("fR2, aim"), small},
               {worded("semitones (SD)"), small},
               {worded("verdict"), small}},
              y += 10);
    table.rule(y + 3, true);
    y += 3;
    auto const order = in_order(p.checks);
    bool sound = false;
    for (std::size_t i = 0; i < std::min(order.size(), most_rows); ++i) {
        auto const& c = *order[i];
        y += probe_row;
        std::vector<Cell> cells{{slashed(c.comparison.vowel), plain(type::body)},
                                {probe_of(c.comparison.kind, c.comparison.takes)},
                                {c.against == analysis::Checked::Against::plan
                                     ? worded("plan {0}, bar {1}", c.shade, bars_of(c))
                                 : p.reference.average ? worded("average voice")
                                                       : std::string(reworded(c.against_what()))}};
        for (std::size_t k = 0; k < 2; ++k) {
            auto const& d = c.comparison.resonances[k];
            sound = sound || (d && d->same_probe);
            cells.push_back(
                {d ? fmt::format("{}, {}{}", tens(d->found), tens(d->aim), d->same_probe ? " *" : "")
                   : worded("not found")});
            cells.push_back(
                {d ? fmt::format("{} ({})", signed_tenth(d->distance.value / 100), signed_tenth(d->in_sds))
                   : ""});
        }
        cells.push_back(
            {std::string(reworded(to_string(c.comparison.verdict))), style_of(c.comparison.verdict)});
        table.row(cells, y);
        table.rule(y + 3, false);
    }
    auto const note = [&](std::string const& text) {
        for (auto const& line : wrapped(canvas.measurer(), text, small, width))
            canvas.write({0, y += 10.5}, line, small);
    };
    y += 3;
    if (order.size() > most_rows) note(worded("and {0} more, in the table form", order.size() - most_rows));
    if (sound)
        note(worded("*: formants of the sound against those of the last probe of the same kind; the probe's "
                    "own shift cancels, and smaller changes can be seen"));
    for (auto const* c : order)
        for (std::size_t k = 0; k < 2; ++k)
            if (auto const& t = c->trends[k]; t && t->clear())
                note(worded("{0}: F{1} {2} by {3} ± {4} cents a week over {5} measurements",
                            slashed(c->comparison.vowel), k + 1,
                            t->per_week.value > 0 ? worded("rises") : worded("falls"),
                            fmt::format("{:.0f}", std::abs(t->per_week.value)),
                            fmt::format("{:.0f}", t->per_week_sd.value), t->points));
    return y + 4;
}

double table_of_vowels(Canvas& canvas, ProbeMap const& p, double y, double width) {
    ProbeColumns const table(canvas, width, {0, 0.07, 0.20, 0.32, 0.44, 0.56, 0.65, 0.78, 0.88});
    auto const small = plain(type::small, ink::soft);
    bool const repeats =
        ranges::count_if(p.vowels, [](auto const& v) { return v.repeat_spread[0].has_value(); }) > 0;
    table.row({{"", small},
               {worded("probe"), small},
               {worded("F1 heard"), small},
               {worded("F2 heard"), small},
               {worded("fR1 in Hz"), small},
               {"", small},
               {worded("fR2 in Hz"), small},
               {"", small},
               {repeats ? worded("repeats") : std::string(), small}},
              y += 10);
    table.rule(y + 3, true);
    y += 3;
    auto const& tuning = p.reference.tuning;
    for (std::size_t i = 0; i < std::min(p.vowels.size(), most_rows); ++i) {
        auto const& v = p.vowels[i];
        y += probe_row;
        std::vector<Cell> cells{{slashed(v.vowel), plain(type::body)}, {probe_of(v.kind, v.takes)}};
        for (std::size_t k = 0; k < 2; ++k)
            cells.push_back({v.measured.formants[k] ? tens(v.measured.formants[k]->centre) : "-"});
        for (std::size_t k = 0; k < 2; ++k) {
            auto const& r = v.tract.resonances[k];
            cells.push_back({r ? fmt::format("{} ± {:.0f}", tens(r->centre),
                                             std::max(10.0, 10 * std::round(in_hertz(r->sd) / 10)))
                               : "-"});
            cells.push_back({r ? tuning.name(r->centre).pitch.str() : ""});
        }
        auto const& spread = v.repeat_spread[0];
        cells.push_back({spread ? fmt::format("± {:.0f} c", spread->value) : ""});
        table.row(cells, y);
        table.rule(y + 3, false);
    }
    y += 3;
    auto const note = [&](std::string const& text) {
        canvas.write({0, y += 10.5}, fitted(canvas.measurer(), text, small, width), small);
    };
    if (p.vowels.size() > most_rows)
        note(worded("and {0} more, in the table form", p.vowels.size() - most_rows));
    for (auto const& v : p.vowels)
        if (v.tract.close_whisper)
            note(worded("{0}: fR1 of a whispered close vowel is unreliable; try creak on it",
                        slashed(v.vowel)));
    return y + 4;
}

} // namespace

double draw_probe_table(Canvas& canvas, ProbeMap const& p, double y, double width) {
    y = p.checks.empty() ? table_of_vowels(canvas, p, y, width) : table_of_checks(canvas, p, y, width);
    auto const refused = ranges::count_if(p.takes, [](analysis::Take const& t) { return !t.usable(); });
    if (refused == 0) return y;
    canvas.write({0, y += 9},
                 refused == 1 ? worded("one take gives no result; the table form says why")
                              : worded("{0} takes give no result; the table form says why", refused),
                 plain(type::small, ink::modify));
    return y + 3;
}

} // namespace vowelway::chart
