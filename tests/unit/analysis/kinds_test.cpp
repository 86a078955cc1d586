// SPDX-License-Identifier: MIT
// One kind of probe in a recording: found from all takes together, said with its probability, and defended.
#include "analysis/periodicity.hpp"
#include "support/measuring_data.hpp"
#include "support/takes.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::analysis;

namespace {

double probability_of(Measurements const& m, ProbeKind kind) {
    return m.kinds.at(0).probability[static_cast<std::size_t>(kind)];
}

Excitation with_evidence(ByKind p) {
    Excitation e;
    for (std::size_t k = 0; k < p.size(); ++k) e.evidence[k] = std::log(p[k]);
    return e;
}

} // namespace

TEST_CASE("creak in the noise of a fan, at 20 and 10 dB, is never taken for a whisper") {
    for (unsigned seed = 1; seed <= 4; ++seed)
        for (double snr : {20.0, 10.0}) {
            CAPTURE(seed);
            CAPTURE(snr);
            auto const m =
                measure({takes::five(ProbeKind::creak, 20 + 9 * seed, snr, seed)}, takes::request());
            CHECK(m.kinds.at(0).kind == ProbeKind::creak);
            CHECK(probability_of(m, ProbeKind::creak) > 0.95);
            for (auto const& t : m.takes) CHECK(t.excitation.kind == ProbeKind::creak);
        }
}

TEST_CASE("a whisper in the noise of a fan is a whisper") {
    for (unsigned seed = 1; seed <= 4; ++seed)
        for (double snr : {30.0, 10.0}) {
            auto const m = measure({takes::five(ProbeKind::whisper, 0, snr, seed)}, takes::request());
            CHECK(m.kinds.at(0).kind == ProbeKind::whisper);
            CHECK(probability_of(m, ProbeKind::whisper) > 0.95);
        }
}

TEST_CASE(
    "spoken vowels between 145 and 215 Hz are a voice, not a creak, and those whose pitch falls are spoken") {
    for (double pitch : {145.0, 170.0, 190.0, 215.0}) {
        CAPTURE(pitch);
        auto const m = measure({takes::five(ProbeKind::spoken, pitch, 30, 5)}, takes::request());
        CHECK(m.kinds.at(0).kind == ProbeKind::spoken);
        for (auto const& t : m.takes) {
            CHECK(t.excitation.kind == ProbeKind::spoken);
            REQUIRE(t.excitation.rate);
            CHECK(in_hertz(*t.excitation.rate) == doctest::Approx(0.88 * pitch).epsilon(0.13));
        }
    }
}

TEST_CASE("the vowels of a speech synthesiser (eSpeak NG) are a voice") {
    for (auto const* vowel : {"a", "e", "i", "o", "u"}) {
        CAPTURE(vowel);
        auto const x = measuring_data::wav(std::string("espeak_fi_") + vowel + ".wav");
        auto const middle = std::span(x).subspan(x.size() / 3, x.size() / 3);
        CHECK(is_voiced(recognise_excitation(middle, hertz(16000)).kind));
    }
}

TEST_CASE("a whisper among creaks is refused with the reason, the others are read") {
    std::mt19937 random(6);
    std::vector<takes::make::Samples> all;
    for (std::size_t i = 0; i < 5; ++i)
        all.push_back(takes::take(takes::men[i], i == 2 ? ProbeKind::whisper : ProbeKind::creak, 35, random));
    auto const m = measure({takes::recording(all, 30, random)}, takes::request());
    CHECK(m.kinds.at(0).kind == ProbeKind::creak);
    REQUIRE(m.kinds.at(0).disagreeing == std::vector<std::size_t>{2});
    CHECK(m.takes.at(2).refused.find("sounds like a whisper") != std::string::npos);
    CHECK(m.vowels.size() >= 3);
    for (auto const& v : m.vowels) CHECK(v.kind == ProbeKind::creak);
}

TEST_CASE("a kind that the sound contradicts is refused, with what it is") {
    std::mt19937 random(7);
    std::vector<takes::make::Samples> const high{takes::take(takes::men[1], ProbeKind::sung, 400, random)};
    auto asked = takes::request("ɛ");
    asked.kind = ProbeKind::whisper;
    auto const m = measure({takes::recording(high, 30, random)}, asked);
    CHECK(m.vowels.empty());
    CHECK(m.takes.at(0).refused.find("sounds like sung at ") != std::string::npos);
    REQUIRE(m.takes.at(0).excitation.pitch.has_value());
    CHECK(in_hertz(*m.takes.at(0).excitation.pitch) == doctest::Approx(400).epsilon(0.01));
    for (auto said : {ProbeKind::creak, ProbeKind::sung}) {
        auto wrong = takes::request();
        wrong.kind = said;
        CHECK(measure({takes::five(ProbeKind::whisper, 0, 30, 8)}, wrong).vowels.empty());
    }
    auto right = takes::request();
    right.kind = ProbeKind::whisper;
    CHECK(measure({takes::five(ProbeKind::whisper, 0, 30, 8)}, right).vowels.size() == 5);
}

TEST_CASE("the evidence of several takes adds up as Bayes' rule says") {
    auto a = with_evidence({0.6, 0.3, 0.05, 0.05}), b = with_evidence({0.3, 0.6, 0.05, 0.05}),
         c = with_evidence({0.7, 0.2, 0.05, 0.05});
    auto const decided = decide_kind({&a, &b, &c});
    // By hand: each take shows kind k with 0.94 p(k) + 0.02 (1 - p(k)) = 0.02 + 0.92 p(k).
    double const whisper = 0.572 * 0.296 * 0.664, creak = 0.296 * 0.572 * 0.204, rest = std::pow(0.066, 3);
    CHECK(decided.kind == ProbeKind::whisper);
    CHECK(decided.probability[0] == doctest::Approx(whisper / (whisper + creak + 2 * rest)).epsilon(1e-6));
    CHECK(decided.probability[1] == doctest::Approx(creak / (whisper + creak + 2 * rest)).epsilon(1e-6));
    CHECK(decided.disagreeing.empty());
    CHECK(b.kind == ProbeKind::whisper); // goes with the others
}

TEST_CASE("a period is found to 2 %, noise has none") {
    std::mt19937 random(9);
    takes::make::Samples saw(16000);
    for (std::size_t n = 0; n < saw.size(); ++n)
        saw[n] = std::fmod(static_cast<double>(n) * 133 / 16000, 1.0) - 0.5;
    auto const p = periodicity_of(saw, hertz(16000), 0.001, true);
    CHECK(16000 / p.period == doctest::Approx(133).epsilon(0.02));
    CHECK(p.likeness > 0.95);
    CHECK(p.lasting > 0.95);
    CHECK(p.agreement == 1);
    CHECK(std::abs(p.movement.drift) < 0.1);
    CHECK(periodicity_of(takes::make::white(16000, random), hertz(16000), 0.001, false).likeness < 0.2);
}
