// SPDX-License-Identifier: MIT
// Two singers, one song. The passes are those of the passage sheet, each block with a lane and its advice for
// either singer.
#include "chart/charts/charts.hpp"
#include "chart/page/front.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/system_block.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace vowelway::chart {
namespace {

constexpr std::string_view sentence =
    "One song, two voices: each lane has one singer's resonances (bands) under the same harmonics (lines), "
    "and what that singer does. Frames mark "
    "where the two plans differ, dashed where this is uncertain.";
constexpr std::size_t most_listed = 8;
constexpr double between = 14, least_lane = 58, most_lane = 92;
constexpr double name_height = 12; ///< of the singer's name over each lane

/// The differences to speak of, in the order sung: index of the note -> its number.
std::map<std::size_t, int> listed(plan::PlansCompared const& c) {
    std::vector<plan::ComparedNote const*> order;
    for (auto const& n : c.notes)
        if (n.weight > 0) order.push_back(&n);
    ranges::stable_sort(order, std::greater{}, &plan::ComparedNote::weight);
    order.resize(std::min(order.size(), most_listed));
    ranges::sort(order, {}, &plan::ComparedNote::note);
    std::map<std::size_t, int> numbers;
    for (auto const* n : order) numbers.emplace(n->note, static_cast<int>(numbers.size()) + 1);
    return numbers;
}

/// Where the sound is, and what is done: "turning  ◆ ɪ open the jaw".
void doing(Canvas& canvas, plan::Decision const& d, std::array<Cents, 2> const& way, double x, double y,
           double room) {
    auto const& m = canvas.measurer();
    double const zone = 44;
    canvas.write({x, y}, fitted(m, to_string(d.zone.zone), plain(type::label), zone - 3), plain(type::label));
    advice_sign(canvas, {x + zone + 4, y - 3}, 7, d.advice);
    double from = x + zone + 11;
    if (d.advice == plan::Advice::modify)
        from = canvas.write({from, y}, d.target.shade.quality().ipa(), bold(type::body, color_of(d.advice)))
                   .right() +
               5;
    auto words = d.advice == plan::Advice::hold ? std::string("hold") : brief_of(d);
    if (d.advice == plan::Advice::modify) words += fmt::format(", fR1 {:+.0f}", in_semitones(way[0]));
    canvas.write({from, y}, fitted(m, words, plain(type::label), x + room - from),
                 plain(type::label, color_of(d.advice)));
}

double differences(Canvas& canvas, plan::PlansCompared const& c, std::map<std::size_t, int> const& numbers,
                   double y, double width) {
    y = draw_heading(canvas, 0, y, width, "Where the plans differ");
    if (numbers.empty()) {
        canvas.write({0, y + 12}, "Nowhere: both can sing it the same way.", plain(type::body));
        return y + 20;
    }
    auto const& m = canvas.measurer();
    double const where = 17, what = 56, first = what + std::min(92.0, width * 0.19), certain = width - 34,
                 room = (certain - first) / 2;
    auto const small = plain(type::small, ink::soft);
    y += 9;
    canvas.write({where, y}, "bar · beat", small);
    canvas.write({what, y}, "syllable, pitch", small);
    for (std::size_t s = 0; s < 2; ++s)
        canvas.write({first + room * static_cast<double>(s), y},
                     fitted(m, c.plans[s].singer.name, bold(type::small), room - 6), bold(type::small));
    canvas.write({width, y}, "certain", small, Align::right);
    y += 3;
    for (auto const& [index, number] : numbers) {
        auto const& sung = c.plans[0].passage.notes[index];
        double const base = y + 11;
        canvas.stroke(Path().circle({6, base - 3}, 5.6), {.width = 0.9, .color = ink::modify});
        auto const digits = std::to_string(number);
        canvas.write({6, base - 3 + m.measure(digits, bold(type::label)).above / 2}, digits,
                     bold(type::label, ink::modify), Align::centre);
        canvas.write({where, base},
                     fitted(m, fmt::format("{} · {}", sung.measure, beat_of(sung.beat)), plain(type::body),
                            what - where - 3),
                     plain(type::body));
        auto const& vowel = c.plans[0].vowels[*c.plans[0].notes[index].vowel].resonances.vowel;
        auto const name = sung.spelled.str() + " " + slashed(vowel);
        double const name_width = m.measure(name, plain(type::body)).advance;
        std::string text = sung.text();
        for (std::size_t k = index; text.empty() && k-- > 0;)
            text = c.plans[0].passage.notes[k].text(); // the syllable it carries on
        auto const box = canvas.write(
            {what, base}, fitted(m, text, bold(type::body), first - what - name_width - 8), bold(type::body));
        canvas.write({std::max(box.right(), what) + 4, base}, name, plain(type::body));
        auto const at = ranges::find(c.notes, index, &plan::ComparedNote::note);
        for (std::size_t s = 0; s < 2; ++s)
            doing(canvas, *c.plans[s].notes[index].decision, at->way[s],
                  first + room * static_cast<double>(s), base, room - 6);
        canvas.write(
            {width, base},
            fmt::format("{:.0f} %{}", 100 * at->certainty, at->certainty >= plan::sure_parting ? "" : " ?"),
            plain(type::label), Align::right);
        y = base + 3.4;
        canvas.line({0, y}, {width, y}, {.width = 0.35, .color = ink::rule});
    }
    return y + 2;
}

std::string percent(Duration part, Duration whole) {
    return fmt::format("{:.0f} %", 100 * in_seconds(part) / std::max(1e-9, in_seconds(whole)));
}

/// How long each does what, as parts of a bar: blank, hatched, dark.
double shares(Canvas& canvas, plan::PlansCompared const& c, double y, double width) {
    auto const& m = canvas.measurer();
    double names = 0;
    for (auto const& plan : c.plans)
        names = std::max(names, m.measure(plan.singer.name, plain(type::body)).advance);
    double const left = std::min(names + 10, width * 0.3), bar = (width - left) * 0.52;
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& t = c.times[s];
        y += 13.5;
        canvas.write({0, y}, fitted(m, c.plans[s].singer.name, plain(type::body), left - 6),
                     plain(type::body));
        double x = left;
        for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify}) {
            double const w = bar * in_seconds(t.of[static_cast<std::size_t>(advice)]) /
                             std::max(1e-9, in_seconds(t.all()));
            Box const box{x, y - 7.5, w, 8};
            if (w > 0.3 && advice == plan::Advice::migrate)
                hatch(canvas, box, 2.0, {.width = 0.6, .color = ink::migrate});
            if (w > 0.3 && advice == plan::Advice::modify) canvas.fill(box, ink::modify);
            if (w > 0.3) canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = color_of(advice)});
            x += w;
        }
        x = left + bar + 10;
        auto const text = fmt::format("{} hold, {} migrate, {} modify", percent(t.of[0], t.all()),
                                      percent(t.of[1], t.all()), percent(t.of[2], t.all()));
        canvas.write({x, y}, fitted(m, text, plain(type::label), width - x), plain(type::label));
    }
    auto const all = c.times[0].all();
    canvas.write(
        {0, y += 14},
        fitted(m,
               fmt::format(
                   "The plans differ for {} of the time sung, certainly (at least {:.0f} %) for {}; fR1 in "
                   "semitones from the singer's own vowel.",
                   percent(c.parting, all), 100 * plan::sure_parting, percent(c.surely_parting, all)),
               plain(type::label), width),
        plain(type::label));
    return y + 6;
}

