// SPDX-License-Identifier: MIT
#include "chart/page/front.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <span>

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

/// A column of the ranges of some vowels; says where it ends.
double passive_ranges(Canvas& canvas, plan::Plan const& plan, std::span<plan::VowelPlan const> vowels,
                      double x, double y, double width) {
    auto const& tuning = plan.passage.tuning;
    double const low = tuning.pitch(plan.range.low).frequency().value(),
                 high = tuning.pitch(plan.range.high).frequency().value();
    double const axis_from = x + 23, axis_to = x + width - 47;
    auto const at = [&](Pitch p) {
        double const t = std::log(p.frequency().value() / low) / std::max(1e-9, std::log(high / low));
        return axis_from + std::clamp(t, 0.0, 1.0) * (axis_to - axis_from);
    };
    std::size_t const many = vowels.size();
    double const row = many > 9 ? 11 : 13.5;
    for (auto const& v : vowels) {
        y += row;
        canvas.write({x + 1, y - 1.5}, slashed(v.resonances.vowel), plain(type::body));
        canvas.line({axis_from, y - 4}, {axis_to, y - 4},
                    {.width = 0.5, .color = ink::rule, .dashes = {0.8, 1.6}});
        if (!v.passive_range) {
            canvas.write({x + width, y - 1.5}, "modify throughout", plain(type::small, ink::modify),
                         Align::right);
            continue;
        }
        auto const& range = *v.passive_range;
        double const from = at(range.from), to = std::max(at(range.to), from + 1);
        double const drift = range.migrates_from ? std::clamp(at(*range.migrates_from), from, to) : to;
        canvas.fill(Box{from, y - 6, drift - from, 4}, ink::soft);
        if (to > drift) {
            Box const box{drift, y - 6, to - drift, 4};
            canvas.stroke(Path().rectangle(box), {.width = 0.5, .color = ink::migrate});
            hatch(canvas, box, 1.8, {.width = 0.6, .color = ink::migrate});
        }
        if (!range.reaches_top) {
            double const left = at(range.to - range.to_sd), right = at(range.to + range.to_sd);
            canvas.line({left, y - 4}, {right, y - 4}, {.width = 0.8, .color = ink::black});
            for (double const end : {left, right})
                canvas.line({end, y - 6.5}, {end, y - 1.5}, {.width = 0.8, .color = ink::black});
        }
        auto const words =
            range.reaches_top
                ? std::string("all of it")
                : tuning.name(range.to).pitch.str() +
                      fmt::format(" ±{:.0f}", std::max(1.0, std::round(in_semitones(range.to_sd))));
        canvas.write({x + width, y - 1.5}, words, plain(type::label), Align::right);
    }
    y += 10;
    canvas.write({axis_from, y}, plan.range.low.str(), plain(type::small, ink::soft));
    canvas.write({axis_to, y}, plan.range.high.str(), plain(type::small, ink::soft), Align::right);
    canvas.write({x + width, y}, "± semitones", plain(type::small, ink::soft), Align::right);
    return y + 4;
}

