// SPDX-License-Identifier: MIT
// Draws of the resonances over their deviations, and what they have in common.
#include "plan/prepared.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numbers>

namespace vowelway::plan {

namespace {

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

} // namespace

std::vector<Home> Strategy::draw_homes(int draw) const {
    auto const seed = static_cast<std::uint64_t>(draw) << 20;
    NormalDraws common(seed + 0xfffff);
    double const common1 = std::sqrt(shared_) * common.next(), common2 = std::sqrt(shared_) * common.next();
    double const own_part = std::sqrt(1 - shared_);
    std::vector<Home> homes;
    for (std::size_t i = 0; i < models_.size(); ++i) {
        NormalDraws normal(seed + i * 7919 + 1);
        auto const& r = models_[i].resonances;
        auto const drawn = [&](Resonance const& res, double shared) {
            return res.centre * std::exp((shared + own_part * normal.next()) * (res.sd / res.centre));
        };
        auto const r1 = drawn(r.r1, common1), r2 = drawn(r.r2, common2);
        homes.push_back(home_at(models_[i], r1, std::max(r2, 1.15 * r1)));
    }
    return homes;
}

// Of the shapes that the draws which modify choose for a task, the one nearest to all others.
std::size_t Strategy::middle_shape(std::size_t task,
                                   std::vector<std::vector<std::uint16_t>> const& shapes) const {
    std::vector<std::size_t> moved;
    for (auto const& of_draw : shapes)
        if (of_draw[task] != grid_.home()) moved.push_back(of_draw[task]);
    auto const away = [&](std::size_t s) {
        int sum = 0;
        for (auto other : moved)
            sum += std::abs(grid_.d1(s) - grid_.d1(other)) + std::abs(grid_.d2(s) - grid_.d2(other));
        return sum;
    };
    return *std::min_element(moved.begin(), moved.end(), [&](auto a, auto b) { return away(a) < away(b); });
}

Decisions Strategy::decide(std::vector<Task> const& tasks, int draws, std::size_t strips) const {
    auto const prepared = prepare(tasks);
    std::vector<Task> const sung(tasks.begin() + static_cast<std::ptrdiff_t>(strips), tasks.end());
    auto const strip_draws = std::min(draws, std::max(50, draws / 4));
    auto const prepared_sung = strip_draws < draws ? prepare(sung) : Prepared{};
    std::vector<Home> homes;
    for (auto const& model : models_) homes.push_back(model.home);
    std::vector<std::uint16_t> best;
    auto const nominal = advise(tasks, prepared, homes, &best);
    Decisions out{std::vector<Choice>(tasks.size()),
                  std::vector<std::vector<Advice>>(static_cast<std::size_t>(draws)),
                  static_cast<std::size_t>(strip_draws)};
    std::vector<std::vector<std::uint16_t>> shapes(out.drawn.size());
    executor_->run(out.drawn.size(), [&](std::size_t draw) {
        auto const drawn_homes = draw_homes(static_cast<int>(draw));
        if (draw < out.strip_draws) {
            out.drawn[draw] = advise(tasks, prepared, drawn_homes, &shapes[draw]);
            return;
        }
        // The strips keep their place, so that a task has one index everywhere.
        shapes[draw].assign(strips, static_cast<std::uint16_t>(grid_.home()));
        auto const advice = advise(sung, prepared_sung, drawn_homes, &shapes[draw]);
        out.drawn[draw].assign(strips, Advice::hold);
        out.drawn[draw].insert(out.drawn[draw].end(), advice.begin(), advice.end());
    });
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto& choice = out.choices[i];
        auto const of = i < strips ? out.strip_draws : out.drawn.size();
        std::array<int, 3> count{};
        for (std::size_t draw = 0; draw < of; ++draw) ++count[static_cast<std::size_t>(out.drawn[draw][i])];
        // Decided means decided: the likeliest advice, the one for the vowels as measured among equals.
        choice.advice = nominal[i];
        for (auto advice : {Advice::hold, Advice::migrate, Advice::modify})
            if (count[static_cast<std::size_t>(advice)] > count[static_cast<std::size_t>(choice.advice)])
                choice.advice = advice;
        choice.shape = choice.advice != Advice::modify ? grid_.home() : best[i];
        if (choice.advice == Advice::modify && choice.shape == grid_.home())
            choice.shape = middle_shape(i, shapes);
        auto const share = [&](Advice advice) {
            if (draws == 0) return advice == choice.advice ? 1.0 : 0.0;
            return static_cast<double>(count[static_cast<std::size_t>(advice)]) / static_cast<double>(of);
        };
        choice.shares = {share(Advice::hold), share(Advice::migrate), share(Advice::modify)};
        choice.certainty = choice.shares.of(choice.advice);
        follow(choice, *prepared.lands[i], homes[tasks[i].vowel]);
    }
    return out;
}

} // namespace vowelway::plan
