// SPDX-License-Identifier: MIT
#include "chart/page/system_block.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace vowelway::chart {
namespace {

constexpr double clear = 2.5; // between two labels

/// A label over the staff, with how it is set.
struct Over {
    double x = 0;
    std::string text;
    TextStyle style;
    int watched = 0;                  ///< > 0: the circled number of a note to watch
    std::optional<double> bracket_to; ///< a volta reaches so far
};

/// Puts a label as low as it may stand above what is there.
void stack(Drawing& drawing, Over const& label, double width) {
    auto const extent = drawing.measurer().measure(label.text, label.style);
    if (label.watched > 0) {
        double const radius = 5.6;
        double const y = drawing.top(label.x - radius, label.x + radius, 0) - radius - 2;
        drawing.stroke(Path().circle({label.x, y}, radius), {.width = 0.9, .color = ink::modify});
        drawing.write({label.x, y + extent.above / 2}, label.text, label.style, Align::centre);
        return;
    }
    double const x = std::min(label.x, std::max(0.0, width - extent.advance));
    double const to = label.bracket_to.value_or(x + extent.advance);
    double const baseline =
        drawing.top(x - clear, to + clear, -0.3 * space) - 3 - std::max(0.0, extent.below);
    if (label.bracket_to) {
        double const y = baseline - extent.above - 2;
        drawing.stroke(Path().move({label.x, baseline + 1}).line({label.x, y}).line({to - 2, y}),
                       {.width = 0.6, .color = ink::black});
        drawing.write({label.x + 3, baseline}, label.text, label.style);
        return;
    }
    drawing.write({x, baseline}, label.text, label.style);
}

TextStyle style_of(StaffText::Kind kind) {
    switch (kind) {
    case StaffText::Kind::tempo:
        return bold(type::body);
    case StaffText::Kind::dynamic:
        return {.size = 11, .color = ink::black, .bold = true, .italic = true};
    case StaffText::Kind::rehearsal:
        return bold(11);
    case StaffText::Kind::words:
        break;
    }
    return slanted(type::label);
}

std::string shade_of(plan::Decision const& d) {
    return d.advice == plan::Advice::modify ? d.target.shade.quality().ipa() : std::string{};
}

bool same_advice(plan::Decision const& a, plan::Decision const& b) {
    if (a.advice == plan::Advice::hold && b.advice == plan::Advice::hold)
        return true; // its sign stands alone
    return a.advice == b.advice && brief_of(a) == brief_of(b) && shade_of(a) == shade_of(b);
}

} // namespace

BlockMaker::BlockMaker(plan::Plan const& plan, Staff const& staff, std::map<std::size_t, int> const& watched,
                       TextMeasurer const& measurer)
    : plan_(&plan), staff_(&staff), watched_(&watched), measurer_(&measurer), engraver_(staff) {}

std::vector<Sounding> BlockMaker::soundings(System const& system) const {
    std::vector<Sounding> result;
    for (std::size_t i = 0; i < system.atoms.size(); ++i) {
        auto const& a = system.atoms[i];
        if (!a.note) continue;
        double to = system.width;
        for (std::size_t j = i + 1; j < system.atoms.size(); ++j) {
            auto const& next = system.atoms[j];
            bool const stops = next.kind == Atom::Kind::event || next.kind == Atom::Kind::multi_rest;
            if (!stops) continue;
            to = next.x - head_half - 1;
            break;
        }
        double const from = a.x - head_half - 1;
        result.push_back({*a.note, from, std::max(to, from + 2), a.x, a.begins_note});
    }
    return result;
}