double watch_table(Canvas& canvas, plan::Plan const& plan, std::map<std::size_t, int> const& watched,
                   double x, double y, double width) {
    y = draw_heading(canvas, x, y, width, "Notes to watch");
    auto const& m = canvas.measurer();
    double const where = x + 17, what = x + 56, happens = x + 136, heard = x + 207;
    // What to do matters more than what is heard, and that more than what happens.
    double longest = 0;
    for (auto const& [index, number] : watched) {
        auto const& d = *plan.notes[index].decision;
        double const shade = d.advice == plan::Advice::modify
                                 ? m.measure(d.target.shade.quality().ipa(), bold(type::body)).advance + 5
                                 : 0;
        longest = std::max(longest, 12 + shade + m.measure(brief_of(d), plain(type::label)).advance);
    }
    bool const narrow = width < 330 || x + 233 + longest > x + width,
               narrower = heard + 1 + longest > x + width;
    double const act = narrower ? happens + 1 : narrow ? heard + 1 : x + 233;
    if (watched.empty()) {
        canvas.write({x, y + 12}, "None stands out: sing as usual.", plain(type::body));
        return y + 18;
    }
    y += 9;
    auto const small = plain(type::small, ink::soft);
    canvas.write({where, y}, "bar · beat", small);
    canvas.write({what, y}, "syllable, pitch", small);
    if (!narrower) canvas.write({happens, y}, "what happens", small);
    if (!narrow) canvas.write({heard, y}, "heard", small);
    canvas.write({act, y}, "what to do", small);
    y += 3;
    for (auto const& [index, number] : watched) {
        auto const& sung = plan.passage.notes[index];
        auto const& d = *plan.notes[index].decision;
        auto const& vowel = plan.vowels[*plan.notes[index].vowel].resonances.vowel;
        double const base = y + 11;
        canvas.stroke(Path().circle({x + 6, base - 3}, 5.6), {.width = 0.9, .color = ink::modify});
        auto const digits = std::to_string(number);
        canvas.write({x + 6, base - 3 + m.measure(digits, bold(type::label)).above / 2}, digits,
                     bold(type::label, ink::modify), Align::centre);
        canvas.write({where, base},
                     fitted(m, fmt::format("{} · {}", sung.measure, beat_of(sung.beat)), plain(type::body),
                            what - where - 3),
                     plain(type::body));
        auto const name = sung.spelled.str() + " " + slashed(vowel);
        double const name_width = m.measure(name, plain(type::body)).advance;
        std::string text = sung.text();
        for (std::size_t k = index; text.empty() && k-- > 0;) text = plan.passage.notes[k].text();
        auto const syllable = fitted(m, text, bold(type::body), happens - what - name_width - 8);
        auto const box = canvas.write({what, base}, syllable, bold(type::body));
        canvas.write({std::max(box.right(), what) + 4, base}, name, plain(type::body));
        if (!narrower)
            canvas.write({happens, base},
                         fitted(m, happening(d.zone.zone), plain(type::label), heard - happens - 3),
                         plain(type::label));
        if (!narrow && !(d.heard.vowel.quality() == vowel.quality()))
            canvas.write({heard + 8, base}, d.heard.vowel.quality().ipa(), plain(type::body, ink::migrate),
                         Align::centre);
        advice_sign(canvas, {act + 4, base - 3}, 7, d.advice);
        double from = act + 11;
        if (d.advice == plan::Advice::modify)
            from =
                canvas
                    .write({from, base}, d.target.shade.quality().ipa(), bold(type::body, color_of(d.advice)))
                    .right() +
                5;
        canvas.write({from, base}, fitted(m, brief_of(d), plain(type::label), x + width - from),
                     plain(type::label, color_of(d.advice)));
        y = base + 3.4;
        canvas.line({x, y}, {x + width, y}, {.width = 0.35, .color = ink::rule});
    }
    return y + 2;
}

} // namespace

std::string beat_of(double beat) {
    double const rounded = std::round(beat * 100) / 100;
    return rounded == std::floor(rounded) ? fmt::format("{:.0f}", rounded) : fmt::format("{:g}", rounded);
}

double draw_heading(Canvas& canvas, double x, double y, double width, std::string_view text) {
    canvas.write({x, y + 10}, text, bold(type::heading));
    canvas.line({x, y + 14.5}, {x + width, y + 14.5}, {.width = 0.8, .color = ink::black});
    return y + 17;
}

std::string slashed(Vowel const& vowel) { return "/" + vowel.quality().ipa() + "/"; }

std::map<std::size_t, int> notes_to_watch(plan::Plan const& plan, std::size_t at_most) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < plan.notes.size(); ++i)
        if (plan.notes[i].decision && plan.notes[i].vowel && plan.notes[i].importance > 0)
            order.push_back(plan.notes[i].note);
    ranges::stable_sort(order, std::greater{}, [&](std::size_t i) { return plan.notes[i].importance; });
    order.resize(std::min(order.size(), at_most));
    ranges::sort(order);
    std::map<std::size_t, int> numbers;
    for (auto const index : order) {
        int const number = static_cast<int>(numbers.size()) + 1;
        numbers.emplace(index, number);
    }
    return numbers;
}

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

double draw_watch(Canvas& canvas, plan::Plan const& plan, std::map<std::size_t, int> const& watched, double y,
                  double width) {
    constexpr std::string_view ranges = "Vowel as it is, up to";
    constexpr double gap = 16, least_width = 430; // of both beside each other
    if (width >= least_width) {
        double const right = std::min(158.0, width * 0.31), left = width - right - gap;
        double const a = watch_table(canvas, plan, watched, 0, y, left);
        double const b = passive_ranges(canvas, plan, plan.vowels, left + gap,
                                        draw_heading(canvas, left + gap, y, right, ranges), right);
        return std::max(a, b) + 6;
    }
    // One below the other, the ranges in two columns.
    y = draw_heading(canvas, 0, watch_table(canvas, plan, watched, 0, y, width) + 6, width, ranges);
    double const column = (width - gap) / 2;
    std::span<plan::VowelPlan const> const all(plan.vowels);
    auto const half = (all.size() + 1) / 2;
    double const a = passive_ranges(canvas, plan, all.first(half), 0, y, column);
    if (half == all.size()) return a + 6;
    return std::max(a, passive_ranges(canvas, plan, all.subspan(half), column + gap, y, column)) + 6;
}

