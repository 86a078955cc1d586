// SPDX-License-Identifier: MIT
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/singer.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <type_traits>

using namespace vowelway;

// What must not compile, as far as the language can say it; the rest is in tests/must_not_compile.
namespace {
template <class A, class B>
concept Addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Comparable = requires(A a, B b) {
    a < b;
};

static_assert(Addable<Pitch, Cents> && !Addable<Pitch, Pitch>);    // A4 + A4 means nothing
static_assert(!Addable<Cents, Decibels> && !Addable<Cents, Bark>); // a kind adds to itself only
static_assert(!Addable<Frequency, Duration> && !Addable<Frequency, double>);
static_assert(!Comparable<Pitch, Frequency> && !Comparable<Harmonic, ResonanceNumber>);
static_assert(!std::is_convertible_v<Frequency, Pitch>); // a resonance frequency is no pitch
static_assert(!std::is_convertible_v<Resonance, Harmonic> &&
              !std::is_convertible_v<Harmonic, ResonanceNumber>);
static_assert(!std::is_convertible_v<double, Cents> && !std::is_convertible_v<double, Frequency>);
static_assert(std::is_invocable_v<decltype(frequency_of), Harmonic, Pitch>);
static_assert(!std::is_invocable_v<decltype(frequency_of), Resonance, Pitch>);
static_assert(!std::is_invocable_v<decltype(frequency_of), Harmonic, Frequency>);
} // namespace

// Titze et al. (2015), J. Acoust. Soc. Am. 137, 3005: fo, 2fo, 3fo; fR1, fR2.
TEST_CASE("harmonics and resonances are written in the consensus notation") {
    CHECK(Harmonic{1}.str() == "fo");
    CHECK(Harmonic{2}.str() == "2fo");
    CHECK(ResonanceNumber{1}.str() == "fR1");
    CHECK(in_hertz(frequency_of(Harmonic{3}, Pitch{110_Hz})) == doctest::Approx(330));
    CHECK(Harmonic{1} < Harmonic{2});
}

// Equal temperament: B♭4 is 466.164 Hz, a semitone above 440 Hz.
TEST_CASE("a deviation is also an interval") {
    CHECK(Resonance{440_Hz, hertz(26.164), false, {}}.sd_cents().value ==
          doctest::Approx(100).epsilon(0.0001));
    CHECK(Resonance{440_Hz, 440_Hz, false, {}}.sd_cents().value == doctest::Approx(1200));
}

TEST_CASE("a vowel's resonances by their number") {
    VowelResonances v;
    v.r1 = {500_Hz, 50_Hz, false, {}};
    v.r2 = {1500_Hz, 80_Hz, false, {}};
    v.r3 = Resonance{2500_Hz, 90_Hz, false, {}};
    CHECK(in_hertz(v.get({1})->centre) == 500);
    CHECK(in_hertz(v.get({2})->centre) == 1500);
    CHECK(in_hertz(v.get({3})->centre) == 2500);
    CHECK_FALSE(v.get({4}));
    CHECK_FALSE(v.get({0}));
    CHECK_FALSE(v.get({5}));
}

TEST_CASE("a singer's vowel is found by its quality, whatever its length") {
    Singer singer;
    for (auto const* text : {"a", "ɑ̃", "e_o"}) {
        VowelResonances v;
        v.vowel = parse_vowel(text);
        singer.vowels.push_back(v);
    }
    CHECK(singer.find(parse_vowel("aː")) == &singer.vowels[0]);
    CHECK(singer.find(parse_vowel("A~")) == &singer.vowels[1]);
    CHECK(singer.find(parse_vowel("e\u031E")) == &singer.vowels[2]);
    CHECK(singer.find(parse_vowel("e")) == nullptr);
    CHECK(singer.find(parse_vowel("ɑ")) == nullptr);
}

TEST_CASE("names of voices and methods") {
    for (auto const voice : all_voice_types) CHECK(parse_voice_type(to_string(voice)) == voice);
    CHECK(parse_voice_type("other") == VoiceType::other);
    CHECK(parse_voice_type("Tenor") == VoiceType::tenor); // as people type it
    CHECK(parse_voice_type("MEZZO") == VoiceType::mezzo);
    CHECK_FALSE(parse_voice_type("Tenor "));
    CHECK_FALSE(parse_voice_type(""));
    CHECK(to_string(Method::creak) == "creak");
}
