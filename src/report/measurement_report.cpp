// SPDX-License-Identifier: MIT
// Measurements as JSON and as a table.
#include "vowelway/report/measurement_report.hpp"

#include "report/measurement_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace vowelway::report {
namespace {

constexpr std::array all_kinds{analysis::ProbeKind::whisper, analysis::ProbeKind::creak,
                               analysis::ProbeKind::sung, analysis::ProbeKind::spoken};

double to_tenths(double v) { return std::round(10 * v) / 10; }
double thousandth(double v) { return std::round(1000 * v) / 1000; }
double hundredth(double v) { return std::round(100 * v) / 100; }

template <class T> Json or_null(std::optional<T> const& v) {
    return v ? Json(to_tenths(v->value)) : Json(nullptr);
}

Json formants_json(analysis::FormantReading const& r) {
    Json j = Json::object();
    for (std::size_t k = 0; k < 3; ++k)
        if (auto const& f = r.formants[k]) {
            auto const n = std::to_string(k + 1);
            j["F" + n + "_hz"] = to_tenths(in_hertz(f->centre));
            j["F" + n + "_sd_hz"] = to_tenths(in_hertz(f->sd));
            j["B" + n + "_hz"] = to_tenths(in_hertz(f->bandwidth));
        }
    return j;
}

Json tract_json(analysis::TractReading const& t) {
    Json j = Json::object();
    for (std::size_t k = 0; k < 3; ++k)
        if (auto const& r = t.resonances[k]) {
            auto const n = std::to_string(k + 1);
            j["fR" + n + "_hz"] = to_tenths(in_hertz(r->centre));
            j["fR" + n + "_sd_hz"] = to_tenths(in_hertz(r->sd));
        }
    j["close_whisper"] = t.close_whisper;
    return j;
}

Json findings_json(std::vector<analysis::Finding> const& findings) {
    Json j = Json::array();
    for (auto const& f : findings)
        j.push_back({{"kind", to_string(f.kind)}, {"says", f.says}, {"try", f.tries}});
    return j;
}

Json quality_json(analysis::ProbeQuality const& q) {
    Json heights = Json::array();
    for (auto const& h : q.height) heights.push_back(h ? Json(hundredth(*h)) : Json(nullptr));
    return {{"low_above_floor_db", or_null(q.low_above_floor)},
            {"high_above_floor_db", or_null(q.high_above_floor)},
            {"balance_db", to_tenths(q.balance.value)},
            {"source_balance_db", or_null(q.source_balance)},
            {"filled", hundredth(q.filled)},
            {"relief_db", to_tenths(q.relief.value)},
            {"unsteadiness_db", to_tenths(q.unsteadiness.value)},
            {"height_sd", heights},
            {"findings", findings_json(q.findings)}};
}

Json take_json(analysis::Take const& t, std::vector<std::string> const& files) {
    return {{"file", files[t.recording]},
            {"start_s", hundredth(in_seconds(t.span.start))},
            {"end_s", hundredth(in_seconds(t.span.end))},
            {"steady_start_s", hundredth(in_seconds(t.steady.span.start))},
            {"steady_end_s", hundredth(in_seconds(t.steady.span.end))},
            {"vowel", t.vowel.ipa()},
            {"probe", to_string(t.excitation.kind)},
            {"probe_probability", thousandth(t.excitation.probability)},
            {"rate_hz", t.excitation.rate && t.excitation.kind != analysis::ProbeKind::whisper
                            ? Json(to_tenths(in_hertz(*t.excitation.rate)))
                            : Json(nullptr)},
            {"frames", t.measured.frames},
            {"settings", t.measured.settings},
            {"measured", formants_json(t.measured)},
            {"tract", tract_json(t.tract)},
            {"quality", quality_json(t.quality)},
            {"refused", t.usable() ? Json(nullptr) : Json(t.refused)}};
}

Json recording_json(analysis::KindOfRecording const& kind, std::string const& file) {
    Json probability = Json::object();
    for (auto k : all_kinds)
        probability[std::string(to_string(k))] = thousandth(kind.probability[static_cast<std::size_t>(k)]);
    return {{"file", file}, {"probe", to_string(kind.kind)}, {"probability", probability}};
}

Json order_json(analysis::OrderFound const& order) {
    Json listed = Json::array(), better = Json::array();
    for (auto const& v : order.listed) listed.push_back(v.ipa());
    for (auto const& v : order.better) better.push_back(v.ipa());
    return {{"listed", listed},
            {"better", better},
            {"probability", thousandth(order.probability)},
            {"refused", order.sure}};
}

Json vowel_json(analysis::MeasuredVowel const& v) {
    Json spread = Json::array();
    for (auto const& s : v.repeat_spread) spread.push_back(or_null(s));
    return {{"vowel", v.vowel.ipa()},
            {"probe", to_string(v.kind)},
            {"takes", v.takes},
            {"measured", formants_json(v.measured)},
            {"tract", tract_json(v.tract)},
            {"repeat_spread_cents", spread},
            {"findings", findings_json(v.findings)}};
}

/// No finer than the ear hears: 10 Hz (difference limens of formants are about 14 Hz below 800 Hz; D.
/// Kewley-Port & C. S. Watson, J. Acoust. Soc. Am. 95, 1994, 485).
std::string tens(Frequency f) { return fmt::format("{:.0f}", 10 * std::round(in_hertz(f) / 10)); }

std::string with_sd(std::optional<Resonance> const& r) {
    if (!r) return "-";
    return tens(r->centre) + " ± " +
           fmt::format("{:.0f}", std::max(10.0, 10 * std::round(in_hertz(r->sd) / 10)));
}

} // namespace

