// SPDX-License-Identifier: MIT
#include "plan/strategy.hpp"

#include "vowelway/acoustics/scales.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <algorithm>
#include <cmath>
#include <compare>
#include <cstdint>
#include <map>
#include <numbers>

namespace vowelway::plan {

namespace {

// Landscapes are shared by pitches within this and loudnesses within half of that.
constexpr double pitch_step_cents = 5;
constexpr double loudness_step_db = 2.5;

// A small generator of our own: the same draws on every machine (the standard library's distributions
// differ).
class NormalDraws {
  public:
    explicit NormalDraws(std::uint64_t seed) : state_(seed) {}
    double next() {
        double const u = uniform(), v = uniform();
        return std::sqrt(-2 * std::log(u)) * std::cos(2 * std::numbers::pi * v); // Box & Muller 1958
    }

  private:
    double uniform() { // splitmix64 (Steele, Lea & Flood 2014)
        std::uint64_t z = (state_ += 0x9e3779b97f4a7c15u);
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        z ^= z >> 31;
        return (static_cast<double>(z >> 11) + 0.5) * 0x1p-53;
    }
    std::uint64_t state_;
};

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

Executor& executor_of(Means const& means) {
    static InlineExecutor inline_; // has no state
    return means.executor ? *means.executor : inline_;
}

std::shared_ptr<PlanCache> cache_of(Means const& means) {
    if (means.cache) return {std::shared_ptr<PlanCache>(), means.cache}; // lent: nobody's to delete
    return std::make_shared<PlanCache>();
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
                   PitchRange const& range, Means const& means)
    : executor_(&executor_of(means)),
      cache_(cache_of(means)), aim_{std::move(technique), ease_pitch_of(range, singer.tuning)},
      source_(source_of(aim_.technique)), tract_(tract_length_of(singer, vowels)),
      quarter_(acoustics::quarter_wave(tract_)),
      space_(shapes_of(singer, vowels, quarter_), quarter_, acoustics::speaking_pitch(quarter_)) {
    for (double step : {-3.0, 0.0, 3.0})
        ease_.push_back(
            &cache_->shelves().landscape(aim_.ease_pitch + semitones(step), Decibels{0}, source_, quarter_));
    // The reachable sets are what takes longest; each is a matter of its own vowel.
    std::vector<std::shared_ptr<acoustics::ReachableSet const>> reach(vowels.size());
    acoustics::ReachOptions options;
    options.farthest_up = semitones(grid_.high1);
    options.farthest_down = semitones(-grid_.low1);
    options.farthest_r2 = semitones(std::max(grid_.high2, -grid_.low2));
    executor_->run(vowels.size(), [&](std::size_t i) {
        reach[i] = cache_->shelves().reach.get(vowels[i], tract_, options);
    });
    for (std::size_t i = 0; i < vowels.size(); ++i) {
        auto const r1 = vowels[i].r1.centre, r2 = vowels[i].r2.centre;
        auto efforts = efforts_of(grid_, *reach[i], aim_.technique);
        models_.push_back({vowels[i],
                           i,
                           {r1, r2, space_.entries()[i].spoken, level_at_ease(r1, r2)},
                           std::move(reach[i]),
                           std::move(efforts)});
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
    home.spoken.openness = home.spoken.openness + (acoustics::bark(r1) - acoustics::bark(home.r1));
    home.spoken.front = home.spoken.front + (acoustics::bark(r2) - acoustics::bark(home.r2));
    home.r1 = r1;
    home.r2 = r2;
    home.at_ease = level_at_ease(r1, r2);
    return home;
}

std::vector<Home> Strategy::draw_homes(int draw) const {
    std::vector<Home> homes;
    for (std::size_t i = 0; i < models_.size(); ++i) {
        NormalDraws normal((static_cast<std::uint64_t>(draw) << 20) + i * 7919 + 1);
        auto const& r = models_[i].resonances;
        auto const drawn = [&](Resonance const& res) {
            return res.centre * std::exp(normal.next() * (res.sd / res.centre));
        };
        auto const r1 = drawn(r.r1), r2 = drawn(r.r2);
        homes.push_back(home_at(models_[i], r1, std::max(r2, 1.15 * r1)));
    }
    return homes;
}

double Strategy::benefit(Duration length) { return std::clamp(std::sqrt(in_seconds(length)), 0.35, 1.6); }

StepCost Strategy::step_cost(Task const& task) const {
    float const per_r1 = static_cast<float>(aim_.technique.line) * static_cast<float>(task.line);
    return {per_r1, 0.6f * per_r1};
}

// What all draws share: which landscape each task lies in, and which tables of (landscape, vowel) there are.
struct Strategy::Prepared {
    std::vector<Landscape const*> lands;                          // of each task
    std::vector<std::size_t> table_of;                            // of each task
    std::vector<std::pair<Landscape const*, std::size_t>> tables; // landscape and vowel
    std::vector<CourseNote> notes;                                // all but what is heard
};

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

std::vector<Choice> Strategy::solve(std::vector<Task> const& tasks, Prepared const& prepared,
                                    std::vector<Home> const& homes) const {
    std::vector<ShapeCosts> heard(prepared.tables.size());
    for (std::size_t i = 0; i < heard.size(); ++i) {
        auto const [land, vowel] = prepared.tables[i];
        fill_heard(grid_, *land, homes[vowel], aim_, heard[i]);
    }
    auto notes = prepared.notes;
    for (std::size_t i = 0; i < notes.size(); ++i) notes[i].heard = &heard[prepared.table_of[i]];
    auto const course = best_course(grid_, notes);
    std::vector<Choice> out(tasks.size());
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto const& home = homes[tasks[i].vowel];
        auto const& land = *prepared.lands[i];
        auto& choice = out[i];
        choice.shape = course[i];
        auto const kept = land.at(home.r1, home.r2);
        choice.heard_kept = choice.heard = kept.heard;
        if (choice.shape != grid_.home()) {
            auto const moved = land.at(home.r1 * std::exp2(grid_.d1(choice.shape) / 12.0),
                                       home.r2 * std::exp2(grid_.d2(choice.shape) / 12.0));
            choice.heard = moved.heard;
            choice.gain = moved.loudness - kept.loudness;
            choice.advice = Advice::modify;
        } else if (distance(kept.heard, home.spoken) > drift_noticed) {
            choice.advice = Advice::migrate;
        }
    }
    return out;
}

Decisions Strategy::decide(std::vector<Task> const& tasks, int draws) const {
    auto const prepared = prepare(tasks);
    std::vector<Home> homes;
    for (auto const& model : models_) homes.push_back(model.home);
    Decisions out{solve(tasks, prepared, homes), std::vector<std::vector<Advice>>(draws)};
    executor_->run(out.drawn.size(), [&](std::size_t draw) {
        for (auto const& choice : solve(tasks, prepared, draw_homes(static_cast<int>(draw))))
            out.drawn[draw].push_back(choice.advice);
    });
    for (std::size_t i = 0; i < out.choices.size() && draws > 0; ++i) {
        auto& choice = out.choices[i];
        auto const same = std::count_if(out.drawn.begin(), out.drawn.end(),
                                        [&](auto const& d) { return d[i] == choice.advice; });
        choice.certainty = static_cast<double>(same) / draws;
    }
    return out;
}

} // namespace vowelway::plan
