// SPDX-License-Identifier: MIT
// Heads, stems, flags, rests and the signs on the staff. Beams and curves are in engrave_groups.cpp.
#include "chart/engraving/engrave.hpp"
#include "chart/canvas/style.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace vowelway::chart {
namespace {

constexpr double em = 4 * space; // size of the music face that fits the staff
constexpr double line_width = 0.11 * space, stem_width = 0.13 * space;
constexpr int middle = 4; // step of the middle line

/// A symbol of Noto Music: how far its visual centre lies above its baseline, its ink's left edge and
/// width, in thousandths of the em (read from the font), and the scale that suits the staff.
struct Symbol {
    char const* utf8;
    double centre, left, width, scale;
};
constexpr Symbol black_head{"\U0001D158", 134, 51, 296, 1}, half_head{"\U0001D157", 134, 51, 296, 1},
    whole_head{"\U0001D15D", 134, 50, 414, 1}, breve_head{"\U0001D15C", 135, 50, 613, 1};
constexpr Symbol sharp{"♯", 178, 51, 451, 0.82}, flat{"♭", 112, 51, 245, 1.0}, natural{"♮", 96, 51, 255, 1.0},
    double_sharp{"\U0001D12A", 131, 50, 260, 1.0}, double_flat{"\U0001D12B", 112, 50, 367, 1.0},
    quarter_sharp{"\U0001D132", 500, 50, 135, 1.6}, quarter_flat{"\U0001D133", 420, 50, 150, 1.4};

Symbol const& symbol_of(Accidental a) {
    switch (a) {
    case Accidental::sharp:
        return sharp;
    case Accidental::flat:
        return flat;
    case Accidental::natural:
        return natural;
    case Accidental::double_sharp:
        return double_sharp;
    case Accidental::double_flat:
        return double_flat;
    case Accidental::quarter_sharp:
        return quarter_sharp;
    case Accidental::quarter_flat:
        return quarter_flat;
    }
    return natural;
}

/// Sets a symbol with its centre at y and its ink beginning at x.
void put(Canvas& canvas, Symbol const& s, double x, double y, double scale = 1) {
    double const size = em * s.scale * scale;
    canvas.text({x - s.left / 1000 * size, y + s.centre / 1000 * size}, s.utf8, music(size));
}
double width_of(Symbol const& s, double scale = 1) { return s.width / 1000 * em * s.scale * scale; }

Symbol const& head_symbol(NoteValue value) {
    if (value <= NoteValue::breve) return breve_head;
    if (value == NoteValue::whole) return whole_head;
    return value == NoteValue::half ? half_head : black_head;
}

/// Steps of the signs of a key in a clef.
std::vector<int> key_steps(int fifths, Clef const& clef) {
    constexpr std::array sharps{8, 5, 9, 6, 3, 7, 4}, flats{4, 7, 3, 6, 2, 5, 1}; // treble clef
    int shift = staff_step({.step = 'E', .octave = 4}, clef) % 7; // E is the treble's bottom line
    if (shift > 3) shift -= 7;
    if (shift < -3) shift += 7;
    std::vector<int> steps;
    for (int i = 0; i < std::min(std::abs(fifths), 7); ++i) {
        int step =
            (fifths > 0 ? sharps[static_cast<std::size_t>(i)] : flats[static_cast<std::size_t>(i)]) + shift;
        if (step > 9) step -= 7;
        if (step < 0) step += 7;
        steps.push_back(step);
    }
    return steps;
}

} // namespace

void Engraver::draw(System const& system, Canvas& canvas) {
    staff_lines(system, canvas);
    signs(system, canvas);
    auto sets = set_events(system);
    choose_beams(sets, canvas);
    for (auto const& set : sets) {
        if (set.event->rest())
            rest(set, canvas);
        else
            heads(set, canvas);
        articulations(set, canvas);
    }
    ties(sets, system, canvas);
    slurs(sets, system, canvas);
    tuplets(sets, canvas);
}

void Engraver::staff_lines(System const& system, Canvas& canvas) const {
    for (int i = 0; i < 5; ++i)
        canvas.line({0, i * space}, {system.width, i * space}, {.width = line_width, .color = ink::black});
}