Json measurement_parts(analysis::Measurements const& m, std::vector<std::string> const& files) {
    Json j{{"vowelway", 1},           {"recordings", Json::array()}, {"takes", Json::array()},
           {"vowels", Json::array()}, {"shift", Json::object()},     {"remarks", Json::array()}};
    for (std::size_t r = 0; r < m.kinds.size() && r < files.size(); ++r)
        j["recordings"].push_back(recording_json(m.kinds[r], files[r]));
    for (auto const& t : m.takes) j["takes"].push_back(take_json(t, files));
    for (auto const& v : m.vowels) j["vowels"].push_back(vowel_json(v));
    for (auto kind : all_kinds) {
        auto const& s = m.shifts[static_cast<std::size_t>(kind)];
        Json one = Json::object();
        for (std::size_t k = 0; k < 3; ++k) {
            auto const n = "fR" + std::to_string(k + 1);
            one[n + "_hz"] = to_tenths(in_hertz(s.of[k].mean));
            one[n + "_sd_hz"] = to_tenths(in_hertz(s.of[k].sd()));
        }
        one["pairs"] = s.pairs;
        j["shift"][std::string(to_string(kind))] = one;
    }
    j["lesson"] = Json::array();
    for (auto const& p : m.lesson)
        j["lesson"].push_back({{"kind", to_string(p.kind)},
                               {"size", to_tenths(p.size)},
                               {"sd", to_tenths(p.sd)},
                               {"says", p.says},
                               {"try", p.tries.empty() ? Json(nullptr) : Json(p.tries)}});
    j["order"] = m.order ? order_json(*m.order) : Json(nullptr);
    j["remarks"] = warnings_json(m.remarks);
    return j;
}

std::string lesson_text(std::vector<analysis::LessonPoint> const& points) {
    std::string out;
    for (auto const& p : points)
        out += p.says + (p.tries.empty() ? "" : "; " + worded("try: {0}", p.tries)) + "\n";
    return out;
}

