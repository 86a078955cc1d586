// SPDX-License-Identifier: MIT
#include "report/format.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/compare_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace vowelway::report {

namespace {

using report::number;
using report::pitch_with_uncertainty;
using report::rounded;
using Json = nlohmann::ordered_json;

std::string hertz_to_five(Resonance const& r) {
    return fmt::format("{} ±{}{}", number(rounded(in_hertz(r.centre), 5)), number(rounded(in_hertz(r.sd), 5)),
                       r.sd_assumed ? "*" : "");
}

std::string how(plan::TractLength const& t) {
    switch (t.from) {
    case plan::TractLength::From::given:
        return worded("as given in the profile");
    case plan::TractLength::From::upper_resonances:
        return worded("estimated from the upper resonances of {0} vowels, as for a tube", t.vowels);
    case plan::TractLength::From::average_voices:
        return worded("estimated from {0} vowels compared with the nearest average voice", t.vowels);
    }
    return "";
}

std::string_view key(plan::TractLength::From from) {
    switch (from) {
    case plan::TractLength::From::given:
        return "given";
    case plan::TractLength::From::upper_resonances:
        return "upper_resonances";
    case plan::TractLength::From::average_voices:
        return "average_voices";
    }
    return "";
}

std::string semitones_above(std::optional<Cents> const& c) {
    if (!c) return "";
    return report::signed_semitones(*c);
}

Measurement const* source_of(SingerPicture const& p, Vowel const& vowel) {
    auto const found = std::find_if(p.sources.begin(), p.sources.end(), [&](Measurement const& m) {
        return m.vowel.quality() == vowel.quality();
    });
    return found == p.sources.end() ? nullptr : &*found;
}

std::string source_text(Measurement const* m) {
    if (!m) return "";
    return std::string(reworded(to_string(m->method))) + (m->date.empty() ? "" : ", " + m->date);
}

std::string resonance_table(SingerPicture const& picture) {
    auto const& singer = picture.singer;
    bool third = false, fourth = false, assumed = false, estimated = false;
    for (auto const& v : singer.vowels) {
        third = third || v.r3;
        fourth = fourth || v.r4;
        estimated = estimated || v.estimated;
    }
    int const count = fourth ? 4 : third ? 3 : 2;
    std::vector<Table::Column> columns{{worded("vowel")}};
    for (int k = 1; k <= count; ++k) {
        columns.push_back({fmt::format("fR{} Hz", k), Table::Align::right});
        columns.push_back({worded("as a pitch")});
    }
    if (!picture.sources.empty()) columns.push_back({worded("known by")});
    Table table(columns);
    for (auto const& v : singer.vowels) {
        std::vector<std::string> cells{v.vowel.ipa() + (v.estimated ? "?" : "")};
        for (int k = 1; k <= count; ++k) {
            auto const r = v.get({k});
            cells.push_back(r ? hertz_to_five(*r) : "");
            cells.push_back(r ? pitch_with_uncertainty(singer.tuning, Pitch(r->centre), r->sd_cents()) : "");
            assumed = assumed || (r && r->sd_assumed);
        }
        if (!picture.sources.empty()) cells.push_back(source_text(source_of(picture, v.vowel)));
        table.row(std::move(cells));
    }
    auto out = table.str();
    if (assumed) out += worded("* deviation assumed, not measured") + "\n";
    if (estimated) out += worded("? estimated, not measured") + "\n";
    return out;
}

std::string placement_table(std::vector<plan::Placement> const& among) {
    using enum Table::Align;
    Table table({{worded("voice")},
                 {"fR1", right},
                 {"fR2", right},
                 {"fR3", right},
                 {worded("vowels"), right},
                 {worded("distance"), right}});
    for (auto const& p : among)
        table.row({std::string(reworded(to_string(p.voice))), semitones_above(p.above[0]),
                   semitones_above(p.above[1]), semitones_above(p.above[2]), std::to_string(p.vowels),
                   fmt::format("{:.1f}", p.distance)});
    return worded("Against the average voices: semitones above them, mean over the vowels both have") +
           "\n\n" + table.str() +
           worded("distance: 1 is how far apart voices of one type usually lie; resonances show a voice type "
                  "only "
                  "roughly") +
           "\n";
}

Json resonance_json(Resonance const& r, int k, Tuning const& tuning) {
    auto const name = tuning.name(r.centre);
    Json out{{"number", k},
             {"hz", rounded(in_hertz(r.centre), 0.1)},
             {"sd_hz", rounded(in_hertz(r.sd), 0.1)},
             {"sd_assumed", r.sd_assumed},
             {"pitch", name.pitch.str()},
             {"cents", rounded(name.deviation.value, 0.1)},
             {"sd_cents", rounded(r.sd_cents().value, 0.1)}};
    if (r.bandwidth) out["bandwidth_hz"] = rounded(in_hertz(*r.bandwidth), 0.1);
    return out;
}

Json cents_json(std::optional<Cents> const& c) { return c ? Json(rounded(c->value, 0.1)) : Json(nullptr); }

} // namespace