void BlockMaker::over_staff(System const& system, Drawing& drawing) const {
    std::vector<Over> labels;
    auto const& first = staff_->measures[system.first_measure];
    std::optional<std::size_t> measure;
    double bar_from = 0;
    std::vector<Over> texts, voltas;
    for (std::size_t i = 0; i < system.atoms.size(); ++i) {
        auto const& a = system.atoms[i];
        bool const head =
            (a.kind == Atom::Kind::clef || a.kind == Atom::Kind::key) && a.x < 4 * space && i < 2;
        if (a.note && a.begins_note)
            if (auto const w = watched_->find(*a.note); w != watched_->end())
                labels.push_back(
                    {a.x, std::to_string(w->second), bold(type::label, ink::modify), w->second, {}});
        if (head) continue;
        auto const& m = staff_->measures[a.measure];
        if (measure != a.measure) {
            measure = a.measure;
            bar_from = a.x;
            bool const continued = a.measure == system.first_measure && system.begins_mid_bar;
            double const onset_of_first = a.kind == Atom::Kind::event ? m.events[a.event].onset : 0;
            for (auto const& text : m.texts) {
                if (text.text.empty()) continue;
                if (continued && text.onset < onset_of_first - 1e-6) continue;
                std::optional<double> x;
                for (std::size_t j = i; j < system.atoms.size() && system.atoms[j].measure == a.measure && !x;
                     ++j) {
                    auto const& b = system.atoms[j];
                    if (b.kind == Atom::Kind::event && m.events[b.event].onset >= text.onset - 1e-6)
                        x = b.x - head_half;
                    if (b.kind == Atom::Kind::multi_rest) x = b.x;
                }
                bool const ends_here = !system.atoms.empty() && system.atoms.back().measure != a.measure;
                if (!x && !ends_here && system.atoms.back().kind != Atom::Kind::barline)
                    continue; // in the bar's other part
                texts.push_back({x.value_or(bar_from), text.text, style_of(text.kind), 0, {}});
            }
            if (!m.ending.empty() && !continued) {
                double to = system.width;
                for (auto const& b : system.atoms)
                    if (b.measure == a.measure && b.kind == Atom::Kind::barline) to = b.x;
                voltas.push_back({std::max(0.0, bar_from - a.left - 3), m.ending, plain(type::label), 0, to});
            }
        }
    }
    for (auto const& label : labels) stack(drawing, label, system.width);
    for (auto& volta : voltas) stack(drawing, volta, system.width);
    bool const numbered = !first.implicit && !first.number.empty() && system.first_measure > 0;
    if (numbered)
        stack(drawing,
              {0,
               system.begins_mid_bar ? "(" + first.number + ")" : first.number,
               plain(type::label, ink::soft),
               0,
               {}},
              system.width);
    ranges::stable_sort(texts, {}, &Over::x);
    double last_x = -1e9, end = 0; // what begins together is read in a row
    for (auto const& text : texts) {
        auto fitting = text;
        fitting.text = fitted(*measurer_, text.text, text.style, system.width);
        double const wide = measurer_->measure(fitting.text, text.style).advance;
        bool const together = std::abs(text.x - last_x) < 1 && end + wide <= system.width;
        if (together)
            fitting.x = end;
        else
            last_x = text.x;
        end = fitting.x + wide + 4;
        stack(drawing, fitting, system.width);
    }
}

double BlockMaker::under_staff(System const& system, Drawing& drawing) {
    bool lyrics = hyphen_open_ || extender_open_, heard = false;
    for (auto const& a : system.atoms) {
        lyrics = lyrics || !a.underlay.lyric.empty();
        heard = heard || !a.underlay.heard.empty();
    }
    double first = system.width; // what hangs below the clef is no matter where no words stand
    for (auto const& a : system.atoms)
        if (a.note) first = std::min(first, a.x - std::max(a.under, 8.0));
    double y = drawing.bottom(first, system.width, 4 * space) + 3;
    auto const row = [&](std::string const& name, double height) {
        y += height;
        if (!name.empty()) drawing.write({-4, y - 0.5}, name, slanted(type::small, ink::soft), Align::right);
    };
    if (lyrics) {
        row("", 9.5);
        auto const style = plain(type::body);
        double end = 0; // of the last syllable or of the line after it
        double const start = system.atoms.empty() ? 0 : std::max(0.0, 6 * space);
        end = start;
        bool hyphen = hyphen_open_, extend = extender_open_;
        double sung_to = start; // how far the syllable has been carried
        auto const finish = [&](double next_from) {
            if (hyphen && next_from - end > 3.2) {
                // One hyphen, or several over a long way.
                int const count = std::clamp(static_cast<int>((next_from - end) / 60), 1, 12);
                for (int i = 0; i < count; ++i) {
                    double const at = end + (next_from - end) * (i + 0.5) / count;
                    drawing.line({at - 1.7, y - 2.6}, {at + 1.7, y - 2.6},
                                 {.width = 0.75, .color = ink::black});
                }
            } else if (extend && std::min(sung_to, next_from - 2) - end > 5) {
                drawing.line({end + 1.5, y}, {std::min(sung_to, next_from - 2), y},
                             {.width = 0.5, .color = ink::black});
            }
        };
        for (auto const& a : system.atoms) {
            if (a.kind != Atom::Kind::event) continue;
            if (!a.note) continue;
            if (a.underlay.lyric.empty()) {
                sung_to = a.x + head_half;
                continue;
            }
            double const width = measurer_->measure(a.underlay.lyric, style).advance, from = a.x - width / 2;
            finish(from);
            drawing.text({from, y}, a.underlay.lyric, style);
            end = sung_to = from + width;
            hyphen = a.underlay.hyphen;
            extend = !hyphen;
        }
        finish(system.width);
        hyphen_open_ = hyphen;
        extender_open_ = false;
        y += 2.5;
    }
    row("vowel", 11);
    for (auto const& a : system.atoms)
        drawing.write({a.x, y}, a.underlay.vowel, plain(type::body, ink::first), Align::centre);
    if (heard) {
        row("heard", 10.5);
        for (auto const& a : system.atoms)
            drawing.write({a.x, y}, a.underlay.heard, plain(type::body, ink::migrate), Align::centre);
    }
    return y + 5;
}

