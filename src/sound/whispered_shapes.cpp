// SPDX-License-Identifier: MIT
#include "sound/whispered_shapes.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace vowelway::sound {

namespace {

using P = acoustics::GesturePart;

constexpr std::size_t part(P p) { return static_cast<std::size_t>(p); }

// The breath turned to noise by the teeth: so many sections from the glottis that an eighth of the tract is
// before it.
std::size_t at_the_teeth(acoustics::AreaFunction const& tract) {
    Length const whole = acoustics::length_of(tract);
    Length sum{};
    for (std::size_t i = 0; i < tract.size(); ++i) {
        sum += tract[i].length;
        if (sum >= 0.875 * whole) return std::min(i + 1, tract.size() - 1);
    }
    return tract.size() - 1;
}

} // namespace

WhisperedShapes::WhisperedShapes(VowelResonances const& sung, Length tract)
    : resonances_(whispered_resonances(sung)), reach_(resonances_, tract) {}

Whispered WhisperedShapes::as_it_should_be() const { return {.tract = reach_.tract({})}; }

Whispered WhisperedShapes::too_high() const {
    acoustics::GestureVector gesture{};
    gesture[part(P::larynx)] = 1;
    gesture[part(P::lip_opening)] = 0.7;
    gesture[part(P::lip_protrusion)] = -0.7;
    gesture[part(P::tongue_advancement)] = 0.6;
    auto tract = reach_.tract(gesture);
    auto const place = at_the_teeth(tract);
    return {std::move(tract), place, Decibels{3}};
}

Whispered WhisperedShapes::drawn_back() const {
    acoustics::GestureVector gesture{};
    gesture[part(P::tongue_advancement)] = -1;
    gesture[part(P::larynx)] = -0.4;
    gesture[part(P::lip_protrusion)] = 0.4;
    return {reach_.tract(gesture), {}, Decibels{-12}};
}

} // namespace vowelway::sound
