// SPDX-License-Identifier: MIT
// The sheet of a plan for a window, or its pencil view: one page, as wide as asked for and as long as it
// gets, without the margins of a paper, in bands; where each note stands on it, and which notes to watch.
#include "page/asks.hpp"
#include "page/bands.hpp"
#include "page/text_measurer.hpp"
#include "page/words_sung.hpp"

#include "chart/canvas/style.hpp"
#include "chart/canvas/svg_canvas.hpp"
#include "chart/caption.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/watch.hpp"
#include "vowelway/report/plan_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::page {

namespace {

constexpr double endless = 100000; // longer than any song's sheet, in points
constexpr double rim = 6;          // what is left of the margins

/// The page without its margins and without the foot, which stands at the end of an endless paper.
chart::Page trimmed(chart::Page const& page, chart::TextMeasurer const& measurer) {
    double left = page.size.width, top = page.size.height, bottom = 0;
    for (auto const& mark : page.drawing.marks()) {
        if (mark.box.bottom() >= page.size.height - 2 * chart::margin_bottom) continue;
        left = std::min(left, mark.box.left);
        top = std::min(top, mark.box.top);
        bottom = std::max(bottom, mark.box.bottom());
    }
    left = std::max(0.0, left - rim), top = std::max(0.0, top - rim);
    chart::Page out{{page.size.width - 2 * left, bottom - top + rim}, chart::Drawing(measurer), page.notes};
    page.drawing.replay(out.drawing, {-left, -top});
    for (auto& note : out.notes)
        note.box = {note.box.left - left, note.box.top - top, note.box.width, note.box.height};
    return out;
}

Json bands_told(chart::Page const& page, chart::ChartOptions const& options, chart::Caption const& caption) {
    auto const theme = options.grey ? options.theme.grey() : options.theme;
    auto out = Json::array();
    for (auto const& band : bands_of(page)) {
        chart::Page const part{{page.size.width, band.height}, band.drawing};
        out.push_back({{"top", band.top},
                       {"height", band.height},
                       {"svg", as_svg({&part, 1}, page.drawing.measurer(), theme, caption).front().bytes}});
    }
    return out;
}

Json spots_of(chart::Page const& page) {
    auto out = Json::array();
    for (auto const& [note, box, begins] : page.notes)
        out.push_back({{"note", note},
                       {"begins", begins},
                       {"x", box.left},
                       {"y", box.top},
                       {"width", box.width},
                       {"height", box.height}});
    return out;
}

/// What a list says of a note, in words alone.
Json words_of(plan::Plan const& plan, std::size_t index) {
    auto const& sung = plan.passage.notes[index];
    auto const& planned = plan.notes[index];
    Json out{{"note", index},
             {"bar", sung.measure},
             {"beat", fmt::format("{:g}", std::round(sung.beat * 100) / 100)},
             {"pitch", sung.spelled.str()},
             {"syllable", sung.text()}};
    if (!planned.decision || !planned.vowel) return out;
    auto const& d = *planned.decision;
    out["vowel"] = plan.vowels[*planned.vowel].resonances.vowel.ipa();
    out["advice"] = to_string(d.advice);
    out["brief"] = d.brief;
    out["why"] = d.why;
    out["zone"] = to_string(d.zone.zone);
    out["happens"] = chart::happening(d.zone.zone);
    out["heard"] = d.heard.vowel.quality().ipa();
    out["heard_kept"] = d.heard_kept.vowel.quality().ipa();
    out["shade"] = d.target.shade.quality().ipa();
    out["sure"] = chart::is_sure(d);
    return out;
}

} // namespace

std::string sheet_drawn(Json const& request, std::string_view bytes) {
    auto const& plan = planned(request, bytes);
    auto options = chart_options(request);
    if (options.kind != chart::Kind::pencil) options.kind = chart::Kind::passage_sheet;
    options.page = chart::Size{request.at("width").get<double>() + 2 * (chart::margin_side - rim), endless};
    TextMeasurer const measurer(options.theme);
    auto const page = trimmed(lay_out(plan, options, measurer).front(), measurer);
    Json out{{"bands", bands_told(page, options, chart::caption(plan))},
             {"width", page.size.width},
             {"height", page.size.height},
             {"spots", spots_of(page)},
             {"notes", Json::array()},
             {"watched", Json::array()}};
    for (std::size_t i = 0; i < plan.passage.notes.size(); ++i) out["notes"].push_back(words_of(plan, i));
    for (auto const& word : words_sung(plan.passage))
        for (auto const note : word.notes) out["notes"][note]["word"] = word.text;
    int told = 0; // equal places have one number: the first stands in the list
    for (auto const& [note, number] : chart::numbers_of(plan::pencil_of(plan)))
        if (number > told) out["watched"].push_back({{"note", note}, {"number", told = number}});
    out["title"] = plan.passage.title;
    out["composer"] = plan.passage.composer;
    out["singer"] = plan.singer.name;
    out["average"] = plan.singer.average;
    out["remarks"] = Json::array();
    for (auto const& remark : plan.remarks)
        out["remarks"].push_back({{"kind", to_string(remark.kind)}, {"text", remark.text}});
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
