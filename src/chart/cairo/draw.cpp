// SPDX-License-Identifier: MIT
// Charts in the theme's own fonts, in every form.
#include "chart/cairo/cairo_canvas.hpp"
#include "chart/canvas/svg_canvas.hpp"

namespace vowelway::chart {
namespace {

template <class Content>
std::vector<Document> drawn(Content const& content, ChartOptions const& options, Form form) {
    auto const theme = options.grey ? options.theme.grey() : options.theme;
    PangoText const text(theme);
    auto const pages = lay_out(content, options, text);
    if (form == Form::svg) return as_svg(pages, text, theme, caption(content));
    if (form == Form::pdf) return {{"", as_pdf(pages, text, theme, caption(content))}};
    std::vector<Document> all;
    for (auto const& page : pages) {
        auto const suffix = pages.size() == 1 ? std::string() : "-" + std::to_string(all.size() + 1);
        all.push_back({suffix, as_png(page, text, theme, options.png_dpi)});
    }
    return all;
}

} // namespace

std::vector<Document> draw(plan::Plan const& plan, ChartOptions const& options, Form form) {
    return drawn(plan, options, form);
}
std::vector<Document> draw(ChoirSheet const& sheet, ChartOptions const& options, Form form) {
    return drawn(sheet, options, form);
}
std::vector<Document> draw(plan::Choir const& choir, ChartOptions const& options, Form form) {
    return drawn(choir, options, form);
}
std::vector<Document> draw(plan::Comparison const& comparison, ChartOptions const& options, Form form) {
    return drawn(comparison, options, form);
}
std::vector<Document> draw(plan::NoteExplanation const& explanation, ChartOptions const& options, Form form) {
    return drawn(explanation, options, form);
}
std::vector<Document> draw(SungText const& text, ChartOptions const& options, Form form) {
    return drawn(text, options, form);
}
std::vector<Document> draw(plan::Lesson const& lesson, ChartOptions const& options, Form form) {
    return drawn(lesson, options, form);
}

std::vector<Document> draw(analysis::RecordingCard const& card, ChartOptions const& options, Form form) {
    return drawn(card, options, form);
}

std::vector<Document> draw(SingerSheet const& sheet, ChartOptions const& options, Form form) {
    return drawn(sheet, options, form);
}

std::vector<Document> draw(plan::Overview const& overview, ChartOptions const& options, Form form) {
    return drawn(overview, options, form);
}
std::vector<Document> draw(StudioPage const& page, ChartOptions const& options, Form form) {
    return drawn(page, options, form);
}
std::vector<Document> draw(std::vector<plan::KeysPlan> const& singers, ChartOptions const& options,
                           Form form) {
    return drawn(singers, options, form);
}
std::vector<Document> draw(plan::PlansCompared const& compared, ChartOptions const& options, Form form) {
    return drawn(compared, options, form);
}
std::vector<Document> draw(ProbeMap const& probes, ChartOptions const& options, Form form) {
    return drawn(probes, options, form);
}

} // namespace vowelway::chart
