// SPDX-License-Identifier: MIT
// Gestures in two or three words each, with their amount: what fits over a note.
#include "vowelway/plan/pencil.hpp"

#include <array>
#include <cmath>
#include <string_view>

namespace vowelway::plan {

namespace {

/// From hardly to far: the bounds of the degrees are those of the long words (src/acoustics/gesture.cpp).
using Degrees = std::array<std::string_view, 4>;
struct ShortWords {
    std::string_view organ;
    Degrees more, less;
};
constexpr std::array<ShortWords, 7> short_words{{
    {"jaw", {"a touch", "a little", "open", "wide"}, {"a touch less", "a little less", "less", "much less"}},
    {"lips",
     {"a touch open", "a little open", "open", "wide open"},
     {"a touch narrower", "a little narrower", "narrow", "very narrow"}},
    {"lips",
     {"a touch rounder", "a little rounder", "round", "very round"},
     {"a touch spread", "a little spread", "spread", "well spread"}},
    {"tongue",
     {"a touch higher", "a little higher", "higher", "much higher"},
     {"a touch lower", "a little lower", "lower", "much lower"}},
    {"tongue",
     {"a touch forward", "a little forward", "forward", "well forward"},
     {"a touch back", "a little back", "back", "well back"}},
    {"larynx",
     {"a touch higher", "a little higher", "higher", "much higher"},
     {"a touch lower", "a little lower", "lower", "much lower"}},
    {"throat",
     {"a touch wider", "a little wider", "wide", "very wide"},
     {"a touch narrower", "a little narrower", "narrower", "much narrower"}},
}};

std::size_t degree(double amount) {
    double const size = std::abs(amount);
    return size < 0.15 ? 0 : size < 0.4 ? 1 : size < 0.7 ? 2 : 3;
}

std::string_view organ_of(acoustics::Gesture const& g) {
    auto const part = static_cast<std::size_t>(g.part);
    return part < short_words.size() ? short_words[part].organ : std::string_view();
}

std::string words_of(acoustics::Gesture const& g) {
    auto const organ = organ_of(g);
    if (organ.empty()) return g.words;
    auto const& words = short_words[static_cast<std::size_t>(g.part)];
    return std::string(organ) + " " + std::string((g.amount > 0 ? words.more : words.less)[degree(g.amount)]);
}

} // namespace

std::string in_short(std::vector<acoustics::Gesture> const& gestures) {
    constexpr double felt =
        0.4; // of a second gesture: "a little" more beside another is too much to think of
    if (gestures.empty()) return {};
    auto out = words_of(gestures.front());
    for (std::size_t i = 1; i < gestures.size(); ++i) {
        auto const& g = gestures[i];
        if (std::abs(g.amount) < felt || organ_of(g) == organ_of(gestures.front())) continue;
        return out + ", " + words_of(g);
    }
    return out;
}

} // namespace vowelway::plan
