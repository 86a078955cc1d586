// SPDX-License-Identifier: MIT
#include "plan/section_voice.hpp"

#include "vowelway/plan/pencil.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace vowelway::plan {

namespace {

Strategy strategy_of(Plan const& plan, Technique const& technique, Means const& means) {
    std::vector<VowelResonances> known;
    for (auto const& v : plan.vowels) known.push_back(v.resonances);
    auto singer = plan.singer;
    singer.tuning = plan.passage.tuning;
    return {singer, technique, known, plan.range, means, plan.passage.language};
}

/// Semitones from one frequency to another, as a step of the grid.
int semitones_between(Frequency from, Frequency to) {
    return static_cast<int>(std::lround(12 * std::log2(to / from)));
}

Frequency semitones_up(Frequency f, int semitones) { return f * std::exp2(semitones / 12.0); }

} // namespace

SectionVoice::SectionVoice(Plan const& plan, Technique const& technique, Means const& means)
    : plan_(plan), strategy_(strategy_of(plan, technique, means)) {}

Landscape const& SectionVoice::land(std::size_t note) const {
    auto const& sung = plan_.passage.notes[plan_.notes[note].note];
    return strategy_.landscape(sung.pitch, loudness_of(sung));
}

Task SectionVoice::task(std::size_t note) const {
    auto const& sung = plan_.passage.notes[plan_.notes[note].note];
    return {*plan_.notes[note].vowel, sung.pitch, loudness_of(sung), sung.length};
}

HeardOffset SectionVoice::at(std::size_t note, Frequency r1, Frequency r2) const {
    auto const heard = land(note).at(r1, r2).heard;
    auto const& spoken = model(note).home.spoken;
    return {heard.openness - spoken.openness, heard.front - spoken.front};
}

HeardOffset SectionVoice::heard(std::size_t note) const {
    auto const& target = plan_.notes[note].decision->target;
    return at(note, target.r1.centre, target.r2.centre);
}

std::size_t SectionVoice::planned(std::size_t note) const {
    auto const& grid = strategy_.grid();
    auto const& home = model(note).home;
    auto const& target = plan_.notes[note].decision->target;
    return grid.at(std::clamp(semitones_between(home.r1, target.r1.centre), grid.low1, grid.high1),
                   std::clamp(semitones_between(home.r2, target.r2.centre), grid.low2, grid.high2));
}

std::vector<Option> SectionVoice::options(std::size_t note) const {
    auto const& grid = strategy_.grid();
    auto const& own = model(note);
    auto const task = this->task(note);
    auto const now = planned(note);
    double const benefit = Strategy::benefit(task.length);
    auto const cost = [&](std::size_t shape) {
        return benefit * strategy_.cost_of(task, shape).total() + double{own.efforts[shape]};
    };
    // Where both cost the same the plan stays: our choice, far below any other term.
    auto const away = [&](std::size_t shape) {
        return 0.005 * (std::abs(grid.d1(shape) - grid.d1(now)) + std::abs(grid.d2(shape) - grid.d2(now)));
    };
    double const as_planned = own.efforts[now] < out_of_reach ? cost(now) : 0;
    std::vector<Option> out;
    for (std::size_t s = 0; s < grid.size(); ++s) {
        if (own.efforts[s] >= out_of_reach) continue;
        out.push_back({s,
                       at(note, semitones_up(own.home.r1, grid.d1(s)), semitones_up(own.home.r2, grid.d2(s))),
                       std::max(cost(s) - as_planned, 0.0) + away(s)});
    }
    return out;
}

Vowel SectionVoice::shade_of(std::size_t note, std::size_t shape) const {
    auto const& own = model(note);
    auto const& grid = strategy_.grid();
    auto const set =
        acoustics::resonance_set(semitones_up(own.home.r1, grid.d1(shape)),
                                 semitones_up(own.home.r2, grid.d2(shape)), strategy_.space().quarter());
    return strategy_.space().shade_of(set, own.in_space);
}

std::string SectionVoice::way_to(std::size_t note, std::size_t shape) const {
    if (shape == strategy_.grid().home()) return {};
    return in_short(acoustics::describe(gesture_of(strategy_.grid(), shape, *model(note).reach),
                                        has_round_lips(model(note).resonances.vowel)));
}

} // namespace vowelway::plan
