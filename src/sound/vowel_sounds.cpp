// SPDX-License-Identifier: MIT
#include "vowelway/sound/vowel_sounds.hpp"

#include "sound/pacing.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/sound/tones.hpp"
#include "vowelway/sound/whisper.hpp"

#include <cmath>
#include <cstddef>

namespace vowelway::sound {

namespace {

constexpr Decibels quiet{50};

// Known to 10 Hz at best (docs/limits.md): nothing finer is said.
std::string rounded(Frequency f) { return std::to_string(10 * std::lround(in_hertz(f) / 10)) + " Hz"; }

std::string named(VowelSoundsAsked const& asked, char const* name, Frequency f) {
    return std::string(name) + " of /" + asked.vowel.vowel.ipa() + "/, " + rounded(f) + " (" +
           asked.tuning.name(f).str() + ")";
}

class Shapes {
  public:
    explicit Shapes(VowelSoundsAsked const& asked)
        : resonances_(whispered_resonances(asked.vowel)), reach_(resonances_, asked.tract) {}

    VowelResonances const& resonances() const { return resonances_; }
    acoustics::AreaFunction with(acoustics::GestureVector const& gesture) const {
        return reach_.tract(gesture);
    }

  private:
    VowelResonances resonances_;
    acoustics::ReachableSet reach_;
};

constexpr std::size_t part(acoustics::GesturePart p) { return static_cast<std::size_t>(p); }

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

Whispered too_high(Shapes const& shapes) {
    using P = acoustics::GesturePart;
    acoustics::GestureVector gesture{};
    gesture[part(P::larynx)] = 1;
    gesture[part(P::lip_opening)] = 0.7;
    gesture[part(P::lip_protrusion)] = -0.7;
    gesture[part(P::tongue_advancement)] = 0.6;
    auto tract = shapes.with(gesture);
    auto const place = at_the_teeth(tract);
    return {std::move(tract), place, Decibels{3}};
}

Whispered drawn_back(Shapes const& shapes) {
    using P = acoustics::GesturePart;
    acoustics::GestureVector gesture{};
    gesture[part(P::tongue_advancement)] = -1;
    gesture[part(P::larynx)] = -0.4;
    gesture[part(P::lip_protrusion)] = 0.4;
    return {shapes.with(gesture), {}, Decibels{-12}};
}

void add_whisper(Programme& out, std::string what, Whispered whispered, Duration length) {
    then(
        out, std::move(what), length,
        [whispered = std::move(whispered)] { return whisper(whispered, quiet); }, {}, seconds(0.15));
}

std::string as_it_should_be(VowelSoundsAsked const& asked, Shapes const& shapes) {
    return "/" + asked.vowel.vowel.ipa() + "/ whispered: low pitch near " +
           rounded(shapes.resonances().r1.centre) + ", high pitch near " +
           rounded(shapes.resonances().r2.centre);
}

} // namespace

Programme vowel_sounds(VowelSoundsAsked const& asked) {
    Programme out;
    auto const wanted = [&](VowelSound sound) { return !asked.only || *asked.only == sound; };
    auto const low = asked.vowel.r1.centre, high = asked.vowel.r2.centre;
    auto const one = [](Frequency f) { return [f] { return tone(f, balanced(f, quiet)); }; };
    auto const band = [](Frequency f) { return [f] { return noise_band(f, balanced(f, quiet)); }; };
    auto const both =
        named(asked, "fR1", low) + " and fR2, " + rounded(high) + " (" + asked.tuning.name(high).str() + ")";
    if (wanted(VowelSound::low)) then(out, named(asked, "fR1", low) + ", a tone", asked.each, one(low));
    if (wanted(VowelSound::high)) then(out, named(asked, "fR2", high) + ", a tone", asked.each, one(high));
    if (wanted(VowelSound::tones)) {
        then(out, both + ", tones", asked.each, one(low));
        with(out, one(high));
    }
    if (wanted(VowelSound::noise)) {
        then(out, both + ", bands of noise", asked.each, band(low));
        with(out, band(high));
    }
    if (wanted(VowelSound::whisper)) {
        Shapes const shapes(asked);
        add_whisper(out, as_it_should_be(asked, shapes), {.tract = shapes.with({})}, asked.each);
    }
    if (asked.faults) {
        auto faults = fault_sounds(asked);
        Duration const behind = length_of(out) + pause;
        for (auto& item : faults.items) {
            item.start += behind;
            out.items.push_back(std::move(item));
        }
    }
    return out;
}

Programme fault_sounds(VowelSoundsAsked const& asked) {
    Shapes const shapes(asked);
    Programme out;
    auto const good = [&] {
        add_whisper(out, as_it_should_be(asked, shapes), {.tract = shapes.with({})}, asked.each);
    };
    good();
    add_whisper(
        out,
        "a fault, exaggerated: larynx raised, sound spread and hissing at the teeth; all pitches too high",
        too_high(shapes), asked.each);
    good();
    add_whisper(out, "a fault, exaggerated: tongue drawn back, sound dull; the high pitch too low",
                drawn_back(shapes), asked.each);
    good();
    return out;
}

} // namespace vowelway::sound
