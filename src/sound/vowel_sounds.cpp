// SPDX-License-Identifier: MIT
#include "vowelway/sound/vowel_sounds.hpp"

#include "sound/pacing.hpp"
#include "sound/whispered_shapes.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/sound/tones.hpp"

#include <cmath>

namespace vowelway::sound {

namespace {

constexpr Decibels quiet{50};

// Known to 10 Hz at best (docs/limits.md): nothing finer is said.
std::string rounded(Frequency f) { return std::to_string(10 * std::lround(in_hertz(f) / 10)) + " Hz"; }

std::string named(VowelSoundsAsked const& asked, char const* name, Frequency f) {
    return worded("{0} of /{1}/, {2} ({3})", name, asked.vowel.vowel.ipa(), rounded(f),
                  asked.tuning.name(f).str());
}

void add_whisper(Programme& out, std::string what, Whispered whispered, Duration length) {
    then(
        out, std::move(what), length,
        [whispered = std::move(whispered)] { return whisper(whispered, quiet); }, {}, seconds(0.15));
}

std::string as_it_should_be(VowelSoundsAsked const& asked, WhisperedShapes const& shapes) {
    return worded("/{0}/ whispered: low pitch near {1}, high pitch near {2}", asked.vowel.vowel.ipa(),
                  rounded(shapes.resonances().r1.centre), rounded(shapes.resonances().r2.centre));
}

} // namespace

Programme vowel_sounds(VowelSoundsAsked const& asked) {
    Programme out;
    auto const wanted = [&](VowelSound sound) { return !asked.only || *asked.only == sound; };
    auto const low = asked.vowel.r1.centre, high = asked.vowel.r2.centre;
    auto const one = [](Frequency f) { return [f] { return tone(f, balanced(f, quiet)); }; };
    auto const band = [](Frequency f) { return [f] { return noise_band(f, balanced(f, quiet)); }; };
    auto const both = worded("{0} and fR2, {1} ({2})", named(asked, "fR1", low), rounded(high),
                             asked.tuning.name(high).str());
    if (wanted(VowelSound::low))
        then(out, worded("{0}, a tone", named(asked, "fR1", low)), asked.each, one(low));
    if (wanted(VowelSound::high))
        then(out, worded("{0}, a tone", named(asked, "fR2", high)), asked.each, one(high));
    if (wanted(VowelSound::tones)) {
        then(out, worded("{0}, tones", both), asked.each, one(low));
        with(out, one(high));
    }
    if (wanted(VowelSound::noise)) {
        then(out, worded("{0}, bands of noise", both), asked.each, band(low));
        with(out, band(high));
    }
    if (wanted(VowelSound::whisper)) {
        WhisperedShapes const shapes(asked.vowel, asked.tract);
        add_whisper(out, as_it_should_be(asked, shapes), shapes.as_it_should_be(), asked.each);
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
    WhisperedShapes const shapes(asked.vowel, asked.tract);
    Programme out;
    auto const good = [&] {
        add_whisper(out, as_it_should_be(asked, shapes), shapes.as_it_should_be(), asked.each);
    };
    good();
    add_whisper(out,
                worded("a fault, exaggerated: larynx raised, tongue forward, a hiss at the teeth; the high "
                       "pitch too high, "
                       "the low one lost"),
                shapes.too_high(), asked.each);
    good();
    add_whisper(out, worded("a fault, exaggerated: tongue drawn back, sound dull; the high pitch too low"),
                shapes.drawn_back(), asked.each);
    good();
    return out;
}

} // namespace vowelway::sound
