// SPDX-License-Identifier: MIT
// Songs and singers seen together.
#include "vowelway/core/error.hpp"
#include "vowelway/plan/overview.hpp"

#include <doctest/doctest.h>

#include <algorithm>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

PlanRecord record(std::string song, std::string singer, int transpose, double need, double median = 70) {
    PlanRecord r;
    r.key = {song, singer, "classical", transpose};
    r.title = "title of " + song;
    r.name = singer;
    for (auto& figure : r.figures) figure = 0.1;
    r.figures[static_cast<std::size_t>(Figure::need)] = need;
    r.figures[static_cast<std::size_t>(Figure::need_high)] = need - 0.05;
    r.figures[static_cast<std::size_t>(Figure::median_key)] = median;
    return r;
}

} // namespace

TEST_CASE("each song in its best key for each singer, the least needy song first") {
    auto broken = record("c", "anna", 0, 0);
    broken.error = "it is broken";
    auto const overview =
        overview_of({record("a", "anna", -1, 0.5), record("a", "anna", 0, 0.9), record("a", "bert", 0, 0.7),
                     record("b", "anna", 0, 0.2), record("b", "anna", 1, 0.3), broken});
    CHECK(overview.singers == std::vector<std::string>{"anna", "bert"});
    REQUIRE(overview.songs.size() == 3);
    CHECK(overview.songs[0].song == "b");
    CHECK_FALSE(overview.songs[0].of[1]); // bert was not asked
    CHECK(overview.songs[1].of[0]->best == -1);
    CHECK(overview.songs[1].of[0]->need == doctest::Approx(0.5));
    CHECK(overview.songs[1].of[0]->need_as_is == doctest::Approx(0.9));
    CHECK(overview.songs[1].of[0]->why == "lies high");
    CHECK(overview.songs[1].need == doctest::Approx(0.6));
    CHECK(overview.songs[2].error == "it is broken");
}

TEST_CASE("an average is called by its voice type") {
    auto r = record("a", "tenor", 0, 0.1);
    r.name = "Average tenor as sung";
    r.voice = "tenor";
    CHECK(overview_of({r}).singers.front() == "tenor");
}

TEST_CASE("songs that lie alike are near") {
    auto const records = std::vector{record("a", "anna", 0, 0.2, 70), record("like", "anna", 0, 0.21, 70.5),
                                     record("other", "anna", 0, 0.8, 76)};
    auto const near = songs_like(records, "a");
    REQUIRE(near.size() == 2);
    CHECK(near[0].song == "like");
    CHECK(near[0].distance < near[1].distance);
    CHECK_THROWS_AS(songs_like(records, "none"), InputError);
}

TEST_CASE("every figure has a name of its own") {
    auto const& names = figure_names();
    for (std::size_t i = 0; i < names.size(); ++i) {
        CHECK_FALSE(names[i].name.empty());
        CHECK(names[i].step > 0);
        for (std::size_t k = 0; k < i; ++k) CHECK(names[i].name != names[k].name);
    }
    CHECK(names[static_cast<std::size_t>(Figure::need)].name == "need");
    CHECK(names[static_cast<std::size_t>(Figure::text)].name == "text");
    CHECK(names[static_cast<std::size_t>(Figure::need_vowels)].name == "need_vowels");
}
