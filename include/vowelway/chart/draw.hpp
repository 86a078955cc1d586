// SPDX-License-Identifier: MIT
// Charts of a plan, on paper. Views only: every value they show stands in the plan.
// Threads: any number of charts at once, each laid out with a measurer of its own thread.
#pragma once

#include "vowelway/chart/document.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/core/theme.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/plan.hpp"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::chart {

enum class Kind {
    automatic,      ///< pencil view, passage sheet and pitch-by-vowel plan; of a range only the last
    pencil,         ///< the vocal line at a size for the stand, over it only what a teacher would pencil
    passage_sheet,  ///< the vocal line, under it harmonics against resonances, and what to do
    pitch_by_vowel, ///< each vowel's zones over the range, and how much of the passage lies where
    resonance_map,  ///< the plane of fR1 and fR2, with the harmonics of one pitch
};
std::string_view to_string(Kind kind);

enum class Paper { a4, letter, tablet };
std::string_view to_string(Paper paper);
std::optional<Paper> parse_paper(std::string_view name);
/// Portrait; tablet is 4:3 with the type as large as on paper.
Size size_of(Paper paper);

struct ChartOptions {
    Paper paper = Paper::a4;
    std::optional<Size> page = {}; ///< instead of a paper, in points: a window of a screen
    Kind kind = Kind::automatic;
    Theme theme = {};     ///< a larger size is a smaller page to lay out, drawn larger
    bool grey = false;    ///< no colour at all; nothing is lost
    bool numbers = false; ///< on the passage sheet what harmonics and resonances do, beside what to do
    double png_dpi = 150;
    std::optional<SpelledPitch> map_pitch =
        {}; ///< of the resonance map; default: the highest note, or the range's top
};

/// The fonts of a theme, by Pango. Throws InputError naming the missing font, the place that asks for it and,
/// of our own, the Debian package that brings it. Threads  the measurer stays on the thread that asked for
/// it; each thread loads fonts of its own, which end with it.
std::unique_ptr<TextMeasurer> chart_fonts(Theme const& theme = {});

/// The pages of a chart, laid out with any measurer, in the theme's own points: paper / theme.size. Throws
/// InputError when the plan has nothing to draw: a pencil view or a passage sheet of a
/// range, or no vowels at all.
std::vector<Page> lay_out(plan::Plan const& plan, ChartOptions const& options, TextMeasurer const& measurer);

/// Each page as SVG, laid out and set with any measurer. Where it knows the letters' outlines the words are
/// drawn by them, otherwise they are text in the theme's fonts. Throws as lay_out does.
std::vector<Document> draw_svg(plan::Plan const& plan, ChartOptions const& options,
                               TextMeasurer const& measurer);

enum class Form { pdf, svg, png };
/// The form of a file by its ending, ".pdf".
std::optional<Form> parse_form(std::string_view ending);

/// The chart in the theme's fonts: a PDF with all pages, or a document a page. The bytes depend on the plan,
/// the options and the fonts alone. No file is touched. Throws InputError for a missing font and as lay_out.
std::vector<Document> draw(plan::Plan const& plan, ChartOptions const& options, Form form);

/// Voices compared: turning points and meetings by vowel and voice. The kind in the options is not looked at.
std::vector<Page> lay_out(plan::Comparison const& comparison, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::Comparison const& comparison, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::Comparison const& comparison, ChartOptions const& options, Form form);

/// One note explained, on one page: its spectrum, the resonances, the tract, and what the shapes cost. The
/// kind is not looked at.
std::vector<Page> lay_out(plan::NoteExplanation const& explanation, ChartOptions const& options,
                          TextMeasurer const& measurer);
std::vector<Document> draw_svg(plan::NoteExplanation const& explanation, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(plan::NoteExplanation const& explanation, ChartOptions const& options, Form form);

} // namespace vowelway::chart
