// SPDX-License-Identifier: MIT
#include "chart/charts/note_explained/panels.hpp"

#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <string>

namespace vowelway::chart {
namespace {

/// Syllable, vowel, pitch and what to do, in one line.
void draw_line(Canvas& canvas, plan::NoteExplanation const& e, double y, double width) {
    auto const& d = e.decision;
    auto const& m = canvas.measurer();
    double x = 0;
    auto const say = [&](std::string const& text, TextStyle const& style, double gap) {
        auto const shown = fitted(m, text, style, width - x);
        if (shown.empty()) return;
        canvas.write({x, y}, shown, style);
        x += m.measure(shown, style).advance + gap;
    };
    if (!e.syllable.empty()) say(e.syllable, bold(15), 8);
    say(worded("{0} on {1}", slashed(e.vowel.vowel), e.note.spelled.str()), plain(13), 8);
    say(worded("fo {0} Hz, {1} s", fmt::format("{:.0f}", in_hertz(e.note.pitch.frequency())),
               fmt::format("{:.1f}", in_seconds(e.note.length))),
        plain(type::body, ink::soft), 14);
    advice_sign(canvas, {x + 4.5, y - 4}, 9, d.advice);
    x += 13;
    say(e.changed ? worded("modify toward {0}", d.target.shade.quality().ipa())
                  : std::string(reworded(to_string(d.advice))),
        bold(13, color_of(d.advice)), 10);
}

std::string heard_of(plan::NoteExplanation const& e) {
    auto const& d = e.decision;
    auto const kept = d.heard_kept.vowel.quality().ipa();
    if (!e.changed) return worded("Heard as {0}.", kept);
    auto const changed = d.heard.vowel.quality().ipa();
    if (changed == kept) return worded("Heard as {0} either way.", kept);
    return worded("Heard as {0} if kept, as {1} if changed.", kept, changed);
}

std::string gestures_of(plan::Decision const& d) {
    std::string gestures;
    for (auto const& g : d.gestures) gestures += (gestures.empty() ? "" : ", ") + g.words;
    return gestures;
}

} // namespace

double draw_verdict(Canvas& canvas, plan::NoteExplanation const& e, double y, double width) {
    auto const& m = canvas.measurer();
    y += 13;
    draw_line(canvas, e, y, width);
    y += 4;
    auto const lines = [&](std::string const& text, TextStyle const& style) {
        for (auto const& line : wrapped(m, text, style, width))
            canvas.write({0, y += 12}, fitted(m, line, style, width), style);
    };
    if (!e.decision.gestures.empty())
        lines(worded("What to do: {0}.", gestures_of(e.decision)), plain(type::body));
    lines(worded("Why: {0}.", e.decision.why), plain(type::body));
    lines(heard_of(e), plain(type::body));
    if (e.draws > 0)
        lines(worded("Of {0} random draws of the resonances: hold {1} %, migrate {2} %, modify {3} %.",
                     e.draws, fmt::format("{:.0f}", 100 * e.shares.hold),
                     fmt::format("{:.0f}", 100 * e.shares.migrate),
                     fmt::format("{:.0f}", 100 * e.shares.modify)),
              plain(type::body));
    if (e.vowel.estimated)
        lines(worded("Guessed: {0} is not measured: {1}.", slashed(e.vowel.vowel), reworded(e.vowel.origin)),
              plain(type::label, ink::modify));
    if (e.note.vowel && e.note.vowel->origin == VowelOrigin::guessed)
        lines(worded("Guessed: the vowel of this syllable is not certain."), plain(type::label, ink::modify));
    return y + 6;
}

} // namespace vowelway::chart
