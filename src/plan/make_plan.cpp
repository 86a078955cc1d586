// SPDX-License-Identifier: MIT
#include "vowelway/plan/make_plan.hpp"

#include "plan/decided.hpp"
#include "plan/passive_range.hpp"
#include "plan/read_all.hpp"
#include "plan/reading.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/crossings.hpp"
#include "vowelway/plan/known_resonances.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

PitchRange planned_range(PlanRequest const& request) {
    if (request.range) return *request.range;
    auto const& tuning = request.passage.tuning;
    std::optional<PitchRange> out = request.singer.range;
    if (!request.passage.notes.empty()) {
        auto const [low, high] = compass(request.passage);
        auto const below = tuning.name(low - semitones(1)).pitch,
                   above = tuning.name(high + semitones(1)).pitch;
        if (!out) out = PitchRange{below, above};
        if (below.key_number() < out->low.key_number()) out->low = below;
        if (above.key_number() > out->high.key_number()) out->high = above;
    }
    if (!out)
        throw InputError(worded("there is nothing to plan: no notes and no range"),
                         worded("give a score, or a range such as --range C3..A4"));
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
    if (out.empty()) {
        // An average voice has every vowel of every table: a range shows the seven that all teachers ask for.
        static auto const usual = parse_vowels("i e ɛ a ɔ o u");
        for (auto const& known : request.singer.vowels)
            if (!request.singer.average || std::find(usual.begin(), usual.end(), known.vowel) != usual.end())
                add(known.vowel);
    }
    std::sort(out.begin(), out.end(), before_on_the_rim);
    return out;
}

constexpr double strip_line = 0.5; // a slow scale, a new syllable on each pitch

Work list_work(Plan const& plan) {
    Work work;
    for (std::size_t v = 0; v < plan.vowels.size(); ++v)
        for (auto const& cell : plan.vowels[v].strip)
            work.tasks.push_back({v, cell.pitch, Decibels{0}, seconds(1),
                                  &cell == &plan.vowels[v].strip.front() ? 0 : strip_line, 0,
                                  &cell != &plan.vowels[v].strip.front()});
    SungNote const* before = nullptr;
    for (auto const& planned : plan.notes) {
        if (!planned.vowel) continue;
        auto const& note = plan.passage.notes[planned.note];
        work.tasks.push_back({*planned.vowel, note.pitch, loudness_of(note), note.length,
                              before ? line_between(*before, note) : 0,
                              before ? attention_between(*before, note) : 1,
                              note.melisma && before && attention_between(*before, note) == 0});
        work.note_of.push_back(planned.note);
        before = &note;
    }
    return work;
}

void list_strip(VowelPlan& vowel, Plan const& plan) {
    for (double key = plan.range.low.key_number(); key <= plan.range.high.key_number() + 1e-9; ++key)
        vowel.strip.push_back({plan.passage.tuning.pitch(key), {}, {}});
}

void list_vowels(Plan& plan, std::vector<Vowel> const& vowels, Singer const* reference) {
    auto const& tuning = plan.passage.tuning;
    Pitch const low = tuning.pitch(plan.range.low), high = tuning.pitch(plan.range.high);
    for (auto const& vowel : vowels) {
        auto known = resonances_of(vowel, plan.singer, reference);
        if (!known)
            throw InputError(worded("the profile of {0} has no vowels", plan.singer.name),
                             worded("add at least one vowel with fR1 and fR2"));
        if (known->estimated)
            plan.remarks.push_back({Remark::Kind::guessed, worded("/{0}/ is not measured: {1}", vowel.ipa(),
                                                                  reworded(known->origin))});
        VowelPlan v{*known,
                    crossing({2}, {1}, known->r1),
                    crossing({2}, {1}, known->r1).pitch,
                    crossing({1}, {1}, known->r1),
                    crossings(*known, low, high),
                    {},
                    std::nullopt,
                    {}};
        plan.vowels.push_back(std::move(v));
    }
}

void list_notes(Plan& plan) {
    auto const& tuning = plan.passage.tuning;
    for (std::size_t i = 0; i < plan.passage.notes.size(); ++i) {
        auto const& note = plan.passage.notes[i];
        NotePlan planned{i, std::nullopt, std::nullopt, 0};
        if (note.vowel) {
            auto const quality = note.vowel->held.quality();
            auto const at = std::find_if(plan.vowels.begin(), plan.vowels.end(),
                                         [&](auto const& v) { return v.resonances.vowel == quality; });
            planned.vowel = static_cast<std::size_t>(at - plan.vowels.begin());
            at->sung += note.length;
        }
        plan.notes.push_back(std::move(planned));
    }
    for (auto const& planned : plan.notes) {
        if (!planned.vowel) continue;
        auto const& note = plan.passage.notes[planned.note];
        auto& strip = plan.vowels[*planned.vowel].strip;
        double const key =
            std::round(tuning.key_number(note.pitch.frequency()) - plan.range.low.key_number());
        if (key >= 0 && key < static_cast<double>(strip.size()))
            strip[static_cast<std::size_t>(key)].sung += note.length;
    }
}

