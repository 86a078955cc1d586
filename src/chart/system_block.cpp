// SPDX-License-Identifier: MIT
#include "chart/system_block.hpp"

#include "chart/marks.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace vowelway::chart {
namespace {

constexpr double clear = 2.5; // between two labels

/// A label over the staff, with how it is set.
struct Over {
    double x = 0;
    std::string text;
    TextStyle style;
    int watched = 0; ///< > 0: the circled number of a note to watch
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
    double const baseline = drawing.top(x - clear, to + clear, -0.3 * space) - 3 - std::max(0.0, extent.below);
    if (label.bracket_to) {
        double const y = baseline - extent.above - 2;
        drawing.stroke(Path().move({label.x, baseline + 1}).line({label.x, y}).line({to - 2, y}), {.width = 0.6, .color = ink::black});
        drawing.write({label.x + 3, baseline}, label.text, label.style);
        return;
    }
    drawing.write({x, baseline}, label.text, label.style);
}

TextStyle style_of(StaffText::Kind kind) {
    switch (kind) {
    case StaffText::Kind::tempo: return bold(type::body);
    case StaffText::Kind::dynamic: return {.size = 11, .color = ink::black, .bold = true, .italic = true};
    case StaffText::Kind::rehearsal: return bold(11);
    case StaffText::Kind::words: break;
    }
    return slanted(type::label);
}

std::string shade_of(Decision const& d) { return d.advice == Advice::modify ? d.target.shade.quality().ipa() : std::string{}; }

bool same_advice(Decision const& a, Decision const& b) {
    return a.advice == b.advice && a.brief == b.brief && shade_of(a) == shade_of(b);
}

} // namespace

BlockMaker::BlockMaker(Plan const& plan, Staff const& staff, std::map<std::size_t, int> const& watched,
                       LaneScale const& scale, TextMeasurer const& measurer)
    : plan_(&plan), staff_(&staff), watched_(&watched), scale_(scale), measurer_(&measurer), engraver_(staff) {}

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
        bool const head = (a.kind == Atom::Kind::clef || a.kind == Atom::Kind::key) && a.x < 4 * space && i < 2;
        if (a.note && a.begins_note)
            if (auto const w = watched_->find(*a.note); w != watched_->end())
                labels.push_back({a.x, std::to_string(w->second), bold(type::label, ink::modify), w->second, {}});
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
                for (std::size_t j = i; j < system.atoms.size() && system.atoms[j].measure == a.measure && !x; ++j) {
                    auto const& b = system.atoms[j];
                    if (b.kind == Atom::Kind::event && m.events[b.event].onset >= text.onset - 1e-6) x = b.x - head_half;
                    if (b.kind == Atom::Kind::multi_rest) x = b.x;
                }
                bool const ends_here = !system.atoms.empty() && system.atoms.back().measure != a.measure;
                if (!x && !ends_here && system.atoms.back().kind != Atom::Kind::barline) continue; // in the bar's other part
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
        stack(drawing, {0, system.begins_mid_bar ? "(" + first.number + ")" : first.number, plain(type::label, ink::soft), 0, {}}, system.width);
    std::ranges::stable_sort(texts, {}, &Over::x);
    for (auto const& text : texts) {
        auto fitting = text;
        fitting.text = fitted(*measurer_, text.text, text.style, system.width);
        stack(drawing, fitting, system.width);
    }
}

double BlockMaker::under_staff(System const& system, Drawing& drawing) {
    bool lyrics = hyphen_open_ || extender_open_, heard = false;
    for (auto const& a : system.atoms) {
        lyrics = lyrics || !a.underlay.lyric.empty();
        heard = heard || !a.underlay.heard.empty();
    }
    double y = drawing.bottom(0, system.width, 4 * space) + 4;
    auto const row = [&](std::string const& name, double height) {
        y += height;
        if (!name.empty()) drawing.write({-4, y - 0.5}, name, slanted(type::small, ink::soft), Align::right);
    };
    if (lyrics) {
        row("", 9.5);
        auto const style = plain(10);
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
                    drawing.line({at - 1.7, y - 2.6}, {at + 1.7, y - 2.6}, {.width = 0.75, .color = ink::black});
                }
            } else if (extend && std::min(sung_to, next_from - 2) - end > 5) {
                drawing.line({end + 1.5, y}, {std::min(sung_to, next_from - 2), y}, {.width = 0.5, .color = ink::black});
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
    for (auto const& a : system.atoms) drawing.write({a.x, y}, a.underlay.vowel, plain(10, ink::first), Align::centre);
    if (heard) {
        row("heard", 10.5);
        for (auto const& a : system.atoms) drawing.write({a.x, y}, a.underlay.heard, plain(type::body, ink::migrate), Align::centre);
    }
    return y + 5;
}

