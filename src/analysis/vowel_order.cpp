// SPDX-License-Identifier: MIT
#include "analysis/vowel_order.hpp"

#include "analysis/assignment.hpp"
#include "analysis/median.hpp"
#include "analysis/pole_matching.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

// Our choice, tried on synthetic singers (bench/measure_conditions.cpp order).
constexpr double common_share = 0.5; // of the expectation's variance that all vowels of a recording share
constexpr double least_away = 0.04;  // ln F: no vowel is nearer to where it is due
constexpr double most_price = 16;    // of one formant: an outlier counts no more
constexpr double sure_at = 5, worth_saying_at = 2; // ln of odds
constexpr int rounds = 4;

using Fits = std::vector<std::vector<VowelFit>>;
using Order = std::vector<std::size_t>; // vowel of each label
using Common = std::array<double, 2>;   // ln F by which all vowels lie off

double own_variance(double spread) { return (1 - common_share) * spread * spread + least_away * least_away; }
double common_variance(double spread) { return common_share * spread * spread; }

double price(VowelFit const& f, Common const& common) {
    double sum = f.cost;
    for (std::size_t k = 0; k < 2; ++k) {
        double const variance = own_variance(f.spread[k]);
        if (f.away[k]) sum += std::min(std::pow(*f.away[k] - common[k], 2) / variance, most_price);
        sum += std::log(variance);
    }
    return sum;
}

class Orders {
  public:
    /// `label`: of each take, or none.
    Orders(Fits const& fits, std::vector<std::size_t> const& label, std::size_t labels)
        : fits_(fits), label_(label), labels_(labels) {}

    /// The common shift that suits an order best; half a spread of it is usual.
    Common common_of(Order const& order) const {
        Common common{};
        for (std::size_t k = 0; k < 2; ++k) {
            double weights = 0, sum = 0, prior = 0;
            int count = 0;
            for (std::size_t i = 0; i < fits_.size(); ++i) {
                if (fits_[i].empty()) continue;
                auto const& f = fits_[i][order[label_[i]]];
                prior += common_variance(f.spread[k]), ++count;
                double const variance = own_variance(f.spread[k]);
                if (!f.away[k] || *f.away[k] * *f.away[k] > most_price * variance) continue;
                weights += 1 / variance, sum += *f.away[k] / variance;
            }
            if (count > 0) common[k] = sum / (weights + count / prior);
        }
        return common;
    }

    std::vector<std::vector<double>> prices(Common const& common) const {
        std::vector<std::vector<double>> all(labels_, std::vector<double>(labels_, 0.0));
        std::vector<int> takes(labels_, 0);
        for (std::size_t i = 0; i < fits_.size(); ++i) {
            if (fits_[i].empty()) continue;
            ++takes[label_[i]];
            for (std::size_t v = 0; v < labels_; ++v) all[label_[i]][v] += price(fits_[i][v], common);
        }
        for (std::size_t l = 0; l < labels_; ++l) // repeats are not independent: their mean counts
            for (auto& p : all[l]) p /= std::max(takes[l], 1);
        return all;
    }

    double cost_of(Order const& order) const {
        auto const all = prices(common_of(order));
        double sum = 0;
        for (std::size_t l = 0; l < labels_; ++l) sum += all[l][order[l]];
        return sum;
    }

    Order best_from(Order order) const {
        for (int round = 0; round < rounds; ++round) {
            auto next = cheapest_assignment(prices(common_of(order)));
            if (next == order) break;
            order = std::move(next);
        }
        return order;
    }

  private:
    Fits const& fits_;
    std::vector<std::size_t> const& label_;
    std::size_t labels_;
};

Order as_listed(std::size_t labels) {
    Order order(labels);
    for (std::size_t l = 0; l < labels; ++l) order[l] = l;
    return order;
}

std::string joined(std::vector<Vowel> const& vowels) {
    std::string text;
    for (auto const& v : vowels) text += (text.empty() ? "" : " ") + v.ipa();
    return text;
}

std::string odds_in_words(double odds) {
    char text[40];
    std::snprintf(text, sizeof text, "%.0f", std::min(std::exp(odds), 9999.0));
    return worded("{0} to 1", text);
}

