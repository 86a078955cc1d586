// SPDX-License-Identifier: MIT
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_plans.hpp"

#include "chart/cairo/cairo_canvas.hpp"
#include "chart/charts/charts.hpp"

#include <fmt/format.h>

#include <fstream>
#include <system_error>

namespace vowelway::chart {
namespace {

namespace fs = std::filesystem;

/// Written beside its place and renamed: never half a file.
void save(fs::path const& destination, std::string const& bytes) {
    auto const fail = [&](std::string const& reason) {
        throw InputError("cannot write the chart: " + reason,
                         "choose a folder that exists and can be written to",
                         {.file = destination.string(), .musical = {}});
    };
    fs::path part = destination;
    part += ".part";
    {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        if (!out) fail("the file could not be opened");
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        out.close();
        if (!out) {
            std::error_code ignored;
            fs::remove(part, ignored);
            fail("only part of it could be written");
        }
    }
    std::error_code error;
    fs::rename(part, destination, error);
    if (error) {
        std::error_code ignored;
        fs::remove(part, ignored);
        fail(error.message());
    }
}

fs::path numbered(fs::path const& destination, std::size_t page) {
    return destination.parent_path() /
           fmt::format("{}-{}{}", destination.stem().string(), page, destination.extension().string());
}

Caption caption(plan::Plan const& plan) {
    auto const& title = plan.passage.title;
    return {.title = title.empty() ? fmt::format("Vowel plan, {}", plan.range.str()) : title,
            .description = fmt::format("Vowel plan for {} ({}), technique {}", plan.singer.name,
                                       to_string(plan.singer.voice), plan.technique)};
}

Caption caption(plan::Comparison const& comparison) {
    std::string names;
    for (auto const& singer : comparison.singers) names += (names.empty() ? "" : ", ") + singer.name;
    return {.title = "Voices compared", .description = "Turning points and meetings by vowel: " + names};
}

Caption caption(plan::NoteExplanation const& e) {
    return {.title = fmt::format("{}{}bar {}, beat {:g}", e.title, e.title.empty() ? "" : ": ",
                                 e.note.measure, e.note.beat),
            .description = fmt::format("One note explained for {} ({}), technique {}: {}", e.singer.name,
                                       to_string(e.singer.voice), e.technique, e.decision.why)};
}

Caption caption(ProbeMap const& p) {
    std::string vowels;
    for (auto const& v : p.vowels) vowels += (vowels.empty() ? "/" : " /") + v.vowel.ipa() + "/";
    return {.title = fmt::format("{}: {}", p.checks.empty() ? "Vowels measured" : "Vowels checked",
                                 p.reference.name),
            .description = fmt::format("Probes of {} on a map of fR1 and fR2", vowels)};
}

Caption caption(plan::PlansCompared const& c) {
    auto const& title = c.plans[0].passage.title;
    return {.title = fmt::format("{}: {} and {}", title.empty() ? "Two plans" : title, c.plans[0].singer.name,
                                 c.plans[1].singer.name),
            .description = fmt::format("Where the vowel plans of two singers differ, technique {}",
                                       c.plans[0].technique)};
}

/// The paper in the points of the layout.
Size page_of(ChartOptions const& options) {
    auto const paper = size_of(options.paper);
    return {paper.width / options.theme.size, paper.height / options.theme.size};
}

Pitch pitch_of_map(plan::Plan const& plan, ChartOptions const& options) {
    auto const& tuning = plan.passage.tuning;
    if (options.map_pitch) return tuning.pitch(*options.map_pitch);
    return plan.passage.notes.empty() ? tuning.pitch(plan.range.high) : compass(plan.passage).second;
}

/// Lays out with the real fonts and writes in the form the name asks for.
template <class Content>
std::vector<fs::path> write(Content const& content, ChartOptions const& options,
                            fs::path const& destination) {
    auto const form = destination.extension();
    if (form != ".pdf" && form != ".svg" && form != ".png")
        throw InputError(fmt::format("a chart cannot be written as \"{}\"", form.string()),
                         "name the file .pdf, .svg or .png", {.file = destination.string(), .musical = {}});
    auto const theme = options.grey ? options.theme.grey() : options.theme;
    PangoText const text(theme);
    auto const pages = lay_out(content, options, text);
    if (form == ".pdf") {
        save(destination, as_pdf(pages, text, theme, caption(content)));
        return {destination};
    }
    std::vector<fs::path> written;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        auto const name = pages.size() == 1 ? destination : numbered(destination, i + 1);
        save(name, form == ".svg" ? as_svg(pages[i], text, theme, caption(content))
                                  : as_png(pages[i], text, theme, options.png_dpi));
        written.push_back(name);
    }
    return written;
}

} // namespace

