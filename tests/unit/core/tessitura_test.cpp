// SPDX-License-Identifier: MIT
// Where the lines for a voice lie.
#include "vowelway/core/tessitura.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

// The ranges in which textbooks of four-part writing let each part move: soprano C4..G5, alto G3..D5, tenor
// C3..G4, bass E2..C4 (so in Aldwell & Schachter, Harmony and Voice Leading; from memory). What a voice does
// most of the time lies within what it is written in.
TEST_CASE("the tessitura of each part lies within the range it is written in") {
    struct Part {
        VoiceType voice;
        char const* written;
    };
    for (auto const& part : {Part{VoiceType::soprano, "C4..G5"}, Part{VoiceType::alto, "G3..D5"},
                             Part{VoiceType::tenor, "C3..G4"}, Part{VoiceType::bass, "E2..C4"}}) {
        auto const written = parse_pitch_range(part.written);
        auto const tessitura = tessitura_of(part.voice);
        REQUIRE(tessitura);
        CHECK(tessitura->low.key_number() >= written.low.key_number());
        CHECK(tessitura->high.key_number() <= written.high.key_number());
        // and is more than half of it
        CHECK(2 * (tessitura->high.key_number() - tessitura->low.key_number()) >
              written.high.key_number() - written.low.key_number());
    }
}

TEST_CASE("of a voice of no type the range decides") {
    CHECK_FALSE(tessitura_of(VoiceType::other));
    CHECK(tessitura_of(VoiceType::other, parse_pitch_range("A3..A5"))->str() == "C♯4..F5");
    CHECK_FALSE(tessitura_of(VoiceType::other, parse_pitch_range("A3..E4"))); // too small to narrow
}
