// SPDX-License-Identifier: MIT
// The signs both charts share: textures of the zones, signs of the advice, their words and legend.
#pragma once

#include "chart/canvas/style.hpp"
#include "vowelway/plan/plan.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

/// open: blank; turning: stippled, the denser the likelier it is turned; close: lightly ruled;
/// meeting: densely ruled; above: grey.
void fill_zone(Canvas& canvas, Box const& box, plan::ZoneReading const& reading);

/// Slanted lines across a box, `gap` apart; they run on from box to box.
void hatch(Canvas& canvas, Box const& box, double gap, Pen const& pen);

/// hold: a bar; migrate: a wave; modify: a solid lozenge. About `size` wide, centred.
void advice_sign(Canvas& canvas, Point centre, double size, plan::Advice advice);
Ink color_of(plan::Advice advice);

/// What happens, in a few words: "2fo passes fR1".
std::string_view happening(plan::Zone zone);
/// What the word means, for a legend.
std::string_view meaning(plan::Advice advice);

/// Whether the measurement does not leave the advice open.
bool is_sure(plan::Decision const& decision);

/// The brief of a decision; with a question mark when the measurement leaves it open.
std::string brief_of(plan::Decision const& decision);

/// Breaks at blanks so that no line is wider than `width`; a longer word stands alone.
std::vector<std::string> wrapped(TextMeasurer const& measurer, std::string_view text, TextStyle const& style,
                                 double width);
/// The text, or as much of it as fits with an ellipsis.
std::string fitted(TextMeasurer const& measurer, std::string_view text, TextStyle const& style, double width);

} // namespace vowelway::chart
