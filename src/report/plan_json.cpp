// SPDX-License-Identifier: MIT
#include "report/json_parts.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/report/plan_report.hpp"

namespace vowelway::report {

using report::hz;
using report::Json;
using report::rounded;

void put_resonance(Json& out, int k, Resonance const& r) {
    std::string const name = "fR" + std::to_string(k);
    out[name + "_hz"] = hz(r.centre);
    out[name + "_sd_hz"] = hz(r.sd);
    if (r.sd_assumed) out[name + "_sd_assumed"] = true;
}

Json terms_json(plan::CostTerms const& cost) {
    Json out;
    for (auto const& term : plan::cost_term_names)
        out[std::string(term.name)] = rounded(cost.*term.value, 0.001);
    return out;
}

void put_decision(Json& out, plan::Decision const& d) {
    out["zone"] = to_string(d.zone.zone);
    out["p_turned"] = rounded(d.zone.p_turned, 0.001);
    out["p_above"] = rounded(d.zone.p_above, 0.001);
    out["heard"] = d.heard.vowel.ipa();
    out["heard_distance_bark"] = rounded(d.heard.distance.value, 0.01);
    out["heard_if_kept"] = d.heard_kept.vowel.ipa();
    out["advice"] = to_string(d.advice);
    out["certainty"] = rounded(d.certainty, 0.01);
    out["target"] = {{"fR1_hz", hz(d.target.r1.centre)},
                     {"fR2_hz", hz(d.target.r2.centre)},
                     {"ipa", d.target.shade.ipa()}};
    out["gesture"] = Json::array();
    for (auto const& g : d.gestures)
        out["gesture"].push_back(
            {{"part", to_string(g.part)}, {"amount", rounded(g.amount, 0.01)}, {"words", g.words}});
    out["shares"] = {{"hold", rounded(d.shares.hold, 0.01)},
                     {"migrate", rounded(d.shares.migrate, 0.01)},
                     {"modify", rounded(d.shares.modify, 0.01)}};
    out["kept"] = {{"openness_bark", rounded(d.kept.openness.value, 0.01)},
                   {"front_bark", rounded(d.kept.front.value, 0.01)}};
    out["turned"] = d.turned;
    out["turns_here"] = d.turns_here;
    if (d.heard_kept.toward) out["heard_if_kept_toward"] = d.heard_kept.toward->ipa();
    out["cost"] = {{"kept", rounded(d.cost_kept.total(), 0.001)},
                   {"planned", rounded(d.cost_planned.total(), 0.001)},
                   {"terms", terms_json(d.cost_planned)}};
    out["gain_db"] = rounded(d.gain.value, 0.1);
    out["text_cost_bark"] = rounded(d.text_cost.value, 0.01);
    out["brief"] = d.brief;
    out["why"] = d.why;
}

Json sung_note_json(SungNote const& note, Tuning const& tuning) {
    Json out{{"measure", note.measure}, {"beat", rounded(note.beat, 0.001)}};
    out["pitch"] = note.spelled.str();
    out["cents"] = rounded((note.pitch - tuning.pitch(note.spelled)).value, 0.1);
    out["fo_hz"] = hz(note.pitch.frequency());
    out["start_s"] = rounded(in_seconds(note.start), 0.001);
    out["duration_s"] = rounded(in_seconds(note.length), 0.001);
    out["syllable"] = note.text();
    out["melisma"] = note.melisma;
    out["grace"] = note.grace;
    if (note.vowel) {
        out["ipa"] = note.vowel->held.ipa();
        auto const list = [](std::vector<Vowel> const& vowels) {
            Json l = Json::array();
            for (auto const& v : vowels) l.push_back(v.ipa());
            return l;
        };
        if (!note.vowel->before.empty()) out["before"] = list(note.vowel->before);
        if (!note.vowel->after.empty()) out["after"] = list(note.vowel->after);
        out["vowel_from"] = to_string(note.vowel->origin);
    } else {
        out["ipa"] = nullptr;
        if (note.hummed) out["hummed"] = true;
    }
    return out;
}

Json warnings_json(Remarks const& remarks) {
    Json out = Json::array();
    for (auto const& r : remarks) out.push_back({{"kind", to_string(r.kind)}, {"text", r.text}});
    return out;
}

std::string text_of(Json const& json, int indent) {
    return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

namespace {

void put_pitch(Json& out, Tuning const& tuning, Pitch pitch) {
    auto const name = tuning.name(pitch);
    out["hz"] = hz(pitch.frequency());
    out["pitch"] = name.pitch.str();
    out["cents"] = rounded(name.deviation.value, 0.1);
}

Json point_json(plan::Crossing const& c, Tuning const& tuning) {
    Json out{{"harmonic", c.harmonic.number}, {"resonance", c.resonance.number}};
    put_pitch(out, tuning, c.pitch);
    out["sd_cents"] = rounded(c.sd.value, 0.1);
    return out;
}

Json vowel_json(plan::VowelPlan const& v, Tuning const& tuning) {
    auto const& r = v.resonances;
    Json out{{"ipa", r.vowel.ipa()}, {"x_sampa", r.vowel.x_sampa()}};
    put_resonance(out, 1, r.r1);
    put_resonance(out, 2, r.r2);
    if (r.r3) put_resonance(out, 3, *r.r3);
    if (r.r4) put_resonance(out, 4, *r.r4);
    out["estimated"] = r.estimated;
    if (r.estimated) out["origin"] = r.origin;
    out["turning"] = point_json(v.turning, tuning);
    put_pitch(out["turns_over"], tuning, v.fo_leads);
    out["meeting"] = point_json(v.meeting, tuning);
    out["crossings"] = Json::array();
    for (auto const& c : v.crossings) out["crossings"].push_back(point_json(c, tuning));
    if (v.passive_range) {
        auto const& p = *v.passive_range;
        Json range;
        range["from"] = tuning.name(p.from).pitch.str();
        range["from_hz"] = hz(p.from.frequency());
        range["to"] = tuning.name(p.to).pitch.str();
        range["to_hz"] = hz(p.to.frequency());
        range["to_sd_cents"] = rounded(p.to_sd.value, 1);
        range["reaches_top"] = p.reaches_top;
        range["migrates_from"] = p.migrates_from ? Json(tuning.name(*p.migrates_from).pitch.str()) : Json();
        out["passive_range"] = range;
    } else {
        out["passive_range"] = nullptr;
    }
    out["sung_s"] = rounded(in_seconds(v.sung), 0.001);
    out["strip"] = Json::array();
    for (auto const& cell : v.strip) {
        Json c;
        put_pitch(c, tuning, cell.pitch);
        put_decision(c, cell.decision);
        c["sung_s"] = rounded(in_seconds(cell.sung), 0.001);
        out["strip"].push_back(std::move(c));
    }
    return out;
}

/// What a teacher would pencil, note by note.
Json pencil_json(plan::Pencil const& pencil) {
    Json out = Json::array();
    for (auto const& mark : pencil.marks)
        out.push_back({{"note", mark.note},
                       {"last", mark.last},
                       {"ipa", mark.vowel ? Json(mark.vowel->ipa()) : Json()},
                       {"words", mark.words},
                       {"turns_over", mark.turns},
                       {"outside_range", mark.outside},
                       {"sure", mark.sure}});
    return out;
}

void put_pencil(Json& out, plan::Plan const& plan) {
    auto const pencil = plan::pencil_of(plan);
    out["summary"] = plan.notes.empty() ? "" : plan::summary_of(plan, pencil);
    out["watch"] = Json::array();
    out["watch_again"] = Json::array();
    for (auto const& w : pencil.watch) {
        out["watch"].push_back(w.note);
        out["watch_again"].push_back(w.also);
    }
    out["pencil"] = pencil_json(pencil);
    out["cautions"] = pencil.cautions;
}

Json note_json(plan::NotePlan const& planned, SungNote const& note, Tuning const& tuning) {
    auto out = sung_note_json(note, tuning);
    if (planned.decision) {
        auto const levels = [](std::vector<Decibels> const& of) {
            Json l = Json::array();
            for (auto const& level : of) l.push_back(rounded(level.value, 0.1));
            return l;
        };
        put_decision(out, *planned.decision);
        out["levels_db"] = {{"kept", levels(planned.decision->levels_kept)},
                            {"planned", levels(planned.decision->levels_planned)}};
    }
    out["importance"] = rounded(planned.importance, 0.01);
    return out;
}

} // namespace

std::string plan_json(plan::Plan const& plan) {
    auto const& tuning = plan.passage.tuning;
    Json out{{"vowelway", 1}, {"singer", plan.singer.name}, {"voice", to_string(plan.singer.voice)}};
    out["average"] = plan.singer.average;
    out["measured"] = {{"method", to_string(plan.singer.provenance.method)},
                       {"date", plan.singer.provenance.date}};
    out["technique"] = plan.technique;
    out["a4_hz"] = hz(tuning.a4);
    out["range"] = {{"low", plan.range.low.str()}, {"high", plan.range.high.str()}};
    auto const& p = plan.passage;
    out["passage"] = {{"title", p.title},
                      {"composer", p.composer},
                      {"part", p.part},
                      {"verse", p.verse},
                      {"language", p.language},
                      {"transposed", rounded(p.transposed, 0.01)},
                      {"transposed_why", p.transposed_why}};
    out["cost"] = {{"total", rounded(plan.cost.total(), 0.001)}, {"terms", terms_json(plan.cost)}};
    out["vowels"] = Json::array();
    for (auto const& v : plan.vowels) out["vowels"].push_back(vowel_json(v, tuning));
    out["notes"] = Json::array();
    for (auto const& n : plan.notes) out["notes"].push_back(note_json(n, p.notes[n.note], tuning));
    put_pencil(out, plan);
    out["warnings"] = warnings_json(plan.remarks);
    return text_of(out);
}

} // namespace vowelway::report
