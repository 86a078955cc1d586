// SPDX-License-Identifier: MIT
// New probes in the plane of fR1 and fR2: what was sung again, against what it should be like.
#include "chart/charts/charts.hpp"
#include "chart/charts/probe_map/probe_marks.hpp"
#include "chart/charts/probe_map/probe_plane.hpp"
#include "chart/page/legend.hpp"
#include "chart/page/probe_table.hpp"
#include "chart/page/resonance_plane.hpp"
#include "chart/page/title.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence_of_check = to_word(
    "Solid marks are the new probes, all takes of a vowel together; fine lines lead to the single takes. "
    "Ellipses are where "
    "each vowel should be; both are one standard deviation wide. An arrow leads back from a vowel that has "
    "moved.");
constexpr std::string_view sentence_of_measurement = to_word(
    "Solid marks are the vowels as measured, all takes together, in an ellipse of one standard deviation; "
    "fine lines lead to the single "
    "takes. Dashed ellipses show where they were expected.");

/// Of the kinds of probes that are there.
void legend_of_probes(Canvas& canvas, Legend& legend, ProbeMap const& p) {
    for (auto const kind : {analysis::ProbeKind::whisper, analysis::ProbeKind::creak,
                            analysis::ProbeKind::sung, analysis::ProbeKind::spoken}) {
        bool const there =
            ranges::any_of(p.vowels, [&](analysis::MeasuredVowel const& v) { return v.kind == kind; });
        if (there)
            legend.entry(9, reworded(to_string(kind)), [&](double x, double y) {
                draw_pooled_takes(canvas, kind, {x + 4.5, y - 3});
            });
    }
    bool const several =
        ranges::any_of(p.vowels, [](analysis::MeasuredVowel const& v) { return v.takes > 1; });
    if (several)
        legend.entry(9, worded("a single take"), [&](double x, double y) {
            draw_single_take(canvas, p.vowels.front().kind, {x + 4.5, y - 3});
        });
}

void legend_of_due(Canvas& canvas, Legend& legend, ProbeMap const& p) {
    auto const words = p.checks.empty()      ? worded("where it was expected")
                       : p.reference.average ? worded("the average voice")
                                             : worded("the profile");
    bool const dashed = p.checks.empty() || p.reference.average;
    legend.entry(16, words, [&](double x, double y) {
        Point const c{x + 8, y - 3};
        canvas.stroke(Path()
                          .move({c.x - 8, c.y})
                          .curve({c.x - 8, c.y - 5}, {c.x + 8, c.y - 5}, {c.x + 8, c.y})
                          .curve({c.x + 8, c.y + 5}, {c.x - 8, c.y + 5}, {c.x - 8, c.y}),
                      {.width = 0.8,
                       .color = ink::first,
                       .dashes = dashed ? std::vector<double>{2, 1.5} : std::vector<double>{}});
        draw_cross(canvas, c);
    });
}

double draw_legend(Canvas& canvas, ProbeMap const& p, double top, double width) {
    Legend legend(canvas, top + 9, width, 12);
    legend_of_probes(canvas, legend, p);
    legend_of_due(canvas, legend, p);
    bool const planned = ranges::any_of(
        p.checks, [](analysis::Checked const& c) { return c.against == analysis::Checked::Against::plan; });
    if (planned)
        legend.entry(9, worded("a target of the plan ± 3 %"), [&](double x, double y) {
            draw_target_mark(canvas, {x + 4.5, y - 3});
        });
    bool const off = ranges::any_of(p.checks, [](analysis::Checked const& c) {
        return c.comparison.verdict == analysis::Verdict::moved;
    });
    if (off)
        legend.entry(18, worded("moved: from the probe to where it should be"), [&](double x, double y) {
            draw_arrow(canvas, {x, y - 3}, {x + 18, y - 3});
        });
    return legend.y() + 8;
}

Head title_of(ProbeMap const& p) {
    bool const check = !p.checks.empty();
    auto head = head_of(p.reference, "");
    head.title = check ? worded("Vowels checked") : worded("Vowels measured");
    if (!check) {
        head.who = p.who;
        head.source = p.reference.average
                          ? worded("expected near an average {0}", reworded(to_string(p.reference.voice)))
                          : worded("expected near the singer's profile");
        head.average = false;
    }
    head.aside = p.date;
    std::string files;
    for (std::size_t i = 0; i < std::min<std::size_t>(p.files.size(), 2); ++i)
        files += (i ? ", " : "") + p.files[i];
    if (p.files.size() > 2) files = worded("{0} and {1} more", files, p.files.size() - 2);
    head.how = files;
    head.sentence = reworded(check ? sentence_of_check : sentence_of_measurement);
    return head;
}

} // namespace

std::vector<Page> probe_map(ProbeMap const& p, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side;
    Page page{paper, Drawing(measurer)};
    auto& canvas = page.drawing;
    auto const head = title_of(p);
    draw_margins(canvas, head, p.checks.empty() ? worded("measurement") : worded("check"), paper, 1, 1);
    Drawing above(measurer), below(measurer);
    double const used = draw_title(above, head, width);
    above.replay(canvas, {margin_side, margin_top});

    double under = draw_legend(below, p, 0, width);
    under = draw_probe_table(below, p, under, width);

    double const top = margin_top + used + 24, bottom = paper.height - margin_bottom - under - 32;
    draw_probe_plane(canvas, p, {margin_side + 26, top, width - 52, bottom - top});
    below.replay(canvas, {margin_side, bottom + 30});
    std::vector<Page> pages;
    pages.push_back(std::move(page));
    return pages;
}

} // namespace vowelway::chart