struct Pair {
    std::array<Block, 2> of;
    double height(double lane) const {
        double sum = of[0].lane - of[0].top;
        for (auto const& b : of) sum += name_height + lane + b.lower_height;
        return sum;
    }
};

/// The notes that part, next to each other in one frame when it is drawn alike.
void frames(Canvas& canvas, plan::PlansCompared const& c, Block const& block, double left, double top,
            double bottom) {
    struct Run {
        double from = 0, to = 0;
        bool sure = false;
    };
    std::vector<Run> runs;
    for (auto const& s : block.soundings) {
        auto const at = ranges::find(c.notes, s.note, &plan::ComparedNote::note);
        if (at == c.notes.end() || at->parting == plan::Parting::none) continue;
        bool const sure = at->certainty >= plan::sure_parting;
        if (!runs.empty() && runs.back().sure == sure && s.from - runs.back().to < 1.5)
            runs.back().to = s.to;
        else
            runs.push_back({s.from, s.to, sure});
    }
    for (auto const& run : runs) {
        Box const box{left + run.from, top, run.to - run.from, bottom - top};
        canvas.stroke(Path().rectangle(box),
                      {.width = run.sure ? 1.3 : 0.8,
                       .color = ink::black,
                       .dashes = run.sure ? std::vector<double>{} : std::vector<double>{3, 2}});
    }
}

