// SPDX-License-Identifier: MIT
// The lesson sheet: one page.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/exercise_staff.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::chart {
namespace {

constexpr double lesson_line = 12;

std::string with_again(plan::LessonPhrase const& phrase) {
    std::string out = phrase.bars;
    for (auto const& bars : phrase.again) out += ", " + worded("again in {0}", bars);
    return out;
}

double draw_phrases(Canvas& canvas, plan::Lesson const& lesson, double y, double width) {
    y = draw_heading(canvas, 0, y, width, worded("Phrases, the hardest first"));
    if (lesson.phrases.empty())
        return paragraph(canvas, 0, y, width, worded("No phrase asks for a change: sing as written."),
                         plain(type::body));
    double const words_x = 18;
    for (std::size_t i = 0; i < lesson.phrases.size(); ++i) {
        auto const& phrase = lesson.phrases[i];
        auto const& m = canvas.measurer();
        y += lesson_line + 1;
        canvas.write({0, y}, fmt::format("{}", i + 1), bold(type::body, ink::modify));
        auto const bars = fitted(m, with_again(phrase), plain(type::label, ink::soft), width * 0.55);
        double const room = width - words_x - m.measure(bars, plain(type::label)).advance - 8;
        canvas.write({words_x, y}, fitted(m, phrase.words, bold(type::body), room), bold(type::body));
        canvas.write({width, y}, bars, plain(type::label, ink::soft), Align::right);
        y = paragraph(canvas, words_x, y, width - words_x, phrase.why, plain(type::label));
    }
    return y + 2;
}

std::string order_of(plan::Lesson const& lesson) {
    auto const first = lesson.exercises.empty() ? worded("Speak the words") : worded("The exercises");
    if (lesson.order.empty()) return worded("{0}, then the whole song, softly first.", first);
    std::string listed;
    for (std::size_t i = 0; i < lesson.order.size(); ++i) {
        auto const number = std::to_string(lesson.order[i] + 1);
        listed = i == 0                         ? number
                 : i + 1 == lesson.order.size() ? worded("{0} and {1}", listed, number)
                                                : listed + ", " + number;
    }
    return lesson.order.size() == 1
               ? worded("{0}, then phrase {1}; then the whole song. Softly first, and never tired.", first,
                        listed)
               : worded(
                     "{0}, then the phrases {1}, the easiest first; then the whole song. Softly first, and "
                     "never tired.",
                     first, listed);
}

double draw_exercises(Canvas& canvas, plan::Lesson const& lesson, double y, double width) {
    if (lesson.exercises.empty()) return y;
    y = draw_heading(canvas, 0, y, width, worded("Exercises, for this voice")) + 4;
    double const staff_width = std::min(width, 0.56 * width + 40), text_x = staff_width + 12;
    bool const beside = width >= 400;
    char letter = 'a';
    for (auto const& exercise : lesson.exercises) {
        auto const staff =
            exercise_staff(exercise, lesson.plan, (beside ? staff_width : width) - 16, canvas.measurer());
        double const bottom = staff.bottom(-1e6, 1e6, 0);
        canvas.write({0, y + 12}, std::string(1, letter++), bold(type::body, ink::modify));
        staff.replay(canvas, {16, y});
        double const x = beside ? text_x : 16, text_width = width - x;
        double text =
            paragraph(canvas, x, beside ? y - 4 : y + bottom, text_width, exercise.how, plain(type::body));
        text = paragraph(canvas, x, text + 1, text_width, worded("Listen: {0}", exercise.listen),
                         slanted(type::body));
        y = std::max(y + bottom, text + 4) + 8;
    }
    return y;
}

/// All of the page; returns how far down it went.
double draw_sheet(Canvas& canvas, plan::Lesson const& lesson, Head const& head, double width) {
    double y = draw_title(canvas, head, width) - 8;
    for (auto const& line : lesson.in_brief) y = paragraph(canvas, 0, y, width, line, plain(type::body));
    for (auto const& caution : lesson.cautions)
        y = paragraph(canvas, 0, y, width, caution, bold(type::label));
    y = draw_phrases(canvas, lesson, y + 8, width);
    y = draw_heading(canvas, 0, y + 6, width, worded("Order of practice"));
    y = paragraph(canvas, 0, y, width, order_of(lesson), plain(type::body));
    return draw_exercises(canvas, lesson, y + 10, width);
}

} // namespace

Page lesson_sheet(plan::Lesson const& lesson, Size paper, TextMeasurer const& measurer) {
    auto const head = head_of(lesson.plan, "");
    return on_one_page(head, worded("lesson sheet"), paper, measurer,
                       [&](Canvas& canvas, double width) { return draw_sheet(canvas, lesson, head, width); });
}

} // namespace vowelway::chart
