// SPDX-License-Identifier: MIT
#include "plan/too_little.hpp"

#include <algorithm>
#include <cstdlib>

namespace vowelway::plan {

namespace {

// A change of both resonances by no more semitones than this is within what a singer repeats from take to
// take: nothing that can be asked for. A choice.
constexpr int too_little = 1;

} // namespace

void leave_out_the_little(ShapeGrid const& grid, std::vector<Task> const& tasks,
                          std::vector<std::size_t>& course) {
    for (std::size_t from = 0; from < course.size();) {
        std::size_t to = from;
        bool little = true;
        for (; to < course.size() && course[to] != grid.home() && tasks[to].vowel == tasks[from].vowel; ++to)
            little = little && std::abs(grid.d1(course[to])) <= too_little &&
                     std::abs(grid.d2(course[to])) <= too_little;
        if (little)
            std::fill(course.begin() + static_cast<std::ptrdiff_t>(from),
                      course.begin() + static_cast<std::ptrdiff_t>(to), grid.home());
        from = std::max(to, from + 1);
    }
}

} // namespace vowelway::plan