double draw_lane_legend(Canvas& canvas, double y, double width) {
    auto const style = plain(type::label);
    double x = 0;
    y += 9;
    auto const& m = canvas.measurer();
    auto const room = [&](double sample, std::string_view text) {
        double const need = sample + 4 + m.measure(text, style).advance;
        if (x > 0 && x + need > width) x = 0, y += 12.5;
    };
    auto const say = [&](double sample, std::string_view text) {
        canvas.write({x + sample + 4, y}, text, style);
        x += sample + 4 + m.measure(text, style).advance + 11;
    };
    auto const line = [&](Pen const& pen, std::string_view text) {
        room(16, text);
        canvas.line({x, y - 3}, {x + 16, y - 3}, pen);
        say(16, text);
    };
    line({.width = 1.3, .color = ink::black}, "fo");
    line({.width = 0.95, .color = ink::black}, "2fo");
    line({.width = 0.45, .color = ink::soft}, "3fo and higher");
    room(9, "harmonic in a band");
    canvas.fill(Path().circle({x + 4, y - 3}, 2.5), ink::black);
    say(9, "harmonic in a band");
    auto const bands = [&](Ink wash, Ink edge, std::vector<double> dashes, std::string_view text) {
        room(18, text);
        canvas.fill(Box{x, y - 8, 18, 9}, wash);
        for (double const side : {y - 8, y + 1})
            canvas.line({x, side}, {x + 18, side}, {.width = 0.6, .color = edge, .dashes = dashes});
        say(18, text);
    };
    bands(ink::first_wash, ink::first, {}, "fR1 ± its uncertainty");
    bands(ink::second_wash, ink::second, {2.2, 1.4}, "fR2");
    room(6, "uncertain");
    canvas.write({x, y}, "?", bold(type::label));
    say(6, "uncertain");
    auto const swatch = [&](plan::Zone zone, double p, std::string_view text) {
        room(18, text);
        Box const box{x, y - 8, 18, 9};
        canvas.fill(box, ink::first_wash);
        fill_zone(canvas, box, {zone, p, 0});
        canvas.line({x, box.top}, {box.right(), box.top}, {.width = 0.6, .color = ink::first});
        canvas.line({x, box.bottom()}, {box.right(), box.bottom()}, {.width = 0.6, .color = ink::first});
        say(18, text);
    };
    swatch(plan::Zone::open, 0, "open: 2fo below fR1");
    swatch(plan::Zone::turning, 0.6, "turning: 2fo passes it");
    swatch(plan::Zone::close, 1, "close: 2fo above it");
    swatch(plan::Zone::meeting, 1, "meeting: fo at it");
    swatch(plan::Zone::above, 1, "above: fo over it");
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify}) {
        room(9, meaning(advice));
        advice_sign(canvas, {x + 4, y - 3}, 7, advice);
        say(9, meaning(advice));
    }
    room(12, "where to move the band");
    canvas.line({x, y - 8}, {x + 12, y - 8}, {.width = 1.2, .color = ink::modify});
    canvas.line({x + 6, y}, {x + 6, y - 5}, {.width = 0.9, .color = ink::modify});
    canvas.fill(Path().move({x + 6, y - 7.6}).line({x + 4.2, y - 4.2}).line({x + 7.8, y - 4.2}).close(),
                ink::modify);
    say(12, "where to move the band");
    return y + 6;
}

void draw_remarks(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, double bottom) {
    constexpr double line = 11;
    if (plan.remarks.empty() || y + 17 + 2 * line > bottom) return;
    y = draw_heading(canvas, x, y, width, "What was assumed") + 2;
    auto const style = plain(type::label);
    std::size_t said = 0;
    for (auto const& remark : plan.remarks) {
        auto const lines = wrapped(canvas.measurer(),
                                   std::string(to_string(remark.kind)) + ": " + remark.text, style, width);
        bool const last = said + 1 == plan.remarks.size();
        if (y + line * static_cast<double>(lines.size() + (last ? 0 : 1)) > bottom) break;
        for (auto const& text : lines)
            canvas.write({x, y += line}, fitted(canvas.measurer(), text, style, width), style);
        ++said;
    }
    if (said < plan.remarks.size())
        canvas.write({x, y + line},
                     fmt::format("and {} more, in the plan's table", plan.remarks.size() - said),
                     slanted(type::label, ink::soft));
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