std::string_view to_string(Kind kind) {
    switch (kind) {
    case Kind::automatic:
        return "automatic";
    case Kind::passage_sheet:
        return "passage sheet";
    case Kind::pitch_by_vowel:
        return "pitch-by-vowel plan";
    case Kind::resonance_map:
        return "resonance map";
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

std::vector<Page> lay_out(plan::Plan const& plan, ChartOptions const& options, TextMeasurer const& measurer) {
    if (plan.vowels.empty())
        throw InputError("the plan has no vowels to chart",
                         "give a profile with vowels, or a passage with words");
    auto const size = page_of(options);
    bool const has_notes = !plan.passage.notes.empty();
    if (options.kind == Kind::passage_sheet && !has_notes)
        throw InputError("a passage sheet needs notes, and this plan is of a range only",
                         "give a score, or ask for the pitch-by-vowel plan");

    switch (options.kind) {
    case Kind::passage_sheet:
        return passage_sheet(plan, size, measurer);
    case Kind::pitch_by_vowel:
        return pitch_by_vowel(plan, size, measurer);
    case Kind::resonance_map:
        return resonance_map(plan, pitch_of_map(plan, options), size, measurer);
    case Kind::automatic:
        break;
    }
    std::vector<Page> pages;
    if (has_notes) pages = passage_sheet(plan, size, measurer);
    for (auto& page : pitch_by_vowel(plan, size, measurer)) pages.push_back(std::move(page));
    return pages;
}

std::vector<Page> lay_out(plan::Comparison const& comparison, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    if (comparison.rows.empty())
        throw InputError("the singers have no vowel in common to compare", "give profiles with vowels");
    return voices_compared(comparison, page_of(options), measurer);
}

std::vector<fs::path> write_chart(plan::Plan const& plan, ChartOptions const& options,
                                  fs::path const& destination) {
    return write(plan, options, destination);
}

std::vector<fs::path> write_chart(plan::Comparison const& comparison, ChartOptions const& options,
                                  fs::path const& destination) {
    return write(comparison, options, destination);
}

std::vector<Page> lay_out(plan::PlansCompared const& compared, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    return plans_compared(compared, page_of(options), measurer);
}

std::vector<fs::path> write_chart(plan::PlansCompared const& compared, ChartOptions const& options,
                                  fs::path const& destination) {
    return write(compared, options, destination);
}

std::vector<Page> lay_out(ProbeMap const& probes, ChartOptions const& options, TextMeasurer const& measurer) {
    if (probes.vowels.empty())
        throw InputError("no take gives a result to chart", "see the reason for each, and record again");
    return probe_map(probes, page_of(options), measurer);
}

std::vector<fs::path> write_chart(ProbeMap const& probes, ChartOptions const& options,
                                  fs::path const& destination) {
    return write(probes, options, destination);
}

std::vector<Page> lay_out(plan::NoteExplanation const& explanation, ChartOptions const& options,
                          TextMeasurer const& measurer) {
    std::vector<Page> pages;
    pages.push_back(note_explained(explanation, page_of(options), measurer));
    return pages;
}

std::vector<fs::path> write_chart(plan::NoteExplanation const& explanation, ChartOptions const& options,
                                  fs::path const& destination) {
    return write(explanation, options, destination);
}

} // namespace vowelway::chart