std::string kinds_text(analysis::Measurements const& m, std::vector<std::string> const& files) {
    std::string out;
    for (std::size_t r = 0; r < m.kinds.size() && r < files.size(); ++r) {
        double sure = 0;
        for (auto k : all_kinds)
            if (same_source(k, m.kinds[r].kind)) sure += m.kinds[r].probability[static_cast<std::size_t>(k)];
        out += fmt::format("{}: {} ({})\n", files[r], reworded(to_string(m.kinds[r].kind)),
                           sure > 0.995 ? worded("sure") : fmt::format("{:.0f} %", 100 * sure));
    }
    return out;
}

std::string refusals_text(analysis::Measurements const& m, std::vector<std::string> const& files) {
    std::string out;
    for (auto const& t : m.takes)
        if (!t.usable())
            out += fmt::format("{} {:.2f}-{:.2f} s /{}/: {}\n", files[t.recording], in_seconds(t.span.start),
                               in_seconds(t.span.end), t.vowel.ipa(), worded("no result: {0}", t.refused));
    return out;
}

std::string measurement_json(analysis::Measurements const& m, std::vector<std::string> const& files) {
    return text_of(measurement_parts(m, files), 2);
}

std::string measurement_text(analysis::Measurements const& m, std::vector<std::string> const& files,
                             Tuning const& tuning) {
    using A = Table::Align;
    auto out = lesson_text(m.lesson);
    Table vowels({{worded("vowel")},
                  {worded("probe")},
                  {worded("takes"), A::right},
                  {"F1", A::right},
                  {"F2", A::right},
                  {"F3", A::right},
                  {"fR1", A::right},
                  {""},
                  {"fR2", A::right},
                  {""},
                  {"fR3", A::right}});
    for (auto const& v : m.vowels) {
        auto const heard = [&](std::size_t k) {
            return v.measured.formants[k] ? tens(v.measured.formants[k]->centre) : "-";
        };
        auto const pitch = [&](std::size_t k) {
            return v.tract.resonances[k] ? tuning.name(v.tract.resonances[k]->centre).pitch.str() : "";
        };
        auto const& r = v.tract.resonances;
        vowels.row({v.vowel.ipa(), std::string(reworded(to_string(v.kind))), std::to_string(v.takes),
                    heard(0), heard(1), heard(2), with_sd(r[0]), pitch(0), with_sd(r[1]), pitch(1),
                    with_sd(r[2])});
    }
    if (!m.vowels.empty())
        out +=
            vowels.str() +
            worded(
                "F: peaks in the sound, Hz. fR: resonances of the tract, the probe's shift subtracted, Hz ± "
                "one SD.") +
            "\n";
    out += kinds_text(m, files);
    for (auto const& v : m.vowels)
        for (auto const& f : v.findings)
            out += fmt::format("/{}/: {}; {}\n", v.vowel.ipa(), f.says, worded("try: {0}", f.tries));
    for (auto const& v : m.vowels)
        if (v.tract.close_whisper)
            out += worded("/{0}/: fR1 of a whispered close vowel is unreliable; try: creak on this vowel",
                          v.vowel.ipa()) +
                   "\n";
    out += refusals_text(m, files);
    for (auto const& t : m.takes) {
        if (!t.usable()) continue;
        auto const where = fmt::format("{} {:.2f}-{:.2f} s /{}/", files[t.recording],
                                       in_seconds(t.span.start), in_seconds(t.span.end), t.vowel.ipa());
        for (auto const& f : t.quality.findings)
            if (f.kind != analysis::Finding::Kind::close_whisper)
                out += fmt::format("{}: {}; {}\n", where, f.says, worded("try: {0}", f.tries));
    }
    if (m.learned)
        out += worded("The singer's own shift is learned: whisper F1 {0} Hz, creak F1 {1} Hz.",
                      fmt::format("{:+.0f}", in_hertz(m.shifts[0].of[0].mean)),
                      fmt::format("{:+.0f}", in_hertz(m.shifts[1].of[0].mean))) +
               "\n";
    return out;
}

} // namespace vowelway::report
