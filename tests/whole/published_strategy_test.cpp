// SPDX-License-Identifier: MIT
// Published strategies must emerge from the optimiser: no rule of the program says any of them. The weights
// were searched for with these papers in mind (bench/strategy_tune.cpp), so this shows that one set of
// weights does justice to all of them, on voices and vowels together; it is not an independent prediction.
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;

namespace {

plan::VowelPlan strip(VoiceType voice, std::string const& vowel, std::string const& technique) {
    plan::PlanRequest request;
    request.technique = io::find_technique(technique);
    request.singer = io::built_in_voice(voice, request.technique.averages);
    request.passage.tuning = request.singer.tuning;
    request.vowels = {parse_vowel(vowel)};
    request.draws = 0;
    return make_plan(std::move(request)).vowels.at(0);
}

double semitones_between(Frequency from, Frequency to) { return in_semitones(interval(from, to)); }

Pitch pitch(char const* name) { return Tuning{}.pitch(parse_spelled_pitch(name)); }

} // namespace

// Joliveau, Smith & Wolfe 2004, J. Acoust. Soc. Am. 116, 2434: sopranos' fR1 follows fo once fo has reached
// the fR1 of the vowel; below that fR1 and fR2 barely move. Garnier et al. 2010, J. Acoust. Soc. Am. 128,
// 3769: up to C6-D6.
TEST_CASE("a soprano's fR1 follows fo above the vowel's own fR1, and keeps still well below") {
    for (std::string const vowel : {"i", "e", "ɛ", "y"}) {
        auto const v = strip(VoiceType::soprano, vowel, "classical");
        auto const own = v.resonances.r1.centre;
        int followed = 0;
        for (auto const& cell : v.strip) {
            auto const fo = cell.pitch.frequency(), r1 = cell.decision.target.r1.centre;
            INFO(vowel, " at ", in_hertz(fo), " Hz: fR1 ", in_hertz(r1));
            if (semitones_between(own, fo) < -5) CHECK(std::abs(semitones_between(own, r1)) < 0.5);
            // A voice is never tuned exactly: within two semitones of fo, rather above it than below.
            if (semitones_between(own, fo) > 2 && cell.pitch <= pitch("B5")) {
                CHECK(semitones_between(fo, r1) > -1.5);
                CHECK(semitones_between(fo, r1) < 2.5);
                ++followed;
            }
        }
        CHECK(followed >= 5);
    }
}

// Sundberg & Skoog 1997, J. Voice 11, 301, and Joliveau et al. 2004: on open vowels there is less to follow.
TEST_CASE("open vowels are raised less than close ones") {
    auto const highest = [](std::string const& vowel) {
        auto const v = strip(VoiceType::soprano, vowel, "classical");
        return semitones_between(v.resonances.r1.centre, v.strip.back().decision.target.r1.centre);
    };
    CHECK(highest("a") < highest("ɛ") - 2);
    CHECK(highest("ɛ") < highest("i") - 2);
}

// Sundberg, La & Gill 2013, J. Voice 27, 282: through fo = 300..400 Hz the fR1 and fR2 of professional
// classical men did not change systematically. Henrich, Smith & Wolfe 2011 found tuning in part of the range
// in some men: bands, no locks.
TEST_CASE("classical men do not chase harmonics through the passaggio on open vowels") {
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor})
        for (std::string const vowel : {"a", "ɑ", "ɔ", "ɛ"})
            for (auto const& cell : strip(voice, vowel, "classical").strip) {
                if (cell.pitch > Pitch(hertz(400))) break;
                INFO(to_string(voice), " ", vowel, " at ", in_hertz(cell.pitch.frequency()), " Hz");
                CHECK(std::abs(semitones_between(strip(voice, vowel, "classical").resonances.r1.centre,
                                                 cell.decision.target.r1.centre)) <= 2.01);
            }
}

// Titze & Worley 2009, J. Acoust. Soc. Am. 126, 1530: in opera every harmonic but fo passes above fR1.
TEST_CASE("after the turn classical men leave 2fo above fR1") {
    for (auto voice : {VoiceType::baritone, VoiceType::tenor})
        for (std::string const vowel : {"i", "e", "ɛ", "a", "ɔ", "o", "u"}) {
            auto const v = strip(voice, vowel, "classical");
            for (auto const& cell : v.strip)
                if (semitones_between(v.turning.pitch.frequency(), cell.pitch.frequency()) > 2) {
                    INFO(to_string(voice), " ", vowel, " at ", in_hertz(cell.pitch.frequency()), " Hz");
                    CHECK(2.0 * cell.pitch.frequency() > cell.decision.target.r1.centre);
                }
        }
}

// Bourne & Garnier 2012, J. Acoust. Soc. Am. 131, 1586: belting women keep fR1 near 2fo up to about C5 on
// open-mid vowels. The 2023 simulation study in J. Voice (S0892-1997(23)00004-8): unmodified, a vowel belts
// over about a fifth around fR1/2. On /ɔ/ fR1 at 2fo would be heard as /ɑ/ from about A♭4 on: there the text
// limits what is asked (common practice, no source), and fR1 goes as far as the vowel does.
TEST_CASE("belt keeps 2fo at or below fR1 up to about C5, and leaves the vowel alone around fR1/2") {
    for (auto voice : {VoiceType::mezzo, VoiceType::alto})
        for (std::string const vowel : {"ɛ", "ɔ"}) {
            auto const v = strip(voice, vowel, "belt");
            for (auto const& cell : v.strip) {
                auto const fo = cell.pitch.frequency(), r1 = cell.decision.target.r1.centre;
                double const past = semitones_between(v.turning.pitch.frequency(), fo);
                INFO(to_string(voice), " ", vowel, " at ", in_hertz(fo), " Hz: fR1 ", in_hertz(r1));
                if (past > -3.5 && past < -0.5)
                    CHECK(std::abs(semitones_between(v.resonances.r1.centre, r1)) < 2.01);
                if (past <= 1 || cell.pitch > pitch("B4")) continue;
                if (vowel == "ɛ" || cell.pitch <= pitch("G4")) CHECK(semitones_between(2.0 * fo, r1) > -1);
                CHECK(cell.decision.heard.vowel.base == parse_vowel(vowel).base);
                if (cell.pitch > pitch("G4")) CHECK(semitones_between(v.resonances.r1.centre, r1) > 3.5);
            }
            // and classical does not
            auto const classical = strip(voice, vowel, "classical");
            auto const& high = classical.strip[static_cast<std::size_t>(
                std::lround(in_semitones(pitch("B4") - classical.strip.front().pitch)))];
            CHECK(2.0 * high.pitch.frequency() > high.decision.target.r1.centre);
        }
}

// Common practice, no source: in the low range nobody modifies for acoustic reasons.
TEST_CASE("every voice leaves every vowel alone in the lowest fifth of its range") {
    for (auto voice : all_voice_types)
        for (std::string const vowel : {"ɛ", "a", "ɔ"}) {
            auto const v = strip(voice, vowel, "classical");
            for (std::size_t i = 0; i < 7; ++i) CHECK(v.strip[i].decision.advice != plan::Advice::modify);
        }
}