std::vector<ReachRow> rows_of(VowelResonances const& own, acoustics::ReachableSet const& reach) {
    auto const away = [&](Resonance const& r, int steps) {
        return r.centre * std::exp2(steps * reach.step().value / 1200);
    };
    std::vector<ReachRow> rows;
    for (int i = reach.lowest_i(); i <= reach.highest_i(); ++i) {
        std::optional<ReachRow> row;
        for (int j = -reach.highest_j(); j <= reach.highest_j(); ++j) {
            if (!reach.at(i, j)) continue;
            auto const r2 = away(own.r2, j);
            if (!row)
                row = ReachRow{.r1 = away(own.r1, i),
                               .r2_low = r2,
                               .r2_high = r2,
                               .low_is_limit = j > -reach.highest_j()};
            row->r2_high = r2;
            row->high_is_limit = j < reach.highest_j();
        }
        if (row)
            rows.push_back(*row);
        else if (!rows.empty())
            rows.back().r1_is_limit = true;
    }
    return rows;
}

// Above this the words are no longer carried by vowels alone (docs/limits.md).
void warn_of_high_text(Plan& plan) {
    Pitch const limit = plan.passage.tuning.pitch(high_text);
    double high = 0;
    for (auto const& note : plan.passage.notes)
        if (note.pitch > limit && note.vowel) high += in_seconds(note.length);
    if (high > 0)
        plan.remarks.push_back(
            {Remark::Kind::caution,
             worded("above F♯5 ({0} s of this passage) listeners tell few vowels apart, whatever the shape: "
                    "consonants must carry the words",
                    std::lround(high))});
}

} // namespace

Decided decide_all(PlanRequest request, Means const& means, Strips strips) {
    Plan plan;
    plan.range = planned_range(request);
    plan.technique = request.technique.name;
    auto const vowels = planned_vowels(request);
    plan.singer = std::move(request.singer);
    plan.passage = std::move(request.passage);
    plan.remarks = plan.passage.remarks;
    list_vowels(plan, vowels, request.reference ? &*request.reference : nullptr);
    if (strips == Strips::decided)
        for (auto& vowel : plan.vowels) list_strip(vowel, plan);

    std::vector<VowelResonances> known;
    for (auto const& v : plan.vowels) known.push_back(v.resonances);
    auto singer = plan.singer;
    singer.tuning = plan.passage.tuning;
    Strategy strategy(singer, std::move(request.technique), known, plan.range, means, plan.passage.language);
    for (auto const& model : strategy.models())
        if (auto const& objection = model.reach->objection(); !objection.empty())
            plan.remarks.push_back(
                {Remark::Kind::caution, "/" + model.resonances.vowel.ipa() + "/: " + objection});
    if (strips == Strips::decided)
        for (std::size_t i = 0; i < plan.vowels.size(); ++i)
            plan.vowels[i].fo_leads = level_turn(strategy.models()[i], strategy);

    list_notes(plan);
    auto work = list_work(plan);
    auto decisions = strategy.decide(work.tasks, request.draws, work.strips());
    if (plan.singer.average)
        plan.remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    warn_of_high_text(plan);
    return {std::move(plan),
            std::move(strategy),
            std::move(work),
            std::move(decisions.choices),
            std::move(decisions.drawn),
            decisions.strip_draws};
}

Plan make_plan(PlanRequest request, Means const& means) {
    auto decided = decide_all(std::move(request), means);
    auto decisions = read_all(decided);
    auto plan = std::move(decided.plan);
    auto const& strategy = decided.strategy;
    auto const& work = decided.work;
    std::size_t next = 0;
    for (std::size_t i = 0; i < plan.vowels.size(); ++i) {
        auto& v = plan.vowels[i];
        auto const& model = strategy.models()[i];
        v.reach = rows_of(v.resonances, *model.reach);
        std::vector<std::vector<Advice>> drawn;
        for (std::size_t draw = 0; draw < decided.strip_draws; ++draw) {
            auto const at = decided.drawn[draw].begin() + static_cast<std::ptrdiff_t>(next);
            drawn.emplace_back(at, at + static_cast<std::ptrdiff_t>(v.strip.size()));
        }
        for (auto& cell : v.strip) cell.decision = std::move(decisions[next++]);
        v.passive_range = passive_range(v.strip, drawn);
    }
    Decision const* before = nullptr;
    for (auto index : work.note_of) {
        auto& planned = plan.notes[index];
        auto const task = next++;
        planned.decision = std::move(decisions[task]);
        auto const cost = cost_beside(decided, task, decided.choices[task].shape, false);
        for (auto const& term : cost_term_names) plan.cost.*term.value += cost.*term.value;
        planned.importance = importance_of(*planned.decision, plan.passage.notes[index].length, before);
        before = &*planned.decision;
    }
    return plan;
}

} // namespace vowelway::plan
