// SPDX-License-Identifier: MIT
#include "io/score/octave.hpp"

#include "vowelway/core/tessitura.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::vector<SungNote> line(std::initializer_list<char const*> pitches) {
    std::vector<SungNote> notes;
    for (auto const* name : pitches) {
        auto const spelled = parse_spelled_pitch(name);
        notes.push_back({.pitch = Tuning{}.pitch(spelled),
                         .spelled = spelled,
                         .measure = "1",
                         .beat = 1,
                         .start = seconds(0),
                         .length = seconds(1),
                         .syllables = {},
                         .typed_ipa = {},
                         .dynamic = {},
                         .vowel = {}});
    }
    return notes;
}

double taken(std::initializer_list<char const*> pitches, VoiceType voice, bool treble = true) {
    ScoreOptions options;
    options.voice = voice;
    auto const octave = octave_for(line(pitches), treble, options);
    return octave ? octave->semitones : 0;
}

} // namespace

TEST_CASE("the tessitura of each voice lies within two octaves and in the order of the voices") {
    double last = 0;
    for (auto const voice : all_voice_types) {
        auto const t = tessitura_of(voice);
        REQUIRE(t);
        double const middle = (t->low.key_number() + t->high.key_number()) / 2;
        if (voice != VoiceType::alto && voice != VoiceType::treble) CHECK(middle > last);
        last = middle;
        CHECK(t->high.key_number() - t->low.key_number() <= 24);
    }
    CHECK_FALSE(tessitura_of(VoiceType::other));
    CHECK_FALSE(tessitura_of(VoiceType::other, parse_pitch_range("C4..G4")));
    auto const own = tessitura_of(VoiceType::other, parse_pitch_range("C3..C5"));
    REQUIRE(own);
    CHECK(own->low.str() == "E3");
    CHECK(own->high.str() == "A♭4");
}

TEST_CASE("the octave of a line") {
    CHECK(taken({"B4", "E5", "G5", "E6"}, VoiceType::tenor, false) == -24); // an 8 over the clef
    CHECK(taken({"B4", "E5", "G5", "E6"}, VoiceType::soprano, false) == 0);
    CHECK(taken({"B1", "E2", "G2", "E3"}, VoiceType::soprano, false) == 24);
    CHECK(taken({"E4", "G4", "C5", "F5"}, VoiceType::tenor) == -12);
    CHECK(taken({"E4", "G4", "C5", "F5"}, VoiceType::baritone) == -12);
    CHECK(taken({"E3", "A3", "C4", "F4"}, VoiceType::tenor) == 0); // at pitch already
    CHECK(taken({"E4", "G4", "A4", "G4"}, VoiceType::tenor, false) ==
          0); // high, but the clef tells its octave
    CHECK(taken({"E4", "G4", "C5", "F5"}, VoiceType::soprano) == 0);
    CHECK(taken({"G5", "A5", "C6", "F6"}, VoiceType::soprano) == -12);
    CHECK(taken({"E3", "G3", "A3", "C4"}, VoiceType::soprano, false) == 12);
    CHECK(taken({"A3", "C4", "E4", "G4"}, VoiceType::soprano) == 0); // low, but not an octave
    CHECK(taken({"G5", "A5", "C6", "F6"}, VoiceType::other) == 0);   // nothing is known of the voice
}
