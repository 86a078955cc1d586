// SPDX-License-Identifier: MIT
#include "chart/page/over_staff.hpp"

#include "chart/page/marks.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::chart {
namespace {

constexpr double clear_of_staff = 2.5; // between two labels

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
        drawing.top(x - clear_of_staff, to + clear_of_staff, -0.3 * space) - 3 - std::max(0.0, extent.below);
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

std::vector<Over> watch_numbers(System const& system, std::map<std::size_t, int> const& watched) {
    std::vector<Over> labels;
    for (auto const& a : system.atoms) {
        if (!a.note || !a.begins_note) continue;
        if (auto const w = watched.find(*a.note); w != watched.end())
            labels.push_back({a.x, std::to_string(w->second), bold(type::label, ink::modify), w->second, {}});
    }
    return labels;
}

/// The first atom of each bar, clef and key of the system left out.
std::vector<std::size_t> bar_beginnings(System const& system) {
    std::vector<std::size_t> result;
    std::optional<std::size_t> measure;
    for (std::size_t i = 0; i < system.atoms.size(); ++i) {
        auto const& a = system.atoms[i];
        bool const head =
            (a.kind == Atom::Kind::clef || a.kind == Atom::Kind::key) && a.x < 4 * space && i < 2;
        if (head || measure == a.measure) continue;
        measure = a.measure;
        result.push_back(i);
    }
    return result;
}

/// Whether the bar began on the system before.
bool continued(System const& system, Atom const& first) {
    return first.measure == system.first_measure && system.begins_mid_bar;
}

/// Where in the bar that begins with an atom what sounds at `onset` stands.
std::optional<double> place_of(double onset, System const& system, std::size_t begin, StaffMeasure const& m) {
    for (std::size_t j = begin;
         j < system.atoms.size() && system.atoms[j].measure == system.atoms[begin].measure; ++j) {
        auto const& a = system.atoms[j];
        if (a.kind == Atom::Kind::event && m.events[a.event].onset >= onset - 1e-6) return a.x - head_half;
        if (a.kind == Atom::Kind::multi_rest) return a.x;
    }
    return std::nullopt;
}

/// Tempo, dynamics and words of the bar that begins with an atom, as far as they stand in this system.
std::vector<Over> texts_of(System const& system, std::size_t begin, StaffMeasure const& m) {
    std::vector<Over> texts;
    auto const& first = system.atoms[begin];
    double const onset_of_first = first.kind == Atom::Kind::event ? m.events[first.event].onset : 0;
    auto const& last = system.atoms.back();
    bool const whole = last.measure != first.measure || last.kind == Atom::Kind::barline;
    for (auto const& text : m.texts) {
        if (text.text.empty()) continue;
        if (continued(system, first) && text.onset < onset_of_first - 1e-6) continue;
        auto const x = place_of(text.onset, system, begin, m);
        if (!x && !whole) continue; // in the bar's other part
        texts.push_back({x.value_or(first.x), text.text, style_of(text.kind), 0, {}});
    }
    return texts;
}

std::optional<Over> volta_of(System const& system, Atom const& first, StaffMeasure const& m) {
    if (m.ending.empty() || continued(system, first)) return std::nullopt;
    double to = system.width;
    for (auto const& b : system.atoms)
        if (b.measure == first.measure && b.kind == Atom::Kind::barline) to = b.x;
    return Over{std::max(0.0, first.x - first.left - 3), m.ending, plain(type::label), 0, to};
}

std::optional<Over> number_of(System const& system, StaffMeasure const& first) {
    if (first.implicit || first.number.empty() || system.first_measure == 0) return std::nullopt;
    return Over{0,
                system.begins_mid_bar ? "(" + first.number + ")" : first.number,
                plain(type::label, ink::soft),
                0,
                {}};
}

/// What begins together is read in a row.
void stack_texts(std::vector<Over> texts, double width, Drawing& drawing) {
    auto const& m = drawing.measurer();
    ranges::stable_sort(texts, {}, &Over::x);
    double last_x = -1e9, end = 0;
    for (auto const& text : texts) {
        auto fitting = text;
        fitting.text = fitted(m, text.text, text.style, width);
        double const wide = m.measure(fitting.text, text.style).advance;
        bool const together = std::abs(text.x - last_x) < 1 && end + wide <= width;
        if (together)
            fitting.x = end;
        else
            last_x = text.x;
        end = fitting.x + wide + 4;
        stack(drawing, fitting, width);
    }
}

} // namespace

void draw_over_staff(System const& system, Staff const& staff, std::map<std::size_t, int> const& watched,
                     Drawing& drawing) {
    std::vector<Over> texts, voltas;
    for (auto const begin : bar_beginnings(system)) {
        auto const& first = system.atoms[begin];
        auto const& m = staff.measures[first.measure];
        auto const here = texts_of(system, begin, m);
        texts.insert(texts.end(), here.begin(), here.end());
        if (auto const volta = volta_of(system, first, m)) voltas.push_back(*volta);
    }
    for (auto const& number : watch_numbers(system, watched)) stack(drawing, number, system.width);
    for (auto const& volta : voltas) stack(drawing, volta, system.width);
    if (auto const number = number_of(system, staff.measures[system.first_measure]))
        stack(drawing, *number, system.width);
    stack_texts(std::move(texts), system.width, drawing);
}

} // namespace vowelway::chart
