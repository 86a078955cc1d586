// SPDX-License-Identifier: MIT
#include "acoustics/reach_search.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::acoustics {

ReachableSet::Search::Search(ReachableSet& set)
    : set_(set), body_(*set.body_), grid_(set.options_.step.value / 1200), postures_{body_.mouth.home()} {
    set_.shapes_.push_back({body_.own, {}, 0, body_.own.r1() * body_.compliant_ratio});
    set_.index_[set_.cell(0, 0)] = 0;
    for (int i = -set_.down_; i <= set_.up_; ++i)
        for (int j = -set_.aside_; j <= set_.aside_; ++j)
            if (i || j) order_.emplace_back(i, j);
    std::stable_sort(order_.begin(), order_.end(), [](auto a, auto b) {
        return std::hypot(a.first, a.second) < std::hypot(b.first, b.second);
    });
}

std::pair<double, double> ReachableSet::Search::factors(int i, int j) const {
    return {std::exp2(grid_ * i), std::exp2(grid_ * j)};
}

bool ReachableSet::Search::worth_trying(int i, int j) const {
    auto const [factor1, factor2] = factors(i, j);
    auto const r1 = body_.own.r1() * factor1, r2 = body_.own.r2() * factor2;
    return open(i, j) && !(r1 > body_.highest_r1 || r1 < hertz(180) || r2.value() < r1.value() * 1.15);
}

std::vector<int> ReachableSet::Search::starts(int i, int j, bool all) const {
    std::vector<int> out;
    auto const consider = [&](int a, int b) {
        if (auto const* shape = set_.at(a, b)) {
            int const k = static_cast<int>(shape - set_.shapes_.data());
            if (std::find(out.begin(), out.end(), k) == out.end()) out.push_back(k);
        }
    };
    int const ni = i - (i > 0) + (i < 0), nj = j - (j > 0) + (j < 0);
    for (auto [a, b] : {std::pair{ni, nj}, {ni, j}, {i, nj}}) consider(a, b);
    if (all)
        for (int a = i - 1; a <= i + 1; ++a)
            for (int b = j - 1; b <= j + 1; ++b) consider(a, b);
    std::stable_sort(out.begin(), out.end(),
                     [&](int a, int b) { return set_.shapes_[a].effort < set_.shapes_[b].effort; });
    if (out.size() > 2) out.resize(2);
    return out;
}

std::optional<ReachableSet::Search::Found> ReachableSet::Search::solve(int i, int j,
                                                                       std::vector<int> const& from) const {
    auto const [factor1, factor2] = factors(i, j);
    std::optional<Found> best;
    for (int const start : from) {
        auto posture = body_.mouth.towards(postures_[start], factor1, factor2, set_.options_.cost,
                                           0.2 * grid_ * std::log(2.0), 6);
        if (!posture) continue;
        auto const shape = body_.shape_of(*posture);
        if (!best || shape.effort < best->shape.effort) best = Found{std::move(*posture), shape};
        // A second start only when the first leads nowhere or into a much more strained posture, which
        // Newton's method can end in.
        if (best->shape.effort < set_.shapes_[start].effort + 0.8) break;
    }
    return best;
}

void ReachableSet::Search::keep(int i, int j, Found found) {
    set_.index_[set_.cell(i, j)] = static_cast<int>(set_.shapes_.size());
    set_.shapes_.push_back(found.shape);
    postures_.push_back(std::move(found.posture));
}

void ReachableSet::Search::follow_neighbours(bool all) {
    for (auto [i, j] : order_)
        if (worth_trying(i, j))
            if (auto found = solve(i, j, starts(i, j, all))) keep(i, j, std::move(*found));
}

std::optional<ReachableSet::Search::Found> ReachableSet::Search::between(int i, int j, int di, int dj) const {
    auto const *before = set_.at(i - di, j - dj), *after = set_.at(i + di, j + dj);
    if (!before || !after) return std::nullopt;
    GestureVector middle;
    for (std::size_t p = 0; p < middle.size(); ++p) middle[p] = (before->gesture[p] + after->gesture[p]) / 2;
    auto posture = body_.mouth.moved(postures_[before - set_.shapes_.data()], middle);
    if (!posture || posture->poles.size() < 2) return std::nullopt;
    auto const shape = body_.shape_of(*posture);
    auto const off = [&](Frequency got, Frequency wanted) {
        return std::abs(interval(wanted, got).value) / set_.options_.step.value;
    };
    auto const [factor1, factor2] = factors(i, j);
    if (off(shape.resonances.r1(), body_.own.r1() * factor1) > 0.25 ||
        off(shape.resonances.r2(), body_.own.r2() * factor2) > 0.25)
        return std::nullopt;
    return Found{std::move(*posture), shape};
}

void ReachableSet::Search::fill_gaps() {
    for (auto [i, j] : order_) {
        for (auto [di, dj] : {std::pair{1, 0}, {0, 1}}) {
            if (!open(i, j)) break;
            if (auto found = between(i, j, di, dj)) keep(i, j, std::move(*found));
        }
    }
}

} // namespace vowelway::acoustics
