// SPDX-License-Identifier: MIT
#include "analysis/unrest.hpp"

#include "analysis/frames.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace vowelway::analysis {
namespace {

constexpr Frequency unrest_from = hertz(250), unrest_to = hertz(4000);
constexpr std::size_t fewest_of_noise = 6, most_of_noise = 24;

/// ln of it, the mean over these bins.
double arithmetic_over_geometric(PowerSpectrum const& sum, std::vector<double> const& logs, std::size_t from,
                                 std::size_t to) {
    if (to <= from) return 0;
    double all = 0;
    for (std::size_t k = from; k < to; ++k)
        all += std::log(sum.power[k] / sum.frames + 1e-20) - logs[k] / sum.frames;
    return all / static_cast<double>(to - from);
}

} // namespace

HeardPause pause_of(std::span<float const> samples, Frequency rate) {
    Frames frames(samples, rate);
    HeardPause heard{frames.empty(), 0};
    auto& sum = heard.spectrum;
    auto const judged = frames.count() < fewest_of_noise ? 0 : std::min(frames.count(), most_of_noise);
    auto const from = static_cast<std::size_t>(unrest_from / sum.bin),
               to = std::min(static_cast<std::size_t>(unrest_to / sum.bin), sum.power.size());
    auto one = frames.empty();
    std::vector<double> logs(to, 0.0), product(to, 1.0);
    for (std::size_t f = 0; f < frames.count(); ++f) {
        std::fill(one.power.begin(), one.power.end(), 0.0);
        frames.add_to(one, f);
        for (std::size_t k = 0; k < sum.power.size(); ++k) sum.power[k] += one.power[k];
        ++sum.frames;
        if (f < judged) {
            for (std::size_t k = from; k < to; ++k) product[k] *= one.power[k] + 1e-20;
            if (f % 8 == 7 || f + 1 == judged) // one logarithm for eight frames
                for (std::size_t k = from; k < to; ++k) logs[k] += std::log(std::exchange(product[k], 1.0));
        }
        if (f + 1 == judged) heard.unrest = arithmetic_over_geometric(sum, logs, from, to);
    }
    for (auto& p : sum.power) p /= sum.frames;
    return heard;
}

} // namespace vowelway::analysis
