// SPDX-License-Identifier: MIT
#include "report/json_parts.hpp"
#include "vowelway/report/explain_report.hpp"

namespace vowelway::report {

namespace {

using report::hz;
using report::Json;
using report::rounded;

Json levels(std::vector<Decibels> const& values) {
    Json out = Json::array();
    for (auto const& v : values) out.push_back(rounded(v.value, 0.1));
    return out;
}

Json frequencies(std::vector<Frequency> const& values) {
    Json out = Json::array();
    for (auto const& f : values) out.push_back(hz(f));
    return out;
}

Json shape_json(plan::ShapeExplained const& shape) {
    Json out;
    put_resonance(out, 1, shape.r1);
    put_resonance(out, 2, shape.r2);
    out["harmonics_db"] = levels(shape.harmonics);
    out["curve_db"] = levels(shape.curve);
    out["tract"] = Json::array();
    Length end = centimetres(0);
    for (auto const& section : shape.tract) {
        end += section.length;
        out["tract"].push_back({{"to_cm", rounded(in_centimetres(end), 0.01)},
                                {"area_cm2", rounded(in_square_centimetres(section.area), 0.01)}});
    }
    if (!shape.tract_objection.empty()) out["tract_objection"] = shape.tract_objection;
    for (auto const& term : plan::cost_term_names)
        out["cost"][std::string(term.name)] = rounded(shape.cost.*term.value, 0.001);
    out["cost"]["total"] = rounded(shape.cost.total(), 0.001);
    return out;
}

} // namespace

std::string explanation_json(plan::NoteExplanation const& e) {
    Json out{{"vowelway", 1}, {"singer", e.singer.name}, {"voice", to_string(e.singer.voice)}};
    out["average"] = e.singer.average;
    out["technique"] = e.technique;
    out["a4_hz"] = hz(e.tuning.a4);
    out["title"] = e.title;
    out["composer"] = e.composer;
    out["note"] = sung_note_json(e.note, e.tuning);
    put_decision(out["note"], e.decision);
    out["estimated"] = e.vowel.estimated;
    if (e.vowel.estimated) out["origin"] = e.vowel.origin;
    out["draws"] = e.draws;
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify})
        out["shares"][std::string(to_string(advice))] =
            e.draws > 0 ? Json(rounded(e.shares.of(advice), 0.001)) : Json();
    out["harmonics_hz"] = frequencies(e.harmonics);
    out["curve_hz"] = frequencies(e.grid);
    out["kept"] = shape_json(e.kept);
    out["changed"] = e.changed ? shape_json(*e.changed) : Json();
    out["not_chosen"] = e.not_chosen ? shape_json(*e.not_chosen) : Json();
    out["warnings"] = warnings_json(e.remarks);
    return text_of(out);
}

} // namespace vowelway::report
