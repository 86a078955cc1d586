// SPDX-License-Identifier: MIT
#include "chart/engraving/notes.hpp"

#include "chart/engraving/music_symbols.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

Symbol const& symbol_of(Accidental a) {
    switch (a) {
    case Accidental::sharp:
        return symbol::sharp;
    case Accidental::flat:
        return symbol::flat;
    case Accidental::natural:
        return symbol::natural;
    case Accidental::double_sharp:
        return symbol::double_sharp;
    case Accidental::double_flat:
        return symbol::double_flat;
    case Accidental::quarter_sharp:
        return symbol::quarter_sharp;
    case Accidental::quarter_flat:
        return symbol::quarter_flat;
    }
    return symbol::natural;
}

Symbol const& head_symbol(NoteValue value) {
    if (value <= NoteValue::breve) return symbol::breve_head;
    if (value == NoteValue::whole) return symbol::whole_head;
    return value == NoteValue::half ? symbol::half_head : symbol::black_head;
}

void ledger_lines(SetEvent const& set, double width, Canvas& canvas) {
    auto const line = [&](int step) {
        double const x = set.atom->x, y = y_of_step(step);
        canvas.line({x - width / 2 - 0.35 * space, y}, {x + width / 2 + 0.35 * space, y},
                    {.width = 0.16 * space, .color = ink::black});
    };
    for (int step = -2; step >= set.steps.front(); step -= 2) line(step);
    for (int step = 10; step <= set.steps.back(); step += 2) line(step);
}

void accidentals(SetEvent const& set, double width, Canvas& canvas) {
    for (auto const& head : set.event->heads) {
        if (!head.accidental) continue;
        auto const& sign = symbol_of(*head.accidental);
        put(canvas, sign, set.atom->x - width / 2 - 0.28 * space - width_of(sign, set.scale),
            y_of_step(staff_step(head.written, set.atom->clef)), set.scale);
    }
}

/// Left edge and width of the ink in thousandths of the em.
struct RestSign {
    char const* utf8;
    double left, width;
};

RestSign rest_sign(NoteValue value) {
    switch (value) {
    case NoteValue::quarter:
        return {"\U0001D13D", 51, 256};
    case NoteValue::eighth:
        return {"\U0001D13E", 50, 262};
    case NoteValue::n16th:
        return {"\U0001D13F", 50, 330};
    case NoteValue::n32nd:
        return {"\U0001D140", 50, 401};
    default:
        return {"\U0001D141", 50, 471};
    }
}

void flags(SetEvent const& set, Canvas& canvas) {
    if (set.event->value < NoteValue::eighth || !set.event->beams.empty()) return;
    int const count = static_cast<int>(set.event->value) - static_cast<int>(NoteValue::quarter);
    double const s = space * set.scale, down = set.stem.up ? 1 : -1;
    for (int i = 0; i < count; ++i) {
        double const x = set.stem.x, y = set.stem.to + down * i * 0.8 * s;
        auto const at = [&](double dx, double dy) { return Point{x + dx * s, y + down * dy * s}; };
        canvas.fill(Path()
                        .move(at(0, 0))
                        .curve(at(0.05, 0.95), at(1.35, 1.15), at(0.72, 2.75))
                        .curve(at(1.0, 1.75), at(0.45, 1.2), at(0, 0.95))
                        .close(),
                    ink::black);
    }
}

} // namespace

void draw_note(SetEvent const& set, Canvas& canvas) {
    auto const& e = *set.event;
    auto const& head = head_symbol(e.value);
    double const width = width_of(head, set.scale), x = set.atom->x;
    ledger_lines(set, width, canvas);
    int previous = -100;
    bool shifted = false;
    for (int const step : set.steps) { // a second stands on the other side of the stem
        shifted = step - previous == 1 && !shifted;
        previous = step;
        double const aside = shifted ? (set.has_stem && !set.stem.up ? -width : width) : 0;
        put(canvas, head, x - width / 2 + aside, y_of_step(step), set.scale);
        double const dot_y = y_of_step(step % 2 == 0 ? step + 1 : step);
        for (int d = 0; d < e.dots; ++d)
            canvas.fill(Path().circle({x + width / 2 + (0.6 + 0.65 * d) * space, dot_y}, 0.2 * space),
                        ink::black);
    }
    accidentals(set, width, canvas);
    if (!set.has_stem) return;
    canvas.line({set.stem.x, set.stem.from}, {set.stem.x, set.stem.to},
                {.width = stem_width, .color = ink::black});
    flags(set, canvas);
}

void draw_rest(SetEvent const& set, Canvas& canvas) {
    auto const& e = *set.event;
    double const x = set.atom->x;
    double right = x + 0.5 * space;
    if (e.measure_rest || e.value <= NoteValue::whole) {
        canvas.fill(Box{x - 0.6 * space, space, 1.2 * space, 0.5 * space}, ink::black);
    } else if (e.value == NoteValue::half) {
        canvas.fill(Box{x - 0.6 * space, 1.5 * space, 1.2 * space, 0.5 * space}, ink::black);
    } else {
        auto const sign = rest_sign(e.value);
        double const size = em * set.scale;
        canvas.text({x - (sign.left + sign.width / 2) / 1000 * size, 4 * space}, sign.utf8, music(size));
        right = x + sign.width / 2000 * size;
    }
    if (e.measure_rest) return;
    for (int d = 0; d < e.dots; ++d)
        canvas.fill(Path().circle({right + (0.5 + 0.65 * d) * space, 1.5 * space}, 0.2 * space), ink::black);
}

void draw_articulations(SetEvent const& set, Canvas& canvas) {
    auto const& e = *set.event;
    double const x = set.atom->x;
    double high = 0, low = 4 * space;
    if (!set.steps.empty()) {
        high = std::min(high, y_of_step(set.steps.back()) - 0.6 * space);
        low = y_of_step(set.steps.front());
    }
    if (set.has_stem && set.stem.up) high = std::min(high, set.stem.to);
    bool const beneath = set.has_stem && set.stem.up; // small marks stand at the head, away from the stem
    double y = beneath ? low + 1.0 * space
                       : (set.steps.empty() ? -0.8 * space : y_of_step(set.steps.back()) - 1.0 * space);
    double const away = beneath ? 1 : -1;
    if (e.staccato && !e.rest()) {
        canvas.fill(Path().circle({x, y}, 0.2 * space), ink::black);
        y += away * 0.8 * space;
    }
    if (e.tenuto && !e.rest()) {
        canvas.line({x - 0.6 * space, y}, {x + 0.6 * space, y}, {.width = 0.18 * space, .color = ink::black});
        y += away * 0.8 * space;
    }
    if (!beneath) high = std::min(high, y + 0.5 * space);
    if (e.accent && !e.rest()) {
        double const top = high - 1.3 * space;
        canvas.stroke(Path()
                          .move({x - 0.7 * space, top})
                          .line({x + 0.7 * space, top + 0.45 * space})
                          .line({x - 0.7 * space, top + 0.9 * space}),
                      {.width = 0.16 * space, .color = ink::black});
        high = top;
    }
    if (e.fermata) // its ink lies 648..1000 thousandths above the baseline
        canvas.text({x - 0.379 * em, high - 0.5 * space + 0.648 * em}, "\U0001D110", music(em));
    if (e.breath_after)
        canvas.text({x + set.atom->right - 1.4 * space, 4.4 * space}, "\U0001D112", music(em));
}

} // namespace vowelway::chart
