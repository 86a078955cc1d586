// SPDX-License-Identifier: MIT
#include "vowelway/plan/demand.hpp"

#include "plan/decided.hpp"
#include "plan/read_all.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/phrases.hpp"
#include "vowelway/plan/zones.hpp"

#include <algorithm>

namespace vowelway::plan {

namespace {

void add(CostTerms& sum, CostTerms const& more) {
    for (auto const& term : cost_term_names) sum.*term.value += more.*term.value;
}

/// Adds one note to the shares, still in seconds, and to the drift, in Bark times seconds.
void add_note(Demand& out, Decided const& decided, std::size_t index) {
    auto const& task = decided.work.tasks[index];
    auto const& choice = decided.choices[index];
    auto const& model = decided.strategy.models()[task.vowel];
    double const s = in_seconds(task.length);
    auto const zone = read_zone(task.pitch, model.resonances.r1);
    auto& time = out.time;
    time.hold += s * choice.shares.hold;
    time.migrate += s * choice.shares.migrate;
    time.modify += s * choice.shares.modify;
    if (zone.zone == Zone::turning) time.turning += s;
    if (zone.zone == Zone::meeting) time.meeting += s;
    time.turned += s * zone.p_turned;
    time.above += s * zone.p_above;
    if (task.pitch > decided.plan.passage.tuning.pitch(high_text)) time.high_text += s;
    out.drift_kept = out.drift_kept + s * distance(choice.heard_kept, model.home.spoken);
    out.drift = out.drift + s * distance(choice.heard, model.home.spoken);
    auto const cost = cost_beside(decided, index, choice.shape, false);
    add(out.cost, cost);
    out.benefit += Strategy::benefit(task.length);
    out.each.push_back({decided.work.note_of[index - decided.work.strips()], zone.zone, choice.advice,
                        choice.certainty, cost.total()});
}

void divide(Demand& out, double seconds_on_vowels) {
    if (seconds_on_vowels <= 0) return;
    auto& t = out.time;
    for (double* share :
         {&t.hold, &t.migrate, &t.modify, &t.turning, &t.meeting, &t.turned, &t.above, &t.high_text})
        *share /= seconds_on_vowels;
    out.drift_kept = out.drift_kept / seconds_on_vowels;
    out.drift = out.drift / seconds_on_vowels;
}

/// Where the line comes up past the turn of the vowel it arrives on, and how often on the peak of a phrase.
void count_turns(Demand& out, Plan const& plan) {
    for (auto const& phrase : phrases_of(plan.passage))
        for (auto i = phrase.from + 1; i < phrase.to; ++i) {
            if (!plan.notes[i].vowel) continue;
            auto const turn = plan.vowels[*plan.notes[i].vowel].turning.pitch;
            auto const& notes = plan.passage.notes;
            if (notes[i].pitch < turn || !(notes[i - 1].pitch < turn)) continue;
            ++out.turns;
            if (i == phrase.peak) ++out.exposed;
        }
}

} // namespace

DemandNote const* Demand::worst() const {
    auto const at = std::max_element(each.begin(), each.end(),
                                     [](auto const& a, auto const& b) { return a.cost < b.cost; });
    return at == each.end() ? nullptr : &*at;
}

Demand demand_of(PlanRequest request, Means const& means) {
    auto const load = load_of(request.passage, request.singer.range);
    if (!load) throw InputError(worded("there is no note to plan"), worded("give a score with a vocal line"));
    auto const decided = decide_all(std::move(request), means, Strips::left_out);
    Demand out{*load, {}, 0, 0, {}, {}, {}, {}, 0};
    double on_vowels = 0;
    for (std::size_t i = 0; i < decided.work.tasks.size(); ++i) {
        add_note(out, decided, i);
        on_vowels += in_seconds(decided.work.tasks[i].length);
    }
    divide(out, on_vowels);
    count_turns(out, decided.plan);
    return out;
}

} // namespace vowelway::plan
