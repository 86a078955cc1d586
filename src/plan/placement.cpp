// SPDX-License-Identifier: MIT
#include "vowelway/plan/compare.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

constexpr double speed_of_sound = 35'000; // cm/s, warm and moist; Stevens (1998)
constexpr double length_exponent = 0.83;  // mean of fR1 and fR2; profiles/README.md
constexpr Length tube_sd = centimetres(0.8), comparison_sd = centimetres(1.2);
constexpr int enough_vowels = 3;

std::optional<Placement> place(Singer const& singer, Singer const& reference) {
    Placement out;
    out.voice = reference.voice;
    std::array<double, 3> sum{};
    std::array<int, 3> count{};
    double squares = 0;
    for (auto const& v : singer.vowels) {
        auto const* other = v.estimated ? nullptr : reference.find(v.vowel);
        if (!other || other->estimated) continue;
        ++out.vowels;
        for (std::size_t i = 0; i < sum.size(); ++i) {
            auto const mine = v.get({static_cast<int>(i) + 1}),
                       theirs = other->get({static_cast<int>(i) + 1});
            if (!mine || !theirs) continue;
            double const cents = interval(theirs->centre, mine->centre).value;
            double const z = cents / std::hypot(mine->sd_cents().value, theirs->sd_cents().value);
            sum[i] += cents, squares += z * z, ++count[i];
        }
    }
    if (out.vowels == 0) return std::nullopt;
    for (std::size_t i = 0; i < sum.size(); ++i)
        if (count[i] > 0) out.above[i] = Cents{sum[i] / count[i]};
    out.distance = std::sqrt(squares / (count[0] + count[1] + count[2]));
    return out;
}

std::optional<TractLength> from_upper_resonances(Singer const& singer) {
    double sum = 0, weights = 0;
    int vowels = 0;
    for (auto const& v : singer.vowels) {
        if (v.estimated || v.vowel.rhotic || !v.r3) continue; // an r-colour lowers fR3 by itself
        for (int k : {3, 4})
            if (auto const r = v.get({k})) {
                double const order = 2 * k - 1;
                sum += order * order * speed_of_sound / (4 * in_hertz(r->centre));
                weights += order;
            }
        ++vowels;
    }
    if (vowels < enough_vowels) return std::nullopt;
    return TractLength{centimetres(sum / weights), tube_sd, TractLength::From::upper_resonances, vowels};
}

} // namespace

std::vector<Placement> place_among(Singer const& singer, std::span<Singer const> references) {
    std::vector<Placement> out;
    for (auto const& reference : references)
        if (auto const placed = place(singer, reference)) out.push_back(*placed);
    std::stable_sort(out.begin(), out.end(),
                     [](Placement const& a, Placement const& b) { return a.distance < b.distance; });
    return out;
}

std::optional<TractLength> tract_length_of(Singer const& singer, std::span<Singer const> references) {
    if (singer.tract_length)
        return TractLength{*singer.tract_length, std::nullopt, TractLength::From::given, 0};
    if (auto const found = from_upper_resonances(singer)) return found;
    for (auto const& nearest : place_among(singer, references)) {
        auto const reference = std::find_if(references.begin(), references.end(),
                                            [&](Singer const& s) { return s.voice == nearest.voice; });
        if (!reference->tract_length) continue;
        double const cents = (nearest.above[0]->value + nearest.above[1]->value) / 2;
        return TractLength{*reference->tract_length * std::exp2(-cents / 1200 / length_exponent),
                           comparison_sd, TractLength::From::average_voices, nearest.vowels};
    }
    return std::nullopt;
}

} // namespace vowelway::plan
