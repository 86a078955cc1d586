// SPDX-License-Identifier: MIT
// Gestures in two or three words each, with their amount: what fits over a note.
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"

#include <array>
#include <cmath>
#include <string_view>

namespace vowelway::plan {

namespace {

/// From hardly to far: the bounds of the degrees are those of the long words (src/acoustics/gesture.cpp).
using Degrees = std::array<std::string_view, 4>;
struct ShortWords {
    char organ; ///< the first letter of its name: two of one organ are not asked for at once
    Degrees more, less;
};
constexpr std::array<ShortWords, 7> short_words{{
    {'j',
     {to_word("jaw a touch open"), to_word("jaw a little open"), to_word("jaw open"), to_word("jaw wide")},
     {to_word("jaw a touch less open"), to_word("jaw a little less open"), to_word("jaw less open"),
      to_word("jaw much less open")}},
    {'l',
     {to_word("lips a touch open"), to_word("lips a little open"), to_word("lips open"),
      to_word("lips wide open")},
     {to_word("lips a touch narrower"), to_word("lips a little narrower"), to_word("lips narrow"),
      to_word("lips very narrow")}},
    {'l',
     {to_word("lips a touch rounder"), to_word("lips a little rounder"), to_word("lips round"),
      to_word("lips very round")},
     {to_word("lips a touch less round"), to_word("lips a little less round"), to_word("lips less round"),
      to_word("lips much less round")}},
    {'t',
     {to_word("tongue a touch higher"), to_word("tongue a little higher"), to_word("tongue higher"),
      to_word("tongue much higher")},
     {to_word("tongue a touch lower"), to_word("tongue a little lower"), to_word("tongue lower"),
      to_word("tongue much lower")}},
    {'t',
     {to_word("tongue a touch forward"), to_word("tongue a little forward"), to_word("tongue forward"),
      to_word("tongue well forward")},
     {to_word("tongue a touch back"), to_word("tongue a little back"), to_word("tongue back"),
      to_word("tongue well back")}},
    {'x',
     {to_word("larynx a touch higher"), to_word("larynx a little higher"), to_word("larynx higher"),
      to_word("larynx much higher")},
     {to_word("larynx a touch lower"), to_word("larynx a little lower"), to_word("larynx lower"),
      to_word("larynx much lower")}},
    {'h',
     {to_word("throat a touch wider"), to_word("throat a little wider"), to_word("throat wide"),
      to_word("throat very wide")},
     {to_word("throat a touch narrower"), to_word("throat a little narrower"), to_word("throat narrower"),
      to_word("throat much narrower")}},
}};

constexpr Degrees lips_wider{to_word("lips a touch wider"), to_word("lips a little wider"),
                             to_word("lips wider"), to_word("lips much wider")};

/// Nothing where the part is not known.
ShortWords const* words_for(acoustics::Gesture const& g) {
    auto const part = static_cast<std::size_t>(g.part);
    return part < short_words.size() ? &short_words[part] : nullptr;
}

char organ_of(acoustics::Gesture const& g) {
    auto const* words = words_for(g);
    return words ? words->organ : ' ';
}

std::string words_of(acoustics::Gesture const& g) {
    auto const* words = words_for(g);
    if (!words) return g.words;
    auto const& degrees = g.lets_lips_widen() ? lips_wider : g.amount > 0 ? words->more : words->less;
    return std::string(reworded(degrees[g.degree()]));
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