double BlockMaker::advice(std::vector<Sounding> const& soundings, double width, double y, Drawing& drawing) const {
    struct Run {
        double from = 0, to = 0;
        Decision const* decision = nullptr;
    };
    std::vector<Run> runs;
    for (auto const& s : soundings) {
        auto const& d = plan_->notes[s.note].decision;
        if (!d) continue;
        if (!runs.empty() && same_advice(*runs.back().decision, *d)) runs.back().to = s.to;
        else runs.push_back({s.from, s.to, &*d});
    }
    // Two rows: the sign stands at its note on the first; words that find no room go to the second, or stay away.
    constexpr double sign = 6.5, line = 11;
    double first_end = -1e9, second_end = -1e9;
    int rows = runs.empty() ? 0 : 1;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        auto const& run = runs[i];
        auto const& d = *run.decision;
        auto const color = color_of(d.advice);
        double const next = i + 1 < runs.size() ? runs[i + 1].from : width;
        double const x = std::max(run.from, first_end);
        advice_sign(drawing, {x + sign / 2, y + 6}, sign, d.advice);
        first_end = x + sign + 1.5;
        auto const shade = shade_of(d);
        auto const words_style = plain(type::label, color);
        auto const shade_style = bold(10, color);
        double const shade_width = shade.empty() ? 0 : measurer_->measure(shade, shade_style).advance + 3;
        double const words_width = d.brief.empty() ? 0 : measurer_->measure(d.brief, words_style).advance;
        double const all = shade_width + words_width;
        auto const put = [&](double at, double baseline, bool words) {
            drawing.text({at, baseline}, shade, shade_style);
            if (words) drawing.text({at + shade_width, baseline}, d.brief, words_style);
        };
        double const room = next - first_end - clear;
        bool line_on = false;
        if (all <= room) {
            put(first_end, y + 9, true);
            line_on = true;
            first_end += all + clear;
        } else if (std::max(run.from, second_end) < run.from + 14 && std::max(run.from, second_end) + all <= width && all > 0) {
            double const at = std::max(run.from, second_end);
            put(at, y + 9 + line, true);
            second_end = at + all + 2 * clear;
            rows = 2;
            if (run.to > first_end + 6 && next - first_end > 8) line_on = true;
        } else if (shade_width > 0 && shade_width <= room) {
            put(first_end, y + 9, false);
            first_end += shade_width + clear;
        }
        if (line_on && std::min(run.to, next) - first_end > 8)
            drawing.line({first_end + 1, y + 6}, {std::min(run.to, next - 3), y + 6},
                         {.width = 0.6, .color = color, .dashes = d.advice == Advice::modify ? std::vector<double>{} : std::vector<double>{1.5, 1.5}});
    }
    return y + rows * line + 1;
}

Block BlockMaker::make(System const& system) {
    Drawing drawing(*measurer_);
    engraver_.draw(system, drawing);
    over_staff(system, drawing);
    double y = under_staff(system, drawing);

    auto const sounding = soundings(system);
    Drawing lane(*measurer_);
    draw_lane(lane, *plan_, sounding, scale_, system.width, 16);
    lane.replay(drawing, {0, y});
    y += scale_.height + 2;
    drawing.write({-4, y + 9}, "do", slanted(type::small, ink::soft), Align::right);
    y = advice(sounding, system.width, y, drawing);

    double const top = drawing.top(-1e6, 1e6, 0);
    return {std::move(drawing), top, y};
}

} // namespace vowelway::chart
