// SPDX-License-Identifier: MIT
// The right number on the right vowel: lists in a wrong order, speech, and what is no vowel.
#include "analysis/assignment.hpp"
#include "support/takes.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>

using namespace vowelway;
using namespace vowelway::analysis;

TEST_CASE("the cheapest assignment is that of all permutations tried one by one") {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> unit(-1, 1);
    for (std::size_t n = 1; n <= 6; ++n)
        for (int round = 0; round < 20; ++round) {
            std::vector<std::vector<double>> cost(n, std::vector<double>(n));
            for (auto& row : cost)
                for (auto& c : row) c = unit(random);
            auto const total = [&](std::vector<std::size_t> const& columns) {
                double sum = 0;
                for (std::size_t row = 0; row < n; ++row) sum += cost[row][columns[row]];
                return sum;
            };
            std::vector<std::size_t> order(n);
            std::iota(order.begin(), order.end(), std::size_t{0});
            double least = total(order);
            while (std::next_permutation(order.begin(), order.end())) least = std::min(least, total(order));
            CHECK(total(cheapest_assignment(cost)) == doctest::Approx(least).epsilon(1e-9));
        }
}

TEST_CASE("labels in a wrong order: the right one is named, and no wrongly labelled take gives a number") {
    for (auto const kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung}) {
        auto const sounds = takes::five(kind, kind == ProbeKind::creak ? 40 : 120, 35, 2);
        auto const right = measure({sounds}, takes::request());
        CHECK(!right.order);
        CHECK(right.vowels.size() == 5);
        for (auto const* list : {"u ɔ ɑ ɛ i", "ɛ i ɑ ɔ u", "i ɑ ɛ ɔ u", "ɑ ɛ i ɔ u"}) {
            CAPTURE(list);
            auto const m = measure({sounds}, takes::request(list));
            REQUIRE(m.order);
            CHECK(m.order->sure);
            CHECK(m.order->probability > 0.99);
            auto const labels = parse_vowels(list);
            for (std::size_t i = 0; i < 5; ++i) {
                auto const truth = parse_vowel(takes::men[i].vowel);
                if (labels[i] == truth) continue;
                CHECK(!m.takes[i].usable());
                auto const at = std::find(m.order->listed.begin(), m.order->listed.end(), labels[i]);
                REQUIRE(at != m.order->listed.end());
                CHECK(m.order->better[static_cast<std::size_t>(at - m.order->listed.begin())] == truth);
            }
        }
    }
}

TEST_CASE("a singer whose vowels all lie a seventh part higher is not told that the order is wrong") {
    std::mt19937 random(3);
    std::vector<takes::make::Samples> all;
    for (auto m : takes::men) {
        for (auto& f : m.formants) f *= 1.15;
        all.push_back(takes::take(m, ProbeKind::creak, 40, random));
    }
    auto const m = measure({takes::recording(all, 35, random)}, takes::request());
    CHECK((!m.order || !m.order->sure));
}

TEST_CASE("where most sounds are not the vowels listed, the one that happens to fit gives no number") {
    std::mt19937 random(4);
    auto const& i = takes::men[0];
    auto const& open = takes::men[2];
    takes::Said const nothing{"x", {1000, 3300, 4200}}; // no vowel of a man
    std::vector<takes::make::Samples> const all{takes::take(nothing, ProbeKind::creak, 40, random),
                                                takes::take(open, ProbeKind::creak, 40, random),
                                                takes::take(nothing, ProbeKind::creak, 45, random)};
    auto const m = measure({takes::recording(all, 35, random)}, takes::request("i ɑ u"));
    CHECK(m.vowels.empty());
    std::vector<takes::make::Samples> const good{takes::take(i, ProbeKind::creak, 40, random),
                                                 takes::take(open, ProbeKind::creak, 40, random)};
    CHECK(measure({takes::recording(good, 35, random)}, takes::request("i ɑ")).vowels.size() == 2);
}
