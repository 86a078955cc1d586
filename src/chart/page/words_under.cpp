// SPDX-License-Identifier: MIT
#include "chart/page/words_under.hpp"

#include "chart/canvas/style.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <string_view>

namespace vowelway::chart {
namespace {

/// A line of words while it is set, on one baseline.
struct LyricLine {
    Drawing& drawing;
    double y;
    double end, sung_to; ///< of the last syllable; and how far it is carried
    bool hyphen;         ///< it goes on in another syllable
    bool extend = false; ///< it is the last of its word

    /// Fills the way to the next syllable with hyphens or the line of a melisma.
    void finish(double next_from) {
        double const carried_to = std::min(sung_to, next_from - 2);
        if (hyphen && next_from - end > 3.2)
            draw_hyphens(next_from);
        else if (extend && carried_to - end > 5)
            drawing.line({end + 1.5, y}, {carried_to, y}, {.width = 0.5, .color = ink::black});
    }

    /// One, or several over a long way.
    void draw_hyphens(double next_from) {
        int const count = std::clamp(static_cast<int>((next_from - end) / 60), 1, 12);
        for (int i = 0; i < count; ++i) {
            double const at = end + (next_from - end) * (i + 0.5) / count;
            drawing.line({at - 1.7, y - 2.6}, {at + 1.7, y - 2.6}, {.width = 0.75, .color = ink::black});
        }
    }

    void add(Atom const& a) {
        auto const style = plain(type::body);
        double const width = drawing.measurer().measure(a.underlay.lyric, style).advance,
                     from = a.x - width / 2;
        finish(from);
        drawing.text({from, y}, a.underlay.lyric, style);
        end = sung_to = from + width;
        hyphen = a.underlay.hyphen;
        extend = !hyphen;
    }
};

/// Where the rows begin; what hangs below the clef is no matter where no words stand.
double top_of_rows(System const& system, Drawing const& drawing) {
    double first = system.width;
    for (auto const& a : system.atoms)
        if (a.note) first = std::min(first, a.x - std::max(a.under, 8.0));
    return drawing.bottom(first, system.width, 4 * space) + 3;
}

void draw_row(System const& system, Drawing& drawing, std::string_view name, std::string Underlay::*text,
              Ink color, double y) {
    drawing.write({-4, y - 0.5}, name, slanted(type::small, ink::soft), Align::right);
    for (auto const& a : system.atoms)
        drawing.write({a.x, y}, a.underlay.*text, plain(type::body, color), Align::centre);
}

} // namespace

double WordsUnder::draw_lyrics(System const& system, Drawing& drawing, double y) {
    double const start = system.atoms.empty() ? 0 : std::max(0.0, 6 * space);
    LyricLine line{.drawing = drawing, .y = y, .end = start, .sung_to = start, .hyphen = hyphen_open_};
    for (auto const& a : system.atoms) {
        if (a.kind != Atom::Kind::event || !a.note) continue;
        if (a.underlay.lyric.empty())
            line.sung_to = a.x + head_half;
        else
            line.add(a);
    }
    line.finish(system.width);
    hyphen_open_ = line.hyphen;
    return y + 2.5;
}

double WordsUnder::draw(System const& system, Drawing& drawing) {
    bool const lyrics =
        hyphen_open_ || ranges::any_of(system.atoms, [](Atom const& a) { return !a.underlay.lyric.empty(); });
    bool const heard = ranges::any_of(system.atoms, [](Atom const& a) { return !a.underlay.heard.empty(); });
    double y = top_of_rows(system, drawing);
    if (lyrics) y = draw_lyrics(system, drawing, y + 9.5);
    if (under_ == Under::words) return y + 5;
    y += 11;
    draw_row(system, drawing, worded("vowel"), &Underlay::vowel, ink::first, y);
    if (heard) {
        y += 10.5;
        draw_row(system, drawing, worded("heard"), &Underlay::heard, ink::migrate, y);
    }
    return y + 5;
}

} // namespace vowelway::chart
