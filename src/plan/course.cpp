// SPDX-License-Identifier: MIT
#include "plan/course.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numeric>

namespace vowelway::plan {

namespace {

// A preference far below any real cost that settles ties toward home.
float tie_break(ShapeGrid const& grid, std::size_t i) {
    return 1e-6f * static_cast<float>(std::abs(grid.d1(i)) + std::abs(grid.d2(i)));
}

// Lowers value[j] to value[i] + cost wherever that is less, and remembers i's source.
inline void relax(float* value, std::uint16_t* source, std::size_t j, std::size_t i, float cost) {
    float const through = value[i] + cost;
    bool const better = through < value[j];
    value[j] = better ? through : value[j];
    source[j] = better ? source[i] : source[j];
}

constexpr float far_away = 1e20f;

float way_home(ShapeGrid const& grid, StepCost step, std::size_t s) {
    return step.per_r1 * static_cast<float>(std::abs(grid.d1(s))) +
           step.per_r2 * static_cast<float>(std::abs(grid.d2(s)));
}

float leaving(ShapeGrid const& grid, StepCost step, std::size_t s) {
    return grid.d1(s) > 0 ? step.leave : step.leave_down;
}

// From a shape with fR1 at home or above to one below it, and from one at home or below to one above: not
// cheaper than leaving home for there.
float lowering(StepCost step) { return std::max(0.0f, step.leave_down - step.change); }
float raising(StepCost step) { return std::max(0.0f, step.leave - step.change); }

// value[s] becomes min over r of value[r] + step distance (r, s); source[s] the r.
void spread(ShapeGrid const& grid, StepCost step, float* value, std::uint16_t* source) {
    auto const rows = static_cast<std::size_t>(grid.width1()),
               columns = static_cast<std::size_t>(grid.width2());
    auto const below_home = static_cast<std::size_t>(-1 - grid.low1), above_home = below_home + 2;
    for (std::size_t r = 1; r < rows; ++r) {
        float const up = step.per_r1 + (r == above_home ? raising(step) : 0);
        for (std::size_t c = 0; c < columns; ++c)
            relax(value, source, r * columns + c, (r - 1) * columns + c, up);
    }
    for (std::size_t r = rows - 1; r-- > 0;) {
        float const down = step.per_r1 + (r == below_home ? lowering(step) : 0);
        for (std::size_t c = 0; c < columns; ++c)
            relax(value, source, r * columns + c, (r + 1) * columns + c, down);
    }
    for (std::size_t r = 0; r < rows; ++r) {
        for (std::size_t c = 1; c < columns; ++c)
            relax(value, source, r * columns + c, r * columns + c - 1, step.per_r2);
        for (std::size_t c = columns - 1; c-- > 0;)
            relax(value, source, r * columns + c, r * columns + c + 1, step.per_r2);
    }
}

// The same with what leaving home, changing and staying cost. `was` is room for the values before.
void step_to(ShapeGrid const& grid, StepCost step, std::vector<float>& value, std::vector<float>& was,
             std::uint16_t* source) {
    was = value;
    auto const home = grid.home();
    value[home] = far_away;
    spread(grid, step, value.data(), source);
    for (std::size_t s = 0; s < value.size(); ++s) {
        if (s == home) continue;
        float const stayed = was[s] + step.stay,
                    left = was[home] + way_home(grid, step, s) + leaving(grid, step, s);
        value[s] += step.change;
        if (stayed <= value[s]) value[s] = stayed, source[s] = static_cast<std::uint16_t>(s);
        if (left <= value[s]) value[s] = left, source[s] = static_cast<std::uint16_t>(home);
    }
    if (was[home] <= value[home]) value[home] = was[home], source[home] = static_cast<std::uint16_t>(home);
}

} // namespace

double step_cost(ShapeGrid const& grid, StepCost const& step, std::size_t from, std::size_t to) {
    if (from == to) return to == grid.home() ? 0 : double{step.stay};
    double const way = double{step.per_r1} * std::abs(grid.d1(to) - grid.d1(from)) +
                       double{step.per_r2} * std::abs(grid.d2(to) - grid.d2(from));
    if (to == grid.home()) return way;
    if (from == grid.home()) return way + double{leaving(grid, step, to)};
    bool const lowered = grid.d1(from) >= 0 && grid.d1(to) < 0;
    bool const raised = grid.d1(from) <= 0 && grid.d1(to) > 0;
    return way + double{step.change} + double{lowered ? lowering(step) : raised ? raising(step) : 0.0f};
}

std::vector<std::size_t> best_course(ShapeGrid const& grid, std::span<CourseNote const> notes) {
    std::size_t const count = notes.size(), shapes = grid.size();
    if (count == 0) return {};
    std::vector<float> ties(shapes), value(shapes, far_away), was;
    value[grid.home()] = 0;
    for (std::size_t s = 0; s < shapes; ++s) ties[s] = tie_break(grid, s);
    static thread_local std::vector<std::uint16_t>
        back; // kept by the thread, as large as the longest passage
    if (back.size() < count * shapes) back.resize(count * shapes);
    for (std::size_t n = 0; n < count; ++n) {
        auto* const source = back.data() + n * shapes;
        std::iota(source, source + shapes, std::uint16_t{0});
        // Only differences matter: taking the least off keeps a float exact enough over any length.
        float const least = *std::min_element(value.begin(), value.end());
        for (float& v : value) v -= least;
        step_to(grid, notes[n].step, value, was, source);
        float const* const heard = notes[n].heard->data();
        float const* const fixed = notes[n].fixed->data();
        float const benefit = notes[n].benefit;
        for (std::size_t s = 0; s < shapes; ++s) value[s] += benefit * heard[s] + fixed[s] + ties[s];
    }
    std::vector<std::size_t> course(count);
    course[count - 1] =
        static_cast<std::size_t>(std::min_element(value.begin(), value.end()) - value.begin());
    for (std::size_t n = count - 1; n > 0; --n) course[n - 1] = back[n * shapes + course[n]];
    return course;
}

double cost_of_course(ShapeGrid const& grid, std::span<CourseNote const> notes,
                      std::span<std::size_t const> course) {
    double total = 0;
    for (std::size_t n = 0; n < course.size(); ++n) {
        auto const& note = notes[n];
        total += double{note.benefit} * double{(*note.heard)[course[n]]} + double{(*note.fixed)[course[n]]};
        total += step_cost(grid, note.step, n > 0 ? course[n - 1] : grid.home(), course[n]);
    }
    return total;
}

} // namespace vowelway::plan
