// SPDX-License-Identifier: MIT
#include "chart/engraving/signs.hpp"

#include "chart/engraving/music_symbols.hpp"
#include "chart/engraving/set_event.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <string>
#include <utility>
#include <vector>

namespace vowelway::chart {
namespace {

constexpr double line_width = 0.11 * space;

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

/// The small 8 or 15 over or under a clef.
void octave_mark(Atom const& a, double size, Canvas& canvas) {
    bool const below = a.clef.octave_change < 0;
    double const seat = a.clef.sign == 'C' ? (3 - a.clef.line) * space : 0; // a C clef moves with its line
    double const y = seat + (below ? (a.clef.sign == 'G' ? 6.75 * space : 5.3 * space)
                                   : (a.clef.sign == 'G' ? -1.75 * space : -0.7 * space));
    canvas.write({a.x + 0.35 * size, y}, std::abs(a.clef.octave_change) > 1 ? "15" : "8",
                 slanted(1.75 * space), Align::centre);
}

void draw_clef(Atom const& a, Canvas& canvas) {
    bool const head = a.x < 4 * space;
    double const size = head ? em : 0.8 * em;
    double const bottom = a.clef.sign == 'C'   ? 4 * space - (a.clef.line - 3) * space
                          : a.clef.sign == 'F' ? 4 * space - (a.clef.line - 4) * space
                                               : 4 * space - (a.clef.line - 2) * space;
    char const* glyph = a.clef.sign == 'F' ? "\U0001D122" : a.clef.sign == 'C' ? "\U0001D121" : "\U0001D11E";
    canvas.text({a.x, bottom}, glyph, music(size));
    if (a.clef.octave_change != 0) octave_mark(a, size, canvas);
}

void draw_key(Atom const& a, Canvas& canvas) {
    bool const cancel = a.key.fifths == 0;
    int const fifths = cancel ? a.key_before.fifths : a.key.fifths;
    Symbol const& s = cancel ? symbol::natural : fifths > 0 ? symbol::sharp : symbol::flat;
    double x = a.x;
    for (int const step : key_steps(fifths, a.clef)) {
        put(canvas, s, x + (1.05 * space - width_of(s, 0.88)) / 2, y_of_step(step),
            s.utf8 == symbol::sharp.utf8 ? 0.88 : 1);
        x += 1.05 * space;
    }
}

void draw_time(Atom const& a, TimeSignature const& signature, Canvas& canvas) {
    using Sign = TimeSignature::Sign;
    if (signature.sign == Sign::common || signature.sign == Sign::cut) {
        put(canvas, signature.sign == Sign::common ? symbol::common_time : symbol::cut_time, a.x, 2 * space);
        return;
    }
    auto const lower = std::to_string(signature.beat_type);
    auto const style = bold(3.02 * space); // lining figures two spaces tall
    double const width = std::max(canvas.measurer().measure(signature.beats, style).advance,
                                  canvas.measurer().measure(lower, style).advance);
    canvas.write({a.x + width / 2, 1.97 * space}, signature.beats, style, Align::centre);
    canvas.write({a.x + width / 2, 3.97 * space}, lower, style, Align::centre);
}

void draw_multi_rest(Atom const& a, Canvas& canvas) {
    double const from = a.x, to = a.x + a.right - 1.2 * space;
    if (a.bars == 1) {
        canvas.fill(Box{(from + to) / 2 - 0.6 * space, space, 1.2 * space, 0.5 * space}, ink::black);
        return;
    }
    canvas.fill(Box{from, 1.62 * space, to - from, 0.76 * space}, ink::black);
    for (double const x : {from, to})
        canvas.line({x, space}, {x, 3 * space}, {.width = 0.18 * space, .color = ink::black});
    canvas.write({(from + to) / 2, -0.9 * space}, std::to_string(a.bars), bold(2.4 * space), Align::centre);
}

void draw_barline(Atom const& a, StaffMeasure const& m, Canvas& canvas) {
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

} // namespace

void draw_staff_lines(System const& system, Canvas& canvas) {
    for (int i = 0; i < 5; ++i)
        canvas.line({0, i * space}, {system.width, i * space}, {.width = line_width, .color = ink::black});
}

void draw_signs(System const& system, Staff const& staff, Canvas& canvas) {
    for (auto const& a : system.atoms) {
        auto const& measure = staff.measures[a.measure];
        switch (a.kind) {
        case Atom::Kind::clef:
            draw_clef(a, canvas);
            break;
        case Atom::Kind::key:
            draw_key(a, canvas);
            break;
        case Atom::Kind::time:
            draw_time(a, *measure.time, canvas);
            break;
        case Atom::Kind::repeat_begin:
        case Atom::Kind::barline:
            draw_barline(a, measure, canvas);
            break;
        case Atom::Kind::multi_rest:
            draw_multi_rest(a, canvas);
            break;
        case Atom::Kind::event:
            break;
        }
    }
}

} // namespace vowelway::chart
