// SPDX-License-Identifier: MIT
#include "vowelway/analysis/guided_take.hpp"

#include "analysis/decibels.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/analysis/steady.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr std::size_t tenth = 1600;                         // samples at measuring_rate
constexpr double begins = 10, ends = 6;                     // dB above the room
constexpr std::size_t patience = 100, most = 30, after = 5; // tenths of a second
constexpr std::size_t before = 4000;                        // samples kept from before the sound
constexpr std::size_t shortest = 5;                         // tenths of a second that are a vowel
constexpr double shortest_steady_part = 0.3;                // s
constexpr float full = 0.99F;

} // namespace

Decibels level_of(std::span<float const> samples, Frequency rate) {
    double const keep = 1 - 2 * std::numbers::pi * 100 / in_hertz(rate); // first-order high-pass
    double sum = 0, low = 0;
    for (float x : samples) {
        low = keep * low + (1 - keep) * static_cast<double>(x);
        double const y = static_cast<double>(x) - low;
        sum += y * y;
    }
    return {decibels(sum / static_cast<double>(std::max<std::size_t>(samples.size(), 1)), floor_of_level)};
}

void GuidedTake::hear(std::span<float const> samples) {
    waiting_.insert(waiting_.end(), samples.begin(), samples.end());
    std::size_t used = 0;
    for (; !done_ && waiting_.size() - used >= tenth; used += tenth)
        step(std::span(waiting_).subspan(used, tenth));
    waiting_.erase(waiting_.begin(), waiting_.begin() + static_cast<std::ptrdiff_t>(used));
}

void GuidedTake::step(std::span<float const> piece) {
    ++steps_;
    level_ = level_of(piece, measuring_rate);
    samples_.insert(samples_.end(), piece.begin(), piece.end());
    double const above = level_.value - room_.value;
    begun_ = begun_ || above > begins;
    if (!begun_) {
        if (samples_.size() > before + tenth)
            samples_.erase(samples_.begin(), samples_.end() - static_cast<std::ptrdiff_t>(before));
        done_ = steps_ >= patience;
        return;
    }
    if (above > ends)
        ++loud_, quiet_ = 0;
    else
        ++quiet_;
    done_ = quiet_ >= after || loud_ >= most;
}

std::string GuidedTake::again() const {
    if (!begun_) return worded("nothing was heard: come closer to the microphone, or turn its level up");
    if (std::any_of(samples_.begin(), samples_.end(), [](float x) { return std::abs(x) >= full; }))
        return worded("too loud for the microphone: turn its level down, or move away");
    if (loud_ < shortest) return worded("too short: hold the vowel for a second");
    auto const length = seconds(static_cast<double>(samples_.size()) / in_hertz(measuring_rate));
    Sound const sound{samples_, measuring_rate, seconds(0)};
    TimeSpan const span{seconds(0.25), length - seconds(0.1 * static_cast<double>(quiet_))};
    auto const steady = steady_part(sound, span);
    if (!steady || in_seconds(steady->span.length()) < shortest_steady_part)
        return worded("not steady: hold jaw, lips and tongue still for a second");
    return {};
}

} // namespace vowelway::analysis
