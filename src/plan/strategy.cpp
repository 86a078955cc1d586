// SPDX-License-Identifier: MIT
#include "plan/strategy.hpp"

#include "plan/executor_of.hpp"
#include "plan/prepared.hpp"
#include "plan/signs.hpp"
#include "plan/too_little.hpp"
#include "vowelway/acoustics/scales.hpp"
#include "vowelway/core/tessitura.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <algorithm>
#include <cmath>
#include <compare>
#include <cstdint>
#include <map>
#include <utility>

namespace vowelway::plan {

namespace {

// Landscapes are shared by pitches within this and loudnesses within half of that.
constexpr double pitch_step_cents = 5;
constexpr double loudness_step_db = 2.5;

// How much of a measurement's error all vowels of a singer share, as a share of the variance: what whisper
// and creak shift belongs to the singer, not to the vowel (Swerdlin, Smith & Wolfe 2010 give its scatter
// between singers); an average's deviation is part size of the body. Our judgement.
double shared_error(Singer const& singer) {
    if (singer.average) return 0.4;
    switch (singer.provenance.method) {
    case Method::whisper:
    case Method::creak:
        return 0.7;
    default:
        return 0;
    }
}

std::vector<std::pair<Vowel, acoustics::ResonanceSet>>
shapes_of(Singer const& singer, std::vector<VowelResonances> const& vowels, Frequency quarter) {
    std::vector<std::pair<Vowel, acoustics::ResonanceSet>> out;
    for (auto const& v : vowels) out.emplace_back(v.vowel.quality(), acoustics::resonance_set(v, quarter));
    for (auto const& v : singer.vowels) {
        bool const known =
            std::any_of(out.begin(), out.end(), [&](auto const& o) { return o.first == v.vowel.quality(); });
        if (!known) out.emplace_back(v.vowel.quality(), acoustics::resonance_set(v, quarter));
    }
    return out;
}

// A comfortable fifth above the lowest pitch, and an octave from there: where level comes by itself.
Pitch ease_pitch_of(PitchRange const& range, Tuning const& tuning) {
    return tuning.pitch(range.low) + semitones(7);
}

std::shared_ptr<PlanCache> cache_of(Means const& means) {
    if (means.cache) return {std::shared_ptr<PlanCache>(), means.cache}; // lent: nobody's to delete
    return std::make_shared<PlanCache>();
}

// What the change from one modified shape to the next, and holding one, take of the attention that leaving
// home takes: what is learnt is one shape for a phrase. Our judgement.
constexpr float change_of_shape = 0.25f, holding = 0.2f;

// A change of shape falls badly where fo meets fR1: there the folds are least sure (Titze, Riede & Popolo
// 2008). How much dearer leaving the vowel's own shape for one that follows fo is at the meeting itself; it
// comes over some semitones below. While the vowel goes on it stays as dear above, so that a line that will
// pass the meeting is prepared before it; where another syllable begins the mouth moves anyway, and it goes
// over some semitones above. So it does for bass, baritone and tenor, whose folds mind it little, and where a
// technique asks for a place of fR1. For a lower fR1 it is as dear everywhere. A choice, fitted to 4..5
// semitones (Sundberg 2009).
constexpr double change_while_sung = 4, change_with_vowel = 2.8, prepared_below = 4.5, settled_above = 3;
double change_at(Frequency r1, Pitch fo, bool goes_on) {
    double const st = in_semitones(interval(r1, fo.frequency()));
    if (goes_on) return change_while_sung * std::clamp(1 + st / prepared_below, 0.0, 1.0);
    return change_with_vowel * std::max(0.0, st < 0 ? 1 + st / prepared_below : 1 - st / settled_above);
}

} // namespace

struct Strategy::LandIndex {
    int cents, level; // steps from A4 = 440 Hz and from mezzo-forte
    static LandIndex of(Pitch pitch, Decibels loudness) {
        return {static_cast<int>(std::lround((pitch - Pitch(hertz(440))).value / pitch_step_cents)),
                static_cast<int>(std::lround(loudness.value / loudness_step_db))};
    }
    auto operator<=>(LandIndex const&) const = default;
};

Strategy::Strategy(Singer const& singer, Technique technique, std::vector<VowelResonances> const& vowels,
                   PitchRange const& range, Means const& means, std::string_view language)
    : executor_(&executor_of(means)),
      cache_(cache_of(means)), aim_{std::move(technique), ease_pitch_of(range, singer.tuning),
                                    Pitch(hertz(1))},
      source_(source_of(aim_.technique)), tract_(tract_length_of(singer, vowels)),
      quarter_(acoustics::quarter_wave(tract_)),
      space_(shapes_of(singer, vowels, quarter_), quarter_, signs_of(language), vowels.size()),
      mans_voice_(is_mans_voice(singer.voice)), shared_(shared_error(singer)) {
    if (mans_voice_) aim_.technique.stability = aim_.technique.stability_of_men;
    aim_.begins = Pitch(quarter_ * std::max(aim_.technique.begins, 0.01));
    for (double step : {-3.0, 0.0, 3.0})
        ease_.push_back(
            &cache_->shelves().landscape(aim_.ease_pitch + semitones(step), Decibels{0}, source_, quarter_));
    // The reachable sets are what takes longest; each is a matter of its own vowel.
    std::vector<std::shared_ptr<acoustics::ReachableSet const>> reach(vowels.size());
    std::vector<ShapeCosts> efforts(vowels.size());
    acoustics::ReachOptions options;
    options.farthest_up = semitones(grid_.high1);
    options.farthest_down = semitones(-grid_.low1);
    options.farthest_r2 = semitones(std::max(grid_.high2, -grid_.low2));
    executor_->run(vowels.size(), [&](std::size_t i) {
        auto own = options;
        if (singer.tract_length && !singer.average) own.length_sd = 0;
        own.cost = acoustics::usual_cost(vowels[i].vowel);
        for (std::size_t p = 0; p < own.cost.size(); ++p) own.cost[p] *= aim_.technique.gestures[p];
        reach[i] = cache_->shelves().reach.get(vowels[i], tract_, own);
        efforts[i] = efforts_of(grid_, *reach[i], aim_.technique);
    });
    // What no vowel reaches is left out of the grid: every table and every course is smaller for it.
    auto const whole = std::exchange(grid_, {0, 0, 0, 0});
    for (auto const& of_vowel : efforts) grid_ = around(grid_, within_reach(whole, of_vowel));
    for (std::size_t i = 0; i < vowels.size(); ++i) {
        auto const r1 = vowels[i].r1.centre, r2 = vowels[i].r2.centre;
        models_.push_back({vowels[i],
                           i,
                           {r1, r2, space_.entries()[i].spoken, level_at_ease(r1, r2), space_.borders(i)},
                           std::move(reach[i]),
                           cut_to(grid_, efforts[i], whole),
                           within_reach(whole, efforts[i])});
    }
}

Decibels Strategy::level_at_ease(Frequency r1, Frequency r2) const {
    Decibels sum{0};
    for (auto const* land : ease_) sum = sum + land->at(r1, r2).level;
    return sum / static_cast<double>(ease_.size());
}

Landscape const& Strategy::landscape(Pitch pitch, Decibels loudness) const {
    return landscape(LandIndex::of(pitch, loudness));
}

Landscape const& Strategy::landscape(LandIndex at) const {
    return cache_->shelves().landscape(Pitch(hertz(440)) + Cents{at.cents * pitch_step_cents},
                                       Decibels{at.level * loudness_step_db}, source_, quarter_);
}

Home Strategy::home_at(VowelModel const& model, Frequency r1, Frequency r2) const {
    // The listener knows this singer's vowel: its place moves with its resonances.
    auto home = model.home;
    auto const open = acoustics::bark(r1) - acoustics::bark(home.r1),
               front = acoustics::bark(r2) - acoustics::bark(home.r2);
    home.spoken.openness = home.spoken.openness + open;
    home.spoken.front = home.spoken.front + front;
    for (auto& border : home.borders) border.from += border.open * open.value + border.front * front.value;
    home.r1 = r1;
    home.r2 = r2;
    home.at_ease = level_at_ease(r1, r2);
    return home;
}

double Strategy::benefit(Duration length) { return std::clamp(std::sqrt(in_seconds(length)), 0.35, 1.6); }

StepCost Strategy::step_cost(Task const& task) const {
    float const per_r1 = static_cast<float>(aim_.technique.line) * static_cast<float>(task.line);
    auto const attention = static_cast<float>(aim_.technique.attention);
    auto const& home = models_[task.vowel].home;
    bool const goes_on = task.goes_on && !mans_voice_ && aim_.technique.relations.empty();
    auto const stay = std::max(holding, static_cast<float>(task.line == 0 ? 1 : task.stay)) * attention;
    float const leave = attention * static_cast<float>(1 + change_at(home.r1, task.pitch, goes_on));
    return {per_r1, 0.6f * per_r1,
            leave,  std::max(stay, change_of_shape * attention),
            stay,   attention * static_cast<float>(1 + change_with_vowel)};
}

std::vector<Landscape const*> Strategy::landscapes_of(std::vector<Task> const& tasks) const {
    std::map<LandIndex, std::size_t> known;
    std::vector<std::size_t> place; // of each task
    for (auto const& task : tasks)
        place.push_back(
            known.try_emplace(LandIndex::of(task.pitch, task.loudness), known.size()).first->second);
    std::vector<LandIndex> wanted(known.size());
    for (auto const& [index, at] : known) wanted[at] = index;
    std::vector<Landscape const*> lands(wanted.size()), out;
    executor_->run(wanted.size(), [&](std::size_t i) { lands[i] = &landscape(wanted[i]); });
    for (auto at : place) out.push_back(lands[at]);
    return out;
}

Strategy::Prepared Strategy::prepare(std::vector<Task> const& tasks) const {
    Prepared out;
    out.lands = landscapes_of(tasks);
    std::map<std::pair<Landscape const*, std::size_t>, std::size_t> known;
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto const& task = tasks[i];
        auto const [at, is_new] = known.try_emplace({out.lands[i], task.vowel}, out.tables.size());
        if (is_new) out.tables.emplace_back(out.lands[i], task.vowel);
        out.table_of.push_back(at->second);
        out.notes.push_back({nullptr, &models_[task.vowel].efforts, static_cast<float>(benefit(task.length)),
                             step_cost(task)});
    }
    return out;
}

