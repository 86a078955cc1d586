// SPDX-License-Identifier: MIT
// The head of a sheet's first page: who, what, how to read it, what to watch.
#pragma once

#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/plan.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::chart {

/// The notes to watch, in the order sung: index of the note -> its number from 1.
std::map<std::size_t, int> notes_to_watch(plan::Plan const& plan, std::size_t at_most);

/// What stands at the head of a chart.
struct Head {
    std::string title, aside; ///< aside: the composer
    std::string who, how;
    std::string source;   ///< how and when the resonances became known
    bool average = false; ///< the source is the notice of an average voice, and is made to stand out
    std::string sentence; ///< what the chart shows
};
Head head_of(plan::Plan const& plan, std::string_view sentence);
/// Who sings, in which technique and how the resonances are known; title and sentence are left to the chart.
Head head_of(Singer const& singer, std::string_view technique);
/// Returns how far down it went.
double draw_title(Canvas& canvas, Head const& head, double width);
/// Table of the notes to watch beside the passive ranges.
double draw_watch(Canvas& canvas, plan::Plan const& plan, std::map<std::size_t, int> const& watched, double y,
                  double width);
/// What the lines, textures and signs mean.
double draw_lane_legend(Canvas& canvas, double y, double width);
/// Caution and page number at the foot; at the head the kind of chart, later the running title.
void draw_margins(Canvas& canvas, Head const& head, std::string_view what, Size paper, std::size_t page,
                  std::size_t pages);

/// What was assumed and guessed on the way, as far as the room down to `bottom` goes; says how many more
/// there are.
void draw_remarks(Canvas& canvas, plan::Plan const& plan, double x, double y, double width, double bottom);

/// A line of type with a rule under it; returns where what follows begins.
double draw_heading(Canvas& canvas, double x, double y, double width, std::string_view text);

/// "1", "4.5"
std::string beat_of(double beat);
/// "/ɑ/"
std::string slashed(Vowel const& vowel);

} // namespace vowelway::chart