std::string singer_text(SingerPicture const& p) {
    auto const& s = p.singer;
    std::string out = (s.name.empty() ? worded("(no name)") : s.name) + "\n" +
                      worded("voice: {0}", reworded(to_string(s.voice)));
    if (s.range) out += "; " + worded("range: {0}", s.range->str());
    out += fmt::format("; A4 = {} Hz\n", number(in_hertz(s.tuning.a4), 2));
    out += worded("source: {0}", reworded(to_string(s.provenance.method)));
    if (!s.provenance.date.empty()) out += ", " + s.provenance.date;
    if (!s.provenance.note.empty()) out += fmt::format(" ({})", s.provenance.note);
    out += "\n";
    if (s.average) out += fmt::format("{}\n", reworded(average_voice_notice));
    if (p.tract)
        out += worded("vocal tract: {0} cm", fmt::format("{:.1f}", in_centimetres(p.tract->length))) +
               (p.tract->sd ? fmt::format(" ±{:.1f}", in_centimetres(*p.tract->sd)) : "") + ", " +
               how(*p.tract) + "\n";
    out += "\n" + resonance_table(p);
    if (!p.among.empty()) out += "\n" + placement_table(p.among);
    return out;
}

std::string singer_json(SingerPicture const& p) {
    auto const& s = p.singer;
    Json out{{"vowelway", 1},
             {"singer", s.name},
             {"voice", to_string(s.voice)},
             {"average", s.average},
             {"a4_hz", rounded(in_hertz(s.tuning.a4), 0.01)}};
    out["range"] = s.range ? Json{{"low", s.range->low.str()}, {"high", s.range->high.str()}} : Json(nullptr);
    out["source"] = {
        {"method", to_string(s.provenance.method)}, {"date", s.provenance.date}, {"note", s.provenance.note}};
    out["tract"] = nullptr;
    if (p.tract) {
        out["tract"] = {{"length_cm", rounded(in_centimetres(p.tract->length), 0.1)}};
        out["tract"]["sd_cm"] =
            p.tract->sd ? Json(rounded(in_centimetres(*p.tract->sd), 0.1)) : Json(nullptr);
        out["tract"]["from"] = key(p.tract->from);
        out["tract"]["vowels"] = p.tract->vowels;
    }
    out["vowels"] = Json::array();
    for (auto const& v : s.vowels) {
        Json one{{"ipa", v.vowel.ipa()}, {"x_sampa", v.vowel.x_sampa()}, {"estimated", v.estimated}};
        if (v.estimated) one["origin"] = v.origin;
        if (auto const* m = source_of(p, v.vowel))
            one["from"] = {{"method", to_string(m->method)}, {"date", m->date}, {"probes", m->probes}};
        one["resonances"] = Json::array();
        for (int k = 1; k <= 4; ++k)
            if (auto const r = v.get({k})) one["resonances"].push_back(resonance_json(*r, k, s.tuning));
        out["vowels"].push_back(std::move(one));
    }
    out["voices"] = Json::array();
    for (auto const& a : p.among)
        out["voices"].push_back({{"voice", to_string(a.voice)},
                                 {"fR1_cents", cents_json(a.above[0])},
                                 {"fR2_cents", cents_json(a.above[1])},
                                 {"fR3_cents", cents_json(a.above[2])},
                                 {"vowels", a.vowels},
                                 {"distance", rounded(a.distance, 0.01)}});
    out["warnings"] = Json::array();
    for (auto const& r : p.remarks)
        out["warnings"].push_back({{"kind", to_string(r.kind)}, {"text", r.text}});
    return out.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace vowelway::report
