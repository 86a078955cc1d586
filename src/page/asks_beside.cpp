// SPDX-License-Identifier: MIT
// The same song another way: another technique or singer beside the plan, and the song in other keys.
#include "page/asks.hpp"
#include "page/text_measurer.hpp"

#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/keys.hpp"

#include <array>

namespace vowelway::page {

namespace {

Json told(plan::Decision const& d) {
    return {{"advice", to_string(d.advice)},
            {"brief", d.brief},
            {"shade", d.target.shade.quality().ipa()},
            {"heard", d.heard.vowel.quality().ipa()}};
}

/// Seconds sung, by advice.
Json seconds_of(plan::AdviceTimes const& times) {
    Json out;
    for (auto const advice : {plan::Advice::hold, plan::Advice::migrate, plan::Advice::modify})
        out[std::string(to_string(advice))] =
            std::round(in_seconds(times.of[static_cast<std::size_t>(advice)]) * 10) / 10;
    return out;
}

plan::Plan named(plan::Plan plan) {
    plan.singer.name += ", " + plan.technique;
    return plan;
}

} // namespace

std::string plans_beside(Json const& request, std::string_view bytes) {
    auto other = request;
    other.update(request.at("other"));
    auto first = named(planned(request, bytes));
    auto const compared = compare_plans(std::move(first), named(make_plan(plan_request(other, bytes))));
    Json out{{"names", Json::array()}, {"times", Json::array()}, {"notes", Json::array()}};
    for (std::size_t i = 0; i < 2; ++i) {
        out["names"].push_back(compared.plans[i].singer.name);
        out["times"].push_back(seconds_of(compared.times[i]));
    }
    out["parting_s"] = std::round(in_seconds(compared.parting) * 10) / 10;
    for (auto const& note : compared.notes)
        if (note.parting != plan::Parting::none)
            out["notes"].push_back({{"note", note.note},
                                    {"parting", to_string(note.parting)},
                                    {"sure", note.certainty >= plan::sure_parting},
                                    {"first", told(*compared.plans[0].notes[note.note].decision)},
                                    {"second", told(*compared.plans[1].notes[note.note].decision)}});
    auto const options = chart_options(request);
    out["pages"] = Json::array();
    for (auto const& page : draw_svg(compared, options, TextMeasurer(options.theme)))
        out["pages"].push_back(page.bytes);
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string keys_told(Json const& request, std::string_view bytes) {
    constexpr int farthest = 4; // semitones: as far as a song is commonly moved for a voice (no source)
    auto asked = plan_request(request, bytes);
    double const here = asked.passage.transposed;
    auto const found = plan_keys(std::move(asked), plan::KeyRange{-farthest, farthest});
    Json out{{"keys", Json::array()}, {"proposed", found.recommended().semitones}, {"best", Json::array()}};
    for (std::size_t i = 0; i < found.as_good(); ++i)
        out["best"].push_back(found.keys[found.best[i]].semitones);
    for (auto const& key : found.keys) {
        plan::AdviceTimes times{};
        for (auto const& each : key.demand.each)
            times.of[static_cast<std::size_t>(each.advice)] += found.passage.notes[each.note].length;
        Json against = Json::array();
        for (auto const words : plan::against(key, found.recommended())) against.push_back(reworded(words));
        out["keys"].push_back({{"by", key.semitones},
                               {"transpose", here + key.semitones},
                               {"low", key.low.str()},
                               {"high", key.high.str()},
                               {"against", against},
                               {"seconds", seconds_of(times)}});
    }
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
