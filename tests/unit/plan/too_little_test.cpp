// SPDX-License-Identifier: MIT
#include "plan/too_little.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::plan;

TEST_CASE("a change within a semitone is left out unless it leads to a larger one on the same vowel") {
    // By definition of what can be asked for (docs/strategy.md).
    ShapeGrid const grid;
    auto const home = grid.home(), width = static_cast<std::size_t>(grid.width2());
    auto const little = home + width + 1, large = home + 3 * width; // +1 in both; +3 in fR1
    REQUIRE(grid.d1(little) == 1);
    REQUIRE(grid.d1(large) == 3);
    auto const left = [&](std::vector<std::size_t> course, std::vector<std::size_t> const& vowels) {
        std::vector<Task> tasks(
            course.size(),
            Task{.vowel = 0, .pitch = Pitch(hertz(220)), .loudness = {}, .length = seconds(1)});
        for (std::size_t i = 0; i < tasks.size(); ++i) tasks[i].vowel = vowels[i];
        leave_out_the_little(grid, tasks, course);
        return course;
    };
    using Course = std::vector<std::size_t>;
    CHECK(left({home, little, little, home}, {0, 0, 0, 0}) == Course{home, home, home, home});
    CHECK(left({little, large, little}, {0, 0, 0}) == Course{little, large, little});
    CHECK(left({little, large}, {0, 1}) ==
          Course{home, large}); // another vowel's change prepares nothing here
    CHECK(left({large, home, little}, {0, 0, 0}) == Course{large, home, home});
    CHECK(left({}, {}).empty());
}