double BlockMaker::advice(std::vector<Sounding> const& soundings, double width, double y,
                          Drawing& drawing) const {
    struct Run {
        double from = 0, to = 0;
        plan::Decision const* decision = nullptr;
    };
    std::vector<Run> runs;
    for (auto const& s : soundings) {
        auto const& d = plan_->notes[s.note].decision;
        if (!d) continue;
        if (!runs.empty() && same_advice(*runs.back().decision, *d))
            runs.back().to = s.to;
        else
            runs.push_back({s.from, s.to, &*d});
    }
    // The signs stand on a rail of their own, each where its advice begins; the words beneath, on the first
    // or the second line, as there is room: those that ask for something come first. Of a vowel that drifts
    // by itself words are said only where that is sure. What finds no room is left to the sign (and the front
    // page).
    constexpr double sign = 6.5, line = 10.5;
    double rail_end = -1e9;
    std::vector<Run const*> speaking;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        auto const& run = runs[i];
        auto const advice = run.decision->advice;
        auto const color = color_of(advice);
        if (rail_end > run.from + 3) continue;
        advice_sign(drawing, {run.from + sign / 2, y + 5}, sign, advice);
        rail_end = run.from + sign + 1.5;
        double const next = i + 1 < runs.size() ? runs[i + 1].from : width;
        double const to = std::min(run.to, next - 3);
        if (advice != plan::Advice::hold && to - rail_end > 4) {
            drawing.line({rail_end + 1, y + 5}, {to, y + 5},
                         {.width = 0.7,
                          .color = color,
                          .dashes = advice == plan::Advice::modify ? std::vector<double>{}
                                                                   : std::vector<double>{1.6, 1.6}});
            rail_end = to;
        }
        if (advice == plan::Advice::modify || (advice == plan::Advice::migrate && is_sure(*run.decision)))
            speaking.push_back(&run);
    }
    ranges::stable_partition(speaking,
                             [](Run const* run) { return run->decision->advice == plan::Advice::modify; });

    std::vector<std::pair<double, double>> taken[2];
    double y_end = runs.empty() ? y : y + 10;
    double const limit = width + gutter_right;
    for (auto const* run : speaking) {
        auto const& d = *run->decision;
        auto const shade = shade_of(d), brief = brief_of(d);
        auto const words_style = plain(type::label, color_of(d.advice));
        auto const shade_style = bold(type::body, color_of(d.advice));
        double const shade_width = shade.empty() ? 0 : measurer_->measure(shade, shade_style).advance + 3;
        double const words_width = brief.empty() ? 0 : measurer_->measure(brief, words_style).advance;
        auto const put = [&](double need, bool words) {
            for (int r = 0; r < 2; ++r) {
                double const from = std::min(run->from, limit - need), to = from + need + 2 * clear;
                if (need <= 0 ||
                    ranges::any_of(taken[r], [&](auto const& t) { return from < t.second && t.first < to; }))
                    continue;
                double const baseline = y + 10 + (r + 1) * line - 2.5;
                drawing.text({from, baseline}, shade, shade_style);
                if (words) drawing.text({from + shade_width, baseline}, brief, words_style);
                taken[r].emplace_back(from, to);
                y_end = std::max(y_end, baseline + 2.5);
                return true;
            }
            return false;
        };
        if (!put(shade_width + words_width, true) && shade_width > 0) put(shade_width, false);
    }
    return y_end + 1;
}

Block BlockMaker::make(System const& system) {
    Drawing upper(*measurer_), lower(*measurer_);
    engraver_.draw(system, upper);
    over_staff(system, upper);
    double const lane = under_staff(system, upper);

    auto sounding = soundings(system);
    double const rail = rail_height + 3;
    lower.write({-4, rail - 4.2}, "zone", slanted(type::small, ink::soft), Align::right);
    lower.write({-4, rail + 8}, "do", slanted(type::small, ink::soft), Align::right);
    double const height = advice(sounding, system.width, rail, lower);
    double const top = upper.top(-1e6, 1e6, 0);
    return {std::move(upper), top, lane, std::move(sounding), system.width, std::move(lower), height};
}

void Block::draw(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Point at) const {
    double const y = at.y - top;
    upper.replay(canvas, {at.x, y});
    Drawing middle(canvas.measurer());
    draw_lane(middle, plan, soundings, scale, width);
    middle.replay(canvas, {at.x, y + lane});
    lower.replay(canvas, {at.x, y + lane + scale.height});
}

} // namespace vowelway::chart