std::vector<std::size_t> Strategy::course(Prepared const& prepared, std::vector<Home> const& homes) const {
    // Kept by the thread from draw to draw: to ask the system for that much anew takes as long as to fill it.
    static thread_local std::vector<ShapeCosts> heard;
    if (heard.size() < prepared.tables.size()) heard.resize(prepared.tables.size());
    for (std::size_t i = 0; i < prepared.tables.size(); ++i) {
        auto const [land, vowel] = prepared.tables[i];
        fill_heard(grid_, *land, homes[vowel], aim_, models_[vowel].within, heard[i]);
    }
    auto notes = prepared.notes;
    for (std::size_t i = 0; i < notes.size(); ++i) notes[i].heard = &heard[prepared.table_of[i]];
    return best_course(grid_, notes);
}

HeardCost Strategy::cost_of(Task const& task, std::size_t shape) const {
    return heard_cost(grid_, shape, landscape(task.pitch, task.loudness), models_[task.vowel].home, aim_);
}

// What a choice sounds like.
void Strategy::follow(Choice& choice, Landscape const& land, Home const& home) const {
    auto const kept = land.at(home.r1, home.r2);
    choice.heard_kept = choice.heard = kept.heard;
    choice.gain = {};
    if (choice.shape == grid_.home()) return;
    auto const moved = land.at(home.r1 * std::exp2(grid_.d1(choice.shape) / 12.0),
                               home.r2 * std::exp2(grid_.d2(choice.shape) / 12.0));
    choice.heard = moved.heard;
    choice.gain = moved.loudness - kept.loudness;
}

std::vector<Advice> Strategy::advise(std::vector<Task> const& tasks, Prepared const& prepared,
                                     std::vector<Home> const& homes,
                                     std::vector<std::uint16_t>* shapes) const {
    auto found = course(prepared, homes);
    leave_out_the_little(grid_, tasks, found);
    std::vector<Advice> out(tasks.size(), Advice::hold);
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto const& home = homes[tasks[i].vowel];
        if (shapes) shapes->push_back(static_cast<std::uint16_t>(found[i]));
        if (found[i] != grid_.home())
            out[i] = Advice::modify;
        else if (distance(prepared.lands[i]->at(home.r1, home.r2).heard, home.spoken) > drift_noticed)
            out[i] = Advice::migrate;
    }
    return out;
}

} // namespace vowelway::plan
