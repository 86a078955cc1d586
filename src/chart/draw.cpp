// SPDX-License-Identifier: MIT
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_keys.hpp"
#include "vowelway/chart/draw_lesson.hpp"
#include "vowelway/chart/draw_overview.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/chart/draw_singer.hpp"
#include "vowelway/chart/draw_studio.hpp"
#include "vowelway/chart/draw_text.hpp"
#include "vowelway/core/error.hpp"

#include "chart/charts/charts.hpp"
#include "chart/charts/instruction_card.hpp"
#include "chart/drawn_svg.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <iterator>

namespace vowelway::chart {
namespace {

Pitch pitch_of_map(plan::Plan const& plan, ChartOptions const& options) {
    auto const& tuning = plan.passage.tuning;
    if (options.map_pitch) return tuning.pitch(*options.map_pitch);
    return plan.passage.notes.empty() ? tuning.pitch(plan.range.high) : compass(plan.passage).second;
}

std::vector<Page> alone(Page page) {
    std::vector<Page> pages;
    pages.push_back(std::move(page));
    return pages;
}

} // namespace

std::string_view to_string(Kind kind) {
    switch (kind) {
    case Kind::automatic:
        return "automatic";
    case Kind::pencil:
        return to_word("pencil view");
    case Kind::passage_sheet:
        return to_word("passage sheet");
    case Kind::pitch_by_vowel:
        return to_word("pitch-by-vowel plan");
    case Kind::resonance_map:
        return to_word("resonance map");
    }
    return "";
}

std::string_view to_string(Paper paper) {
    switch (paper) {
    case Paper::a4:
        return "a4";
    case Paper::letter:
        return "letter";
    case Paper::tablet:
        return "tablet";
    }
    return "";
}

std::optional<Paper> parse_paper(std::string_view name) {
    for (auto const paper : {Paper::a4, Paper::letter, Paper::tablet})
        if (name == to_string(paper)) return paper;
    return std::nullopt;
}

Size size_of(Paper paper) {
    switch (paper) {
    case Paper::a4:
        return {595.28, 841.89};
    case Paper::letter:
        return {612, 792};
    case Paper::tablet:
        return {540, 720};
    }
    return {};
}

std::optional<Form> parse_form(std::string_view ending) {
    if (ending == ".pdf") return Form::pdf;
    if (ending == ".svg") return Form::svg;
    if (ending == ".png") return Form::png;
    return std::nullopt;
}

std::vector<Page> lay_out(plan::Plan const& plan, ChartOptions const& options, TextMeasurer const& measurer) {
    if (plan.vowels.empty())
        throw InputError(worded("the plan has no vowels to chart"),
                         worded("give a profile with vowels, or a passage with words"));
    auto const size = page_of(options);
    bool const has_notes = !plan.passage.notes.empty();
    if ((options.kind == Kind::passage_sheet || options.kind == Kind::pencil) && !has_notes)
        throw InputError(worded("the {0} needs notes, and this plan is of a range only",
                                reworded(to_string(options.kind))),
                         worded("give a score, or ask for the pitch-by-vowel plan"));

    switch (options.kind) {
    case Kind::pencil:
        return pencil_view(plan, size, measurer);
    case Kind::passage_sheet:
        return passage_sheet(plan, size, measurer, options.numbers);
    case Kind::pitch_by_vowel:
        return pitch_by_vowel(plan, size, measurer);
    case Kind::resonance_map:
        return resonance_map(plan, pitch_of_map(plan, options), size, measurer);
    case Kind::automatic:
        break;
    }
    std::vector<Page> pages;
    auto const add = [&pages](std::vector<Page> more) {
        std::move(more.begin(), more.end(), std::back_inserter(pages));
    };
    if (has_notes) {
        add(pencil_view(plan, size, measurer));
        add(passage_sheet(plan, size, measurer, options.numbers));
    }
    add(pitch_by_vowel(plan, size, measurer));
    return pages;
}

std::vector<Page> lay_out(plan::Comparison const& comparison, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    if (comparison.rows.empty())
        throw InputError(worded("the singers have no vowel in common to compare"),
                         worded("give profiles with vowels"));
    return voices_compared(comparison, page_of(options), measurer);
}

std::vector<Document> draw_svg(plan::Plan const& plan, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(plan, options, measurer);
}

std::vector<Document> draw_svg(plan::Comparison const& comparison, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(comparison, options, measurer);
}

std::vector<Page> lay_out(plan::PlansCompared const& compared, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return plans_compared(compared, page_of(options), measurer);
}

std::vector<Document> draw_svg(plan::PlansCompared const& compared, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(compared, options, measurer);
}

std::vector<Page> lay_out(ProbeMap const& probes, ChartOptions const& options, TextMeasurer const& measurer) {
    if (probes.vowels.empty())
        throw InputError(worded("no take gives a result to chart"),
                         worded("see the reason for each, and record again"));
    return probe_map(probes, page_of(options), measurer);
}

std::vector<Document> draw_svg(ProbeMap const& probes, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(probes, options, measurer);
}

std::vector<Page> lay_out(plan::Lesson const& lesson, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return alone(lesson_sheet(lesson, page_of(options), measurer));
}

std::vector<Document> draw_svg(plan::Lesson const& lesson, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(lesson, options, measurer);
}

std::vector<Page> lay_out(SungText const& text, ChartOptions const& options, TextMeasurer const& measurer) {
    if (text.lines.empty())
        throw InputError(worded("the text has no words"),
                         worded("write some words, a file or - for the standard input"));
    return text_sheet(text, page_of(options), measurer);
}

std::vector<Document> draw_svg(SungText const& text, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(text, options, measurer);
}

std::vector<Page> lay_out(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    if (singers.empty())
        throw InputError(worded("there is no singer to find a key for"),
                         worded("give a profile or a voice type"));
    return keys_compared(singers, page_of(options), measurer);
}

std::vector<Document> draw_svg(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(singers, options, measurer);
}

std::vector<Page> lay_out(plan::Overview const& overview, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    if (overview.songs.empty())
        throw InputError(worded("the survey has no plan"),
                         worded("run vowelway survey with songs and singers"));
    return survey_overview(overview, page_of(options), measurer);
}

std::vector<Document> draw_svg(plan::Overview const& overview, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(overview, options, measurer);
}

std::vector<Page> lay_out(StudioPage const& page, ChartOptions const& options, TextMeasurer const& measurer) {
    return alone(studio_page(page, page_of(options), measurer));
}

std::vector<Document> draw_svg(StudioPage const& page, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(page, options, measurer);
}

std::vector<Page> lay_out(analysis::RecordingCard const& card, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return alone(instruction_card(card, page_of(options), measurer));
}

std::vector<Page> lay_out(plan::NoteExplanation const& explanation, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return alone(note_explained(explanation, page_of(options), measurer));
}

std::vector<Document> draw_svg(plan::NoteExplanation const& explanation, ChartOptions const& options,
                               TextMeasurer const& measurer) {
    return svg(explanation, options, measurer);
}

} // namespace vowelway::chart
