// SPDX-License-Identifier: MIT
#include "analysis/levelled.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace vowelway::analysis {
namespace {

constexpr double least_of_creak = 0.105, least_of_whisper = 0.075;
constexpr double frame = 0.05;           // s: holds a pulse of a creak, or the peaks of a whisper
constexpr std::size_t fewest_frames = 5; // of a take

/// How the peaks of successive frames scatter, in proportion; the mean over the takes. Nothing when they are
/// too short.
std::optional<double> scatter_of_peaks(std::vector<HeardTake> const& takes) {
    double sum = 0;
    int count = 0;
    for (auto const& t : takes) {
        auto const length = static_cast<std::size_t>(frame * in_hertz(measuring_rate));
        double mean = 0, square = 0, frames = 0;
        for (std::size_t from = 0; from + length <= t.samples.size(); from += length, ++frames) {
            double most = 0;
            for (std::size_t n = from; n < from + length; ++n)
                most = std::max(most, std::abs(static_cast<double>(t.samples[n])));
            mean += most, square += most * most;
        }
        if (frames < static_cast<double>(fewest_frames) || mean <= 0) continue;
        mean /= frames;
        sum += std::sqrt(std::max(0.0, square / frames - mean * mean)) / mean;
        ++count;
    }
    return count > 0 ? std::optional(sum / count) : std::nullopt;
}

} // namespace

bool is_levelled(std::vector<HeardTake> const& takes, ProbeKind kind) {
    auto const scatter = scatter_of_peaks(takes);
    if (!scatter || is_voiced(kind)) return false;
    return *scatter < (kind == ProbeKind::creak ? least_of_creak : least_of_whisper);
}

} // namespace vowelway::analysis
