// SPDX-License-Identifier: MIT
#include "vowelway/analysis/room.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace vowelway::analysis {
namespace {

constexpr double decay_step = 0.005; // s
constexpr std::size_t smooth = 3;    // steps averaged
constexpr double steady_before = 0.45, steady_until = 0.20,
                 followed = 0.4;            // s before the end, before it, after the stop
constexpr double least_contrast_ratio = 30; // steady sound over background
constexpr double above_background = 2;      // times the background, what still counts as decay
constexpr std::size_t skipped = 2, least_steps = 6;
constexpr double shortest_ring = 0.12, longest_ring = 4; // s: what dies faster is the voice's own end

Room const dry{seconds(0), 0};

/// Power in each step, of what lies above about 130 Hz: rumble does not count.
std::vector<double> powers(std::span<float const> x, Frequency rate, std::size_t length) {
    double const kept = std::exp(-2 * std::numbers::pi * 130 / in_hertz(rate));
    std::vector<double> p(x.size() / length, 0.0);
    double y = 0;
    for (std::size_t n = 1; n < p.size() * length; ++n) {
        y = static_cast<double>(x[n]) - static_cast<double>(x[n - 1]) + kept * y;
        p[n / length] += y * y;
    }
    return p;
}

double mean(std::vector<double> const& p, std::size_t from, std::size_t to) {
    if (to <= from) return 0;
    return std::accumulate(p.begin() + static_cast<std::ptrdiff_t>(from),
                           p.begin() + static_cast<std::ptrdiff_t>(to), 0.0) /
           static_cast<double>(to - from);
}

} // namespace

Duration Room::like_noise_of(std::optional<Frequency> fo) const {
    double const tau = in_seconds(reverberation) / (6 * std::log(10.0)), c = 1 - (1 - share) * (1 - share);
    double const harmonics = fo ? std::tanh(1 / (2 * in_hertz(*fo) * tau)) : 1;
    return seconds(2 * tau / std::max(c, 1e-9) * harmonics);
}

std::optional<Room> dying_away(std::span<float const> samples, Frequency rate, std::size_t begin,
                               std::size_t end, std::size_t quiet) {
    double const hz = in_hertz(rate);
    auto const length = static_cast<std::size_t>(std::lround(decay_step * hz));
    auto const back = std::min(end - begin, static_cast<std::size_t>(steady_before * hz));
    auto const from = end - back;
    auto const steps = [](double s) { return static_cast<std::size_t>(std::lround(s / decay_step)); };
    quiet = std::min({quiet, samples.size(), end + static_cast<std::size_t>(0.8 * hz)});
    if (quiet < end + static_cast<std::size_t>(0.1 * hz) || back < static_cast<std::size_t>(0.3 * hz))
        return std::nullopt;
    auto const p = powers(samples.subspan(from, quiet - from), rate, length);
    auto const last = back / length; // step of the end
    double const steady = mean(p, 0, last - steps(steady_until));
    double background = steady;
    for (auto i = last, wide = steps(0.1); i + wide <= p.size(); i += 4)
        background = std::min(background, mean(p, i, i + wide));
    if (background <= 0 || steady < least_contrast_ratio * background) return std::nullopt;

    auto const around = [&](std::size_t i) { return mean(p, i - 1, i + smooth - 1); };
    auto stop = std::min(last, p.size() - smooth);
    while (stop > 1 && around(stop) < 0.5 * steady) --stop;
    double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (auto i = stop + skipped; i + smooth < p.size() && i < stop + steps(followed); ++i) {
        double const left = around(i) - background;
        if (left < above_background * background) break;
        double const x = static_cast<double>(i - stop) * decay_step, y = std::log(left / steady);
        n += 1, sx += x, sy += y, sxx += x * x, sxy += x * y;
    }
    if (n < least_steps) return dry;
    double const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx), share = std::exp((sy - slope * sx) / n);
    double const ring = -6 * std::log(10.0) / slope;
    if (slope >= 0 || ring > longest_ring || share > 1.5) return std::nullopt;
    if (ring < shortest_ring) return dry;
    return Room{seconds(ring), std::min(share, 1.0)};
}

std::optional<Room> room_of(std::vector<Room> endings) {
    if (endings.empty()) return std::nullopt;
    std::sort(endings.begin(), endings.end(), [](Room const& a, Room const& b) { return a.share < b.share; });
    auto const share = endings[endings.size() / 2].share;
    if (share <= 0) return dry;
    std::erase_if(endings, [](Room const& r) { return r.share <= 0; });
    auto const middle = endings.begin() + static_cast<std::ptrdiff_t>(endings.size() / 2);
    std::nth_element(endings.begin(), middle, endings.end(),
                     [](Room const& a, Room const& b) { return a.reverberation < b.reverberation; });
    return Room{middle->reverberation, share};
}

} // namespace vowelway::analysis