void draw(Canvas& canvas, plan::PlansCompared const& c, Pair const& pair, LaneScale const& scale, Point at) {
    auto const& upper = pair.of[0];
    double y = at.y - upper.top;
    upper.upper.replay(canvas, {at.x, y});
    y += upper.lane;
    for (std::size_t s = 0; s < 2; ++s) {
        auto const& block = pair.of[s];
        canvas.write({at.x, y + name_height - 4},
                     fitted(canvas.measurer(), c.plans[s].singer.name, bold(type::small), block.width),
                     bold(type::small));
        y += name_height;
        Drawing middle(canvas.measurer());
        draw_lane(middle, c.plans[s], block.soundings, scale, block.width);
        middle.replay(canvas, {at.x, y});
        frames(canvas, c, block, at.x, y - 1, y + scale.height + rail_height + 1);
        block.lower.replay(canvas, {at.x, y + scale.height});
        y += scale.height + block.lower_height;
    }
}

LaneScale common_scale(plan::PlansCompared const& c, double height) {
    auto scale = lane_scale(c.plans[0], height);
    auto const other = lane_scale(c.plans[1], height);
    scale.low_hz = std::min(scale.low_hz, other.low_hz);
    scale.high_hz = std::max(scale.high_hz, other.high_hz);
    return scale;
}

Head title_of(plan::PlansCompared const& c) {
    auto const& [a, b] = c.plans;
    auto head = head_of(a, sentence);
    head.who = a.singer.name + "  and  " + b.singer.name;
    head.how = a.technique;
    bool const average = a.singer.average || b.singer.average;
    head.source = average ? std::string(average_voice_notice) : std::string{};
    head.average = average;
    return head;
}

} // namespace

std::vector<Page> plans_compared(plan::PlansCompared const& c, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side, staff_width = width - gutter_left - gutter_right;
    auto const& song = c.plans[0];
    auto const staff = staff_to_draw(song.passage);
    auto systems = assign_systems(measure_bars(song, staff, measurer), staff_width);
    for (auto& system : systems)
        for (auto& atom : system.atoms) atom.underlay.heard.clear(); // of one singer only
    auto const numbers = listed(c);

    BlockMaker first(c.plans[0], staff, numbers, measurer), second(c.plans[1], staff, numbers, measurer);
    std::vector<Pair> pairs;
    for (auto const& system : systems) pairs.push_back({{first.make(system), second.make(system)}});

    Drawing front(measurer);
    auto const head = title_of(c);
    double used = draw_title(front, head, width);
    used = differences(front, c, numbers, used, width);
    used = shares(front, c, used, width);
    used = draw_lane_legend(front, used, width) + 8;

    // Assign: pairs to pages. Place: what is left over makes the lanes taller.
    double const page_height = paper.height - margin_top - margin_bottom;
    std::vector<std::vector<std::size_t>> sheets{{}};
    double filled = used;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        double const height = pairs[i].height(least_lane) + between;
        if (filled + height > page_height + between && (!sheets.back().empty() || sheets.size() == 1))
            sheets.emplace_back(), filled = 0;
        sheets.back().push_back(i);
        filled += height;
    }
    std::vector<Page> pages;
    for (std::size_t s = 0; s < sheets.size(); ++s) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, "two plans", paper, s + 1, sheets.size());
        double y = margin_top + (s == 0 ? used : 0), need = 0;
        if (s == 0) front.replay(page.drawing, {margin_side, margin_top});
        for (auto const i : sheets[s]) need += pairs[i].height(least_lane) + between;
        double const spare = std::max(0.0, margin_top + page_height - y - need),
                     lanes = 2 * std::max<double>(1, static_cast<double>(sheets[s].size()));
        auto const scale = common_scale(c, std::min(most_lane, least_lane + spare / lanes));
        for (auto const i : sheets[s]) {
            draw(page.drawing, c, pairs[i], scale, {margin_side + gutter_left, y});
            y += pairs[i].height(scale.height) + between;
        }
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace vowelway::chart
