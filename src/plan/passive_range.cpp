// SPDX-License-Identifier: MIT
#include "plan/passive_range.hpp"

#include <cmath>

namespace vowelway::plan {

namespace {

struct Run {
    std::size_t first = 0, end = 0; // half-open
    std::size_t size() const { return end - first; }
};

template <class Modifies> Run longest_run(std::size_t count, Modifies modifies) {
    Run best, run;
    for (std::size_t i = 0; i < count; ++i) {
        bool const ends = modifies(i) && (i + 1 == count || modifies(i + 1) || run.size() == 0);
        if (ends) {
            run = {i + 1, i + 1};
        } else {
            run.end = i + 1;
            if (run.size() > best.size()) best = run;
        }
    }
    return best;
}

} // namespace

std::optional<PassiveRange> passive_range(std::vector<PitchCell> const& strip,
                                          std::span<std::vector<Advice> const> drawn) {
    auto const run =
        longest_run(strip.size(), [&](std::size_t i) { return strip[i].decision.advice == Advice::modify; });
    if (run.size() == 0) return std::nullopt;
    PassiveRange out{strip[run.first].pitch, strip[run.end - 1].pitch, Cents{0}, run.end == strip.size(),
                     std::nullopt};
    for (auto i = run.first; i < run.end && !out.migrates_from; ++i)
        if (strip[i].decision.advice == Advice::migrate) out.migrates_from = strip[i].pitch;
    if (drawn.size() > 1) {
        double sum = 0, squares = 0;
        for (auto const& advice : drawn) {
            auto const other =
                longest_run(strip.size(), [&](std::size_t i) { return advice[i] == Advice::modify; });
            double const top = static_cast<double>(other.end); // in semitones from the lowest pitch
            sum += top;
            squares += top * top;
        }
        auto const n = static_cast<double>(drawn.size());
        out.to_sd = semitones(std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1))));
    }
    return out;
}

} // namespace vowelway::plan
