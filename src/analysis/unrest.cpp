// SPDX-License-Identifier: MIT
#include "analysis/unrest.hpp"

#include "analysis/frames.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace vowelway::analysis {
namespace {

constexpr Frequency unrest_from = hertz(250), unrest_to = hertz(4000);
constexpr std::size_t fewest_of_noise = 6, most_of_noise = 24;

} // namespace

double unrest(std::span<float const> samples, Frequency rate) {
    Frames frames(samples, rate);
    auto const count = std::min(frames.count(), most_of_noise);
    if (count < fewest_of_noise) return 0;
    auto spectrum = frames.empty();
    auto const from = static_cast<std::size_t>(unrest_from / spectrum.bin),
               to = std::min(static_cast<std::size_t>(unrest_to / spectrum.bin), spectrum.power.size());
    std::vector<double> sums(to, 0.0), logs(to, 0.0);
    for (std::size_t f = 0; f < count; ++f) {
        std::fill(spectrum.power.begin(), spectrum.power.end(), 0.0);
        frames.add_to(spectrum, f);
        for (std::size_t k = from; k < to; ++k)
            sums[k] += spectrum.power[k], logs[k] += std::log(spectrum.power[k] + 1e-20);
    }
    double all = 0;
    auto const n = static_cast<double>(count);
    for (std::size_t k = from; k < to; ++k) all += std::log(sums[k] / n + 1e-20) - logs[k] / n;
    return to > from ? all / static_cast<double>(to - from) : 0;
}

} // namespace vowelway::analysis