void Engraver::signs(System const& system, Canvas& canvas) const {
    for (auto const& a : system.atoms) {
        switch (a.kind) {
        case Atom::Kind::clef: {
            bool const head = a.x < 4 * space;
            double const size = head ? em : 0.8 * em;
            double const bottom = a.clef.sign == 'C'   ? 4 * space - (a.clef.line - 3) * space
                                  : a.clef.sign == 'F' ? 4 * space - (a.clef.line - 4) * space
                                                       : 4 * space - (a.clef.line - 2) * space;
            char const* glyph = a.clef.sign == 'F'   ? "\U0001D122"
                                : a.clef.sign == 'C' ? "\U0001D121"
                                                     : "\U0001D11E";
            canvas.text({a.x, bottom}, glyph, music(size));
            if (a.clef.octave_change != 0) {
                bool const below = a.clef.octave_change < 0;
                double const y = below ? (a.clef.sign == 'G' ? 6.75 * space : 5.3 * space)
                                       : (a.clef.sign == 'G' ? -1.75 * space : -0.7 * space);
                canvas.write({a.x + 0.35 * size, y}, std::abs(a.clef.octave_change) > 1 ? "15" : "8",
                             slanted(1.75 * space), Align::centre);
            }
            break;
        }
        case Atom::Kind::key: {
            bool const cancel = a.key.fifths == 0;
            int const fifths = cancel ? a.key_before.fifths : a.key.fifths;
            Symbol const& s = cancel ? natural : fifths > 0 ? sharp : flat;
            double x = a.x;
            for (int const step : key_steps(fifths, a.clef)) {
                put(canvas, s, x + (1.05 * space - width_of(s, 0.88)) / 2, y_of_step(step),
                    s.utf8 == sharp.utf8 ? 0.88 : 1);
                x += 1.05 * space;
            }
            break;
        }
        case Atom::Kind::time: {
            auto const& time = *staff_->measures[a.measure].time;
            if (time.sign == TimeSignature::Sign::common || time.sign == TimeSignature::Sign::cut) {
                put(canvas,
                    {time.sign == TimeSignature::Sign::common ? "\U0001D134" : "\U0001D135", 500, 50, 422, 1},
                    a.x, 2 * space);
                break;
            }
            auto const lower = std::to_string(time.beat_type);
            auto const style = bold(3.02 * space); // lining figures two spaces tall
            double const width = std::max(canvas.measurer().measure(time.beats, style).advance,
                                          canvas.measurer().measure(lower, style).advance);
            canvas.write({a.x + width / 2, 1.97 * space}, time.beats, style, Align::centre);
            canvas.write({a.x + width / 2, 3.97 * space}, lower, style, Align::centre);
            break;
        }
        case Atom::Kind::repeat_begin:
        case Atom::Kind::barline:
            barline(a, canvas);
            break;
        case Atom::Kind::multi_rest: {
            double const from = a.x, to = a.x + a.right - 1.2 * space;
            if (a.bars == 1) {
                canvas.fill(Box{(from + to) / 2 - 0.6 * space, space, 1.2 * space, 0.5 * space}, ink::black);
                break;
            }
            canvas.fill(Box{from, 1.62 * space, to - from, 0.76 * space}, ink::black);
            for (double const x : {from, to})
                canvas.line({x, space}, {x, 3 * space}, {.width = 0.18 * space, .color = ink::black});
            canvas.write({(from + to) / 2, -0.9 * space}, std::to_string(a.bars), bold(2.4 * space),
                         Align::centre);
            break;
        }
        case Atom::Kind::event:
            break;
        }
    }
}

void Engraver::barline(Atom const& a, Canvas& canvas) const {
    auto const& m = staff_->measures[a.measure];
    double const bottom = 4 * space, thick = 0.5 * space, thin = 0.15 * space;
    auto const upright = [&](double x, double width, std::vector<double> dashes = {}) {
        canvas.line({x, 0}, {x, bottom}, {.width = width, .color = ink::black, .dashes = std::move(dashes)});
    };
    auto const dots = [&](double x) {
        for (double const y : {1.5 * space, 2.5 * space})
            canvas.fill(Path().circle({x, y}, 0.22 * space), ink::black);
    };
    if (a.kind == Atom::Kind::repeat_begin) {
        upright(a.x + thick / 2, thick);
        upright(a.x + thick + 0.4 * space, thin);
        dots(a.x + thick + 0.95 * space);
        return;
    }
    if (m.repeat_ends) dots(a.x - thick - 0.95 * space);
    if (m.repeat_ends || m.right == Barline::final) {
        upright(a.x - thick / 2, thick);
        upright(a.x - thick - 0.4 * space, thin);
    } else if (m.right == Barline::double_) {
        upright(a.x - thin / 2, thin);
        upright(a.x - thin / 2 - 0.5 * space, thin);
    } else if (m.right == Barline::dashed) {
        upright(a.x, thin, {0.5 * space, 0.5 * space});
    } else if (m.right == Barline::regular) {
        upright(a.x - thin / 2, thin);
    }
}

