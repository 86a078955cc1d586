// SPDX-License-Identifier: MIT
#include "analysis/pole_matching.hpp"

#include <cmath>
#include <limits>

namespace vowelway::analysis {
namespace {

// Prices in units of a squared standard deviation. Our judgement, tried on synthetic voices.
constexpr std::array missing_price{14.0, 14.0, 7.0};
constexpr double wide_price = 4.0;    // for a pole as wide as `widest`
constexpr double skipped_price = 5.0; // for an infinitely narrow pole left out between two chosen ones

constexpr double most_unlike = 18; // what costs so much more has odds of one to 8000

struct Search {
    std::vector<Pole> const& poles;
    Expectation const& expectation;
    double widest;
    std::optional<std::size_t> doubted{}; ///< this formant is not this pole
    Pole const* barred = nullptr;
    Match best{{}, std::numeric_limits<double>::infinity()};
    Match now{};

    bool candidate(Pole const& p) const {
        return in_hertz(p.bandwidth) > -50 && in_hertz(p.bandwidth) < widest && in_hertz(p.centre) > 80;
    }
    double price(Pole const& p, Expected const& e) const {
        double const away = std::log(in_hertz(p.centre) / in_hertz(e.centre)) / e.spread;
        double const width = in_hertz(p.bandwidth) / widest;
        return away * away + wide_price * width * width;
    }
    double left_out(std::size_t from, std::size_t to) const {
        double sum = 0;
        for (std::size_t k = from; k < to; ++k)
            if (candidate(poles[k])) {
                double const narrow = 1 - in_hertz(poles[k].bandwidth) / widest;
                sum += skipped_price * narrow * narrow;
            }
        return sum;
    }

    /// Chooses for formant k among the poles from `from`; `last` is one past the last chosen pole.
    void choose(std::size_t k, std::size_t from) {
        if (now.cost >= best.cost) return;
        if (k == 3) {
            best = now;
            return;
        }
        Match const before = now;
        for (std::size_t i = from; i < poles.size(); ++i) {
            if (!candidate(poles[i]) || (k == doubted && &poles[i] == barred)) continue;
            now.formants[k] = poles[i];
            now.cost =
                before.cost + price(poles[i], expectation.formants[k]) + (k > 0 ? left_out(from, i) : 0);
            choose(k + 1, i + 1);
            now = before;
        }
        now.cost += missing_price[k];
        choose(k + 1, from);
        now = before;
    }
};

} // namespace

Match match_poles(std::vector<Pole> const& poles, Expectation const& expectation, Frequency widest) {
    Search search{poles, expectation, in_hertz(widest)};
    search.choose(0, 0);
    return search.best;
}

double variance_of_choice(Match const& best, std::size_t k, std::vector<Pole> const& poles,
                          Expectation const& expectation, Frequency widest) {
    if (!best.formants[k]) return 0;
    auto const here = in_hertz(best.formants[k]->centre);
    Search search{poles, expectation, in_hertz(widest)};
    search.doubted = k;
    for (auto const& p : poles)
        if (in_hertz(p.centre) == here) search.barred = &p;
    search.best.cost = best.cost + most_unlike;
    search.choose(0, 0);
    if (search.best.cost >= best.cost + most_unlike) return 0;
    auto const& other = search.best.formants[k];
    double const away = in_hertz(other ? other->centre : expectation.formants[k].centre) - here;
    double const odds = std::exp((best.cost - search.best.cost) / 2);
    return odds / (1 + odds) * away * away;
}

} // namespace vowelway::analysis
