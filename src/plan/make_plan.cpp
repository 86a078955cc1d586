// SPDX-License-Identifier: MIT
#include "vowelway/plan/make_plan.hpp"

#include "first_advice.hpp"
#include "vowelway/plan/crossings.hpp"
#include "vowelway/plan/known_resonances.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway {

namespace {

PitchRange planned_range(PlanRequest const& request) {
    if (request.range) return *request.range;
    auto const& tuning = request.passage.tuning;
    std::optional<PitchRange> out = request.singer.range;
    if (!request.passage.notes.empty()) {
        auto const [low, high] = compass(request.passage);
        auto const below = tuning.name(low - semitones(1)).pitch, above = tuning.name(high + semitones(1)).pitch;
        if (!out) out = PitchRange{below, above};
        if (below.key_number() < out->low.key_number()) out->low = below;
        if (above.key_number() > out->high.key_number()) out->high = above;
    }
    if (!out)
        throw InputError("there is nothing to plan: no notes and no range",
                         "give a score, or a range such as --range C3..A4");
    return *out;
}

std::vector<Vowel> planned_vowels(PlanRequest const& request) {
    std::vector<Vowel> out;
    auto const add = [&](Vowel const& v) {
        if (std::find(out.begin(), out.end(), v.quality()) == out.end()) out.push_back(v.quality());
    };
    for (auto const& note : request.passage.notes)
        if (note.vowel) add(note.vowel->held);
    for (auto const& vowel : request.vowels) add(vowel);
    if (out.empty())
        for (auto const& known : request.singer.vowels) add(known.vowel);
    std::sort(out.begin(), out.end(), before_on_the_rim);
    return out;
}

} // namespace

Plan make_plan(PlanRequest request) {
    Plan plan;
    plan.range = planned_range(request);
    plan.technique = "first rules";
    auto const vowels = planned_vowels(request);
    plan.singer = std::move(request.singer);
    plan.passage = std::move(request.passage);
    plan.remarks = plan.passage.remarks;
    auto const& tuning = plan.passage.tuning;
    Pitch const low = tuning.pitch(plan.range.low), high = tuning.pitch(plan.range.high);
    Singer const* reference = request.reference ? &*request.reference : nullptr;

    for (auto const& vowel : vowels) {
        auto known = resonances_of(vowel, plan.singer, reference);
        if (!known) throw InputError("the profile of " + plan.singer.name + " has no vowels", "add at least one vowel with fR1 and fR2");
        if (known->estimated) plan.remarks.push_back({Remark::Kind::guessed, "/" + vowel.ipa() + "/ is not measured: " + known->origin});
        VowelPlan v{*known, crossing({2}, {1}, known->r1), crossing({1}, {1}, known->r1), crossings(*known, low, high), {}, std::nullopt, {}};
        for (double key = plan.range.low.key_number(); key <= plan.range.high.key_number() + 1e-9; ++key)
            v.strip.push_back({tuning.pitch(key), first_advice(tuning.pitch(key), *known, tuning), {}});
        plan.vowels.push_back(std::move(v));
    }
    for (std::size_t i = 0; i < plan.passage.notes.size(); ++i) {
        auto const& note = plan.passage.notes[i];
        NotePlan planned{i, std::nullopt, std::nullopt, 0};
        if (note.vowel) {
            auto const quality = note.vowel->held.quality();
            auto const at = std::find_if(plan.vowels.begin(), plan.vowels.end(), [&](auto const& v) { return v.resonances.vowel == quality; });
            planned.vowel = static_cast<std::size_t>(at - plan.vowels.begin());
            planned.decision = first_advice(note.pitch, at->resonances, tuning);
            at->sung += note.length;
            double const key = std::round(tuning.key_number(note.pitch.frequency()) - plan.range.low.key_number());
            if (key >= 0 && key < static_cast<double>(at->strip.size())) at->strip[static_cast<std::size_t>(key)].sung += note.length;
        }
        plan.notes.push_back(std::move(planned));
    }
    return plan;
}

} // namespace vowelway