std::vector<Engraver::Set> Engraver::set_events(System const& system) const {
    std::vector<Set> sets;
    for (auto const& a : system.atoms) {
        if (a.kind != Atom::Kind::event) continue;
        auto const& e = staff_->measures[a.measure].events[a.event];
        Set set{.atom = &a, .event = &e, .scale = e.grace ? grace_scale : 1};
        for (auto const& head : e.heads) set.steps.push_back(staff_step(head.written, a.clef));
        ranges::sort(set.steps);
        set.has_stem = !e.rest() && e.value >= NoteValue::half && e.stem != StemDirection::none;
        if (set.has_stem) {
            int const low = set.steps.front(), high = set.steps.back();
            set.stem.up = e.stem == StemDirection::up ||
                          (e.stem == StemDirection::automatic && (e.grace || middle - low > high - middle));
            double const length = 3.4 * space * set.scale;
            double const half = head_half * set.scale - stem_width / 2;
            set.stem.x = a.x + (set.stem.up ? half : -half);
            set.stem.from = y_of_step(set.stem.up ? low : high);
            set.stem.to = set.stem.up ? y_of_step(high) - length : y_of_step(low) + length;
            if (!e.grace) // a stem of far ledger lines reaches the middle line
                set.stem.to = set.stem.up ? std::min(set.stem.to, y_of_step(middle))
                                          : std::max(set.stem.to, y_of_step(middle));
        }
        sets.push_back(std::move(set));
    }
    return sets;
}

void Engraver::heads(Set const& set, Canvas& canvas) const {
    auto const& e = *set.event;
    auto const& symbol = head_symbol(e.value);
    double const width = width_of(symbol, set.scale), x = set.atom->x;
    for (int step = -2; step >= set.steps.front(); step -= 2)
        canvas.line({x - width / 2 - 0.35 * space, y_of_step(step)},
                    {x + width / 2 + 0.35 * space, y_of_step(step)},
                    {.width = 0.16 * space, .color = ink::black});
    for (int step = 10; step <= set.steps.back(); step += 2)
        canvas.line({x - width / 2 - 0.35 * space, y_of_step(step)},
                    {x + width / 2 + 0.35 * space, y_of_step(step)},
                    {.width = 0.16 * space, .color = ink::black});
    int previous = -100;
    bool shifted = false;
    for (int const step : set.steps) { // a second stands on the other side of the stem
        shifted = step - previous == 1 && !shifted;
        previous = step;
        double const aside = shifted ? (set.has_stem && !set.stem.up ? -width : width) : 0;
        put(canvas, symbol, x - width / 2 + aside, y_of_step(step), set.scale);
        double const dot_y = y_of_step(step % 2 == 0 ? step + 1 : step);
        for (int d = 0; d < e.dots; ++d)
            canvas.fill(Path().circle({x + width / 2 + (0.6 + 0.65 * d) * space, dot_y}, 0.2 * space),
                        ink::black);
    }
    for (auto const& head : e.heads) {
        if (!head.accidental) continue;
        auto const& sign = symbol_of(*head.accidental);
        put(canvas, sign, x - width / 2 - 0.28 * space - width_of(sign, set.scale),
            y_of_step(staff_step(head.written, set.atom->clef)), set.scale);
    }
    if (!set.has_stem) return;
    canvas.line({set.stem.x, set.stem.from}, {set.stem.x, set.stem.to},
                {.width = stem_width, .color = ink::black});
    flags(set, canvas);
}

void Engraver::flags(Set const& set, Canvas& canvas) const {
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

void Engraver::rest(Set const& set, Canvas& canvas) const {
    auto const& e = *set.event;
    double const x = set.atom->x;
    double right = x + 0.5 * space;
    auto const glyph = [&](char const* utf8, double left, double width) {
        double const size = em * set.scale;
        canvas.text({x - (left + width / 2) / 1000 * size, 4 * space}, utf8, music(size));
        right = x + width / 2000 * size;
    };
    if (e.measure_rest || e.value <= NoteValue::whole) {
        canvas.fill(Box{x - 0.6 * space, space, 1.2 * space, 0.5 * space}, ink::black);
    } else {
        switch (e.value) {
        case NoteValue::half:
            canvas.fill(Box{x - 0.6 * space, 1.5 * space, 1.2 * space, 0.5 * space}, ink::black);
            break;
        case NoteValue::quarter:
            glyph("\U0001D13D", 51, 256);
            break;
        case NoteValue::eighth:
            glyph("\U0001D13E", 50, 262);
            break;
        case NoteValue::n16th:
            glyph("\U0001D13F", 50, 330);
            break;
        case NoteValue::n32nd:
            glyph("\U0001D140", 50, 401);
            break;
        default:
            glyph("\U0001D141", 50, 471);
            break;
        }
    }
    if (e.measure_rest) return;
    for (int d = 0; d < e.dots; ++d)
        canvas.fill(Path().circle({right + (0.5 + 0.65 * d) * space, 1.5 * space}, 0.2 * space), ink::black);
}

void Engraver::articulations(Set const& set, Canvas& canvas) const {
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
