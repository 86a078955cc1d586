// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/gesture.hpp"

#include <algorithm>
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

// What to do, and with what word before the degree: "open the jaw" + "a little".
struct Wording {
    std::string_view more, less;
};
constexpr Wording wordings[] = {
    {"open the jaw", "close the jaw"},
    {"open the lips", "narrow the lips"},
    {"round the lips", "spread the lips"},
    {"raise the tongue", "lower the tongue"},
    {"bring the tongue forward", "draw the tongue back"},
    {"let the larynx rise", "let the larynx sink"},
    {"widen the throat", "narrow the throat"},
};

std::string_view degree(double amount) {
    double const size = std::abs(amount);
    if (size < 0.15) return " very slightly";
    if (size < 0.4) return " a little";
    if (size < 0.7) return "";
    return " a good deal";
}

} // namespace

std::vector<Gesture> describe(GestureVector const& vector, double least) {
    std::vector<Gesture> out;
    for (auto part : all_gesture_parts) {
        auto const k = static_cast<std::size_t>(part);
        double const amount = vector[k];
        if (!(std::abs(amount) >= least)) continue;
        auto const& wording = wordings[k];
        out.push_back({part, amount,
                       std::string(amount > 0 ? wording.more : wording.less) + std::string(degree(amount))});
    }
    std::stable_sort(out.begin(), out.end(), [](Gesture const& a, Gesture const& b) {
        return std::abs(a.amount) > std::abs(b.amount);
    });
    return out;
}

} // namespace vowelway::acoustics