void refuse(Measurements& m, OrderFound const& found) {
    for (auto& t : m.takes)
        for (std::size_t i = 0; i < found.listed.size(); ++i)
            if (t.excitation.evidence != ByKind{} && t.vowel.quality() == found.listed[i].quality()) {
                t.unlike = true;
                t.refused = worded("it is listed as /{0}/ but sounds like /{1}/: list the vowels in the "
                                   "order they were said, "
                                   "or give the times with --cues",
                                   found.listed[i].ipa(), found.better[i].ipa());
            }
}

} // namespace

VowelFit fit_of(Looks const& looks, Expectation const& expectation, ProbeKind kind) {
    // With zeros taken out nearly any order can be made to fit: it is asked of the sound as it is.
    auto const& plain = looks.as_it_is();
    VowelFit fit;
    std::vector<double> costs;
    std::array<std::vector<double>, 2> away;
    for (auto const& look : plain) {
        auto const match = match_poles(look.poles, expectation, widest_formant(kind));
        double cost = match.cost;
        for (std::size_t k = 0; k < 2; ++k)
            if (auto const& pole = match.formants[k]) {
                auto const& due = expectation.formants[k];
                double const a = std::log(in_hertz(pole->centre) / in_hertz(due.centre));
                away[k].push_back(a);
                cost -= a * a / (due.spread * due.spread);
            }
        costs.push_back(cost);
    }
    fit.cost = costs.empty() ? 0 : upper_median(std::move(costs));
    for (std::size_t k = 0; k < 2; ++k) {
        fit.spread[k] = expectation.formants[k].spread;
        if (2 * away[k].size() > plain.size()) fit.away[k] = upper_median(std::move(away[k]));
    }
    return fit;
}

std::vector<Vowel> labels_of(std::vector<Take> const& takes) {
    std::vector<Vowel> labels;
    for (auto const& t : takes)
        if (std::none_of(labels.begin(), labels.end(),
                         [&](Vowel const& v) { return v.quality() == t.vowel.quality(); }))
            labels.push_back(t.vowel);
    return labels;
}

void settle_order(Measurements& m, std::vector<Recording> const& recordings, std::vector<Vowel> const& labels,
                  std::vector<std::vector<VowelFit>> const& fits) {
    if (labels.size() < 2) return;
    std::vector<std::size_t> label;
    for (auto const& t : m.takes) {
        auto const at = std::find_if(labels.begin(), labels.end(),
                                     [&](Vowel const& v) { return v.quality() == t.vowel.quality(); });
        label.push_back(static_cast<std::size_t>(at - labels.begin()));
    }
    Orders const orders(fits, label, labels.size());
    auto const listed = as_listed(labels.size());
    auto best = orders.best_from(listed);
    for (auto const& start : {cheapest_assignment(orders.prices({}))})
        if (auto other = orders.best_from(start); orders.cost_of(other) < orders.cost_of(best))
            best = std::move(other);
    double const odds = (orders.cost_of(listed) - orders.cost_of(best)) / 2;
    if (best == listed || odds < worth_saying_at) return;
    OrderFound found;
    std::vector<Vowel> order;
    for (std::size_t l = 0; l < labels.size(); ++l) {
        order.push_back(labels[best[l]]);
        if (best[l] != l) found.listed.push_back(labels[l]), found.better.push_back(labels[best[l]]);
    }
    found.probability = 1 / (1 + std::exp(-odds));
    found.sure = odds >= sure_at;
    auto const of = recordings.size() == 1 ? recordings.front().name : worded("the recordings");
    m.remarks.push_back(
        {Remark::Kind::caution,
         found.sure ? worded("{0}: the sounds fit the order \"{1}\" better than the one listed ({2})", of,
                             joined(order), odds_in_words(odds))
                    : worded("{0}: the sounds might be in the order \"{1}\" better than the one "
                             "listed ({2})",
                             of, joined(order), odds_in_words(odds))});
    if (found.sure) refuse(m, found);
    m.order = std::move(found);
}

} // namespace vowelway::analysis
