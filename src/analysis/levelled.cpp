// SPDX-License-Identifier: MIT
#include "analysis/levelled.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace vowelway::analysis {
namespace {

constexpr double least_of_creak = 0.105, least_of_whisper = 0.075, of_even_breath = 0.12,
                 of_uneven_breath = 0.15;
constexpr double gaussian = 2.90;        // peakedness of noise is 3, of uneven breath more
constexpr double hardly_uneven = 3.04;   // so peaked is even breath, or a sound that was evened out
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

/// Fourth moment over the square of the second, the mean over the takes.
double peakedness(std::vector<HeardTake> const& takes) {
    double sum = 0;
    for (auto const& t : takes) {
        double second = 0, fourth = 0;
        for (float const x : t.samples) {
            double const square = static_cast<double>(x) * static_cast<double>(x);
            second += square, fourth += square * square;
        }
        sum += fourth * static_cast<double>(t.samples.size()) / std::max(second * second, 1e-30);
    }
    return takes.empty() ? 0 : sum / static_cast<double>(takes.size());
}

} // namespace

Evenness evenness_of(std::vector<HeardTake> const& takes, ProbeKind kind) {
    auto const scatter = scatter_of_peaks(takes);
    if (!scatter || is_voiced(kind)) return Evenness::natural;
    if (kind == ProbeKind::creak) return *scatter < least_of_creak ? Evenness::levelled : Evenness::natural;
    if (*scatter < least_of_whisper) return Evenness::levelled;
    double const peaked = peakedness(takes);
    if (peaked < gaussian && *scatter < of_uneven_breath) return Evenness::levelled;
    return peaked < hardly_uneven && *scatter < of_even_breath ? Evenness::like_levelled : Evenness::natural;
}

} // namespace vowelway::analysis
