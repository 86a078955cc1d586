// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/gesture.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::acoustics {

std::string_view to_string(GesturePart part) {
    switch (part) {
    case GesturePart::jaw:
        return "jaw";
    case GesturePart::lip_opening:
        return "lip opening";
    case GesturePart::lip_protrusion:
        return "lip protrusion";
    case GesturePart::tongue_height:
        return "tongue height";
    case GesturePart::tongue_advancement:
        return "tongue advancement";
    case GesturePart::larynx:
        return "larynx";
    case GesturePart::pharynx:
        return "pharynx";
    }
    return "";
}

namespace {

// What to do, from hardly to far.
using Degrees = std::array<std::string_view, 4>;
struct Orders {
    Degrees more, less;
};
constexpr Orders orders[] = {
    {{to_word("open the jaw very slightly"), to_word("open the jaw a little"), to_word("open the jaw"),
      to_word("open the jaw a good deal")},
     {to_word("close the jaw very slightly"), to_word("close the jaw a little"), to_word("close the jaw"),
      to_word("close the jaw a good deal")}},
    {{to_word("open the lips very slightly"), to_word("open the lips a little"), to_word("open the lips"),
      to_word("open the lips a good deal")},
     {to_word("narrow the lips very slightly"), to_word("narrow the lips a little"),
      to_word("narrow the lips"), to_word("narrow the lips a good deal")}},
    {{to_word("round the lips very slightly"), to_word("round the lips a little"), to_word("round the lips"),
      to_word("round the lips a good deal")},
     {to_word("round the lips very slightly less"), to_word("round the lips a little less"),
      to_word("round the lips less"), to_word("round the lips much less")}},
    {{to_word("raise the tongue very slightly"), to_word("raise the tongue a little"),
      to_word("raise the tongue"), to_word("raise the tongue a good deal")},
     {to_word("lower the tongue very slightly"), to_word("lower the tongue a little"),
      to_word("lower the tongue"), to_word("lower the tongue a good deal")}},
    {{to_word("bring the tongue forward very slightly"), to_word("bring the tongue forward a little"),
      to_word("bring the tongue forward"), to_word("bring the tongue forward a good deal")},
     {to_word("draw the tongue back very slightly"), to_word("draw the tongue back a little"),
      to_word("draw the tongue back"), to_word("draw the tongue back a good deal")}},
    {{to_word("let the larynx rise very slightly"), to_word("let the larynx rise a little"),
      to_word("let the larynx rise"), to_word("let the larynx rise a good deal")},
     {to_word("let the larynx sink very slightly"), to_word("let the larynx sink a little"),
      to_word("let the larynx sink"), to_word("let the larynx sink a good deal")}},
    {{to_word("widen the throat very slightly"), to_word("widen the throat a little"),
      to_word("widen the throat"), to_word("widen the throat a good deal")},
     {to_word("narrow the throat very slightly"), to_word("narrow the throat a little"),
      to_word("narrow the throat"), to_word("narrow the throat a good deal")}},
};

constexpr Degrees wider{to_word("let the lips widen very slightly"), to_word("let the lips widen a little"),
                        to_word("let the lips widen"), to_word("let the lips widen a good deal")};

} // namespace

std::size_t Gesture::degree() const {
    double const size = std::abs(amount);
    return size < 0.15 ? 0 : size < 0.4 ? 1 : size < 0.7 ? 2 : 3;
}

std::vector<Gesture> describe(GestureVector const& vector, bool rounded, double least) {
    std::vector<Gesture> out;
    for (auto part : all_gesture_parts) {
        auto const k = static_cast<std::size_t>(part);
        double const amount = vector[k];
        if (!(std::abs(amount) >= least)) continue;
        Gesture one{part, amount, {}, rounded};
        auto const& order = one.lets_lips_widen() ? wider : amount > 0 ? orders[k].more : orders[k].less;
        one.words = reworded(order[one.degree()]);
        out.push_back(std::move(one));
    }
    std::stable_sort(out.begin(), out.end(), [](Gesture const& a, Gesture const& b) {
        return std::abs(a.amount) > std::abs(b.amount);
    });
    return out;
}

} // namespace vowelway::acoustics
