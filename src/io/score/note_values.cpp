// SPDX-License-Identifier: MIT
#include "io/score/staff_lines.hpp"

#include <cmath>
#include <map>
#include <string_view>

namespace vowelway::io {

ValueAndDots value_of(double quarters) {
    constexpr int values = static_cast<int>(NoteValue::n256th) + 1;
    for (int v = 0; v < values; ++v) {
        double const plain = std::ldexp(32.0, -v); // maxima 32 quarters, each next half
        for (int dots = 0; dots <= 3; ++dots)
            if (std::abs(plain * (2 - std::ldexp(1.0, -dots)) - quarters) < time_tolerance)
                return {static_cast<NoteValue>(v), dots};
    }
    for (int v = 0; v < values; ++v)
        if (std::ldexp(32.0, -v) <= quarters) return {static_cast<NoteValue>(v), 0};
    return {NoteValue::n256th, 0};
}

namespace {

double in_signature(char step, int fifths) {
    constexpr std::string_view order = "FCGDAEB";
    int const place = static_cast<int>(order.find(step));
    if (fifths > 0) return (fifths - place + 6) / 7; // signatures past seven signs double them
    if (fifths < 0) return -((-fifths + place) / 7);
    return 0;
}

std::optional<Accidental> sign_for(double alter) {
    if (alter == 0) return Accidental::natural;
    if (alter == 1) return Accidental::sharp;
    if (alter == -1) return Accidental::flat;
    if (alter == 2) return Accidental::double_sharp;
    if (alter == -2) return Accidental::double_flat;
    if (alter == 0.5) return Accidental::quarter_sharp;
    if (alter == -0.5) return Accidental::quarter_flat;
    return std::nullopt;
}

} // namespace

void set_accidentals(StaffMeasure& measure, int fifths) {
    std::map<std::pair<char, int>, double> in_force;
    for (auto& event : measure.events)
        for (auto& head : event.heads) {
            head.accidental.reset();
            auto const [at, fresh] = in_force.emplace(std::pair(head.written.step, head.written.octave),
                                                      in_signature(head.written.step, fifths));
            if (head.tie_ends || at->second == head.written.alter) continue;
            head.accidental = sign_for(head.written.alter);
            at->second = head.written.alter;
        }
}

} // namespace vowelway::io
