// SPDX-License-Identifier: MIT
// What a plan advises, over all average voices: bounds that teachers and measurements set.
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

using namespace vowelway;
using plan::Advice;

namespace {

constexpr std::array seven{"i", "e", "ɛ", "a", "ɔ", "o", "u"};

plan::VowelPlan strip(VoiceType voice, std::string const& vowel, std::string const& technique, int draws = 0,
                      std::optional<PitchRange> range = {}) {
    plan::PlanRequest request;
    request.range = range;
    request.technique = io::find_technique(technique);
    request.singer = io::built_in_voice(voice, request.technique.averages);
    request.passage.tuning = request.singer.tuning;
    request.vowels = {parse_vowel(vowel)};
    request.draws = draws;
    return make_plan(std::move(request)).vowels.at(0);
}

double semitones_between(Frequency from, Frequency to) { return in_semitones(interval(from, to)); }
Pitch pitch(char const* name) { return Tuning{}.pitch(parse_spelled_pitch(name)); }

} // namespace

// An unmodified vowel belts over a fifth around fR1/2 (simulation study in J. Voice 2023,
// S0892-1997(23)00004-8); that nobody modifies for belting below about F4: common practice, no source.
TEST_CASE("belt leaves everything alone below its region") {
    int modified = 0, all = 0;
    for (auto const* vowel : seven)
        for (auto const& cell : strip(VoiceType::mezzo, vowel, "belt").strip)
            if (cell.pitch < pitch("F4") - semitones(0.5)) {
                ++all;
                modified += cell.decision.advice == Advice::modify;
            }
    CHECK(all == 56);
    CHECK(modified <= 3);
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor})
        for (auto const* vowel : seven)
            for (auto const& cell : strip(voice, vowel, "belt").strip)
                if (cell.pitch < pitch("C4")) CHECK(cell.decision.advice != Advice::modify);
}

// Bourne & Garnier 2012, J. Acoust. Soc. Am. 131, 1586: 2fo at fR1 up to about C5 on open-mid vowels.
TEST_CASE("belting women keep 2fo under fR1 up to C5 on most notes of open-mid vowels") {
    int kept = 0, all = 0;
    for (auto voice : {VoiceType::alto, VoiceType::mezzo, VoiceType::soprano})
        for (std::string const vowel : {"ɛ", "ɔ"})
            for (auto const& cell : strip(voice, vowel, "belt").strip) {
                if (cell.pitch < pitch("F4") - Cents{1} || cell.pitch > pitch("C5") + Cents{1}) continue;
                ++all;
                kept += semitones_between(2.0 * cell.pitch.frequency(), cell.decision.target.r1.centre) > -1;
            }
    CHECK(kept >= 0.7 * all);
}

// Close vowels are not sent to open ones for a harmonic's sake: common practice, no source.
TEST_CASE("no close vowel becomes an open one while belt could leave it alone") {
    for (auto voice : all_voice_types)
        for (std::string const vowel : {"i", "u"})
            for (auto const& cell : strip(voice, vowel, "belt").strip) {
                if (cell.pitch > pitch("E4") + Cents{1}) break;
                CAPTURE(to_string(voice));
                CHECK(chart_place(cell.decision.heard.vowel).height <= 2);
            }
}

// Joliveau, Smith & Wolfe 2004, J. Acoust. Soc. Am. 116, 2434: fR2 rises incidentally while fR1 follows fo.
TEST_CASE("a soprano's fR2 does not fall on back and open vowels while fR1 follows") {
    for (std::string const vowel : {"a", "ɔ", "u"}) {
        auto const v = strip(VoiceType::soprano, vowel, "classical");
        for (auto const& cell : v.strip)
            if (cell.pitch.frequency() > v.resonances.r1.centre)
                CHECK(semitones_between(v.resonances.r2.centre, cell.decision.target.r2.centre) > -0.5);
    }
}

// Joliveau, Smith & Wolfe 2004; Garnier et al. 2010: to D6. Singers spread the lips: common practice, no
// source.
TEST_CASE("a soprano's /u/ follows fo from C5 to D6") {
    int followed = 0, all = 0;
    for (auto const& cell :
         strip(VoiceType::soprano, "u", "classical", 0, parse_pitch_range("C4..D6")).strip) {
        if (cell.pitch < pitch("C5") - Cents{1}) continue;
        double const above = semitones_between(cell.pitch.frequency(), cell.decision.target.r1.centre);
        ++all;
        followed += above > -1.5 && above < 2.5;
    }
    CHECK(all == 15);
    CHECK(followed >= 14);
}

// Sundberg 2009 (one soprano): articulation begins 4 to 5 semitones below fo = fR1.
TEST_CASE("women and trebles begin to change a vowel two to five semitones before fo meets fR1") {
    int within = 0, all = 0;
    for (auto voice : {VoiceType::alto, VoiceType::mezzo, VoiceType::soprano, VoiceType::treble})
        for (auto const* vowel : seven) {
            auto const v = strip(voice, vowel, "classical");
            for (auto const& cell : v.strip) {
                if (cell.decision.advice != Advice::modify) continue;
                double const before = semitones_between(cell.pitch.frequency(), v.resonances.r1.centre);
                CAPTURE(to_string(voice));
                CAPTURE(vowel);
                CHECK(before < 5);
                // A range that begins later cannot show it.
                if (&cell == &v.strip.front()) break;
                ++all;
                within += before >= 2;
                break;
            }
        }
    CHECK(all >= 20);
    CHECK(within >= 0.9 * all);
}

// Common practice, no source: a shape follows the line; it does not go up and down on the way up.
TEST_CASE("no classical shape zigzags on the way up a scale") {
    int zigzags = 0;
    for (auto voice : all_voice_types)
        for (auto const* vowel : seven) {
            auto const v = strip(voice, vowel, "classical");
            int turns = 0;
            double last = 0, way = 0;
            for (auto const& cell : v.strip) {
                double const now = semitones_between(v.resonances.r1.centre, cell.decision.target.r1.centre);
                if (std::abs(now - last) <= 0.5) continue;
                turns += (now - last) * way < 0;
                way = now - last;
                last = now;
            }
            zigzags += turns > 1;
        }
    CHECK(zigzags == 0);
}

// Common practice, no source: an open vowel is let turn over; nobody opens for it. Opening for the meeting
// comes later.
TEST_CASE("nobody opens an open vowel for its turn") {
    int notes = 0;
    for (auto voice : all_voice_types)
        for (std::string const vowel : {"a", "ɑ", "ɔ", "ɛ"})
            for (std::string const technique : {"classical", "choral"}) {
                auto const v = strip(voice, vowel, technique);
                for (auto const& cell : v.strip) {
                    double const turned =
                        semitones_between(v.resonances.r1.centre, 2.0 * cell.pitch.frequency());
                    if (turned < -0.5 || turned > 6) continue;
                    CAPTURE(to_string(voice));
                    CAPTURE(vowel);
                    ++notes;
                    CHECK(semitones_between(v.resonances.r1.centre, cell.decision.target.r1.centre) < 0.5);
                }
            }
    CHECK(notes > 300);
}

// Common practice, no source: a name that leaves does not come back.
TEST_CASE("heard names do not flicker up a scale") {
    int flicker = 0, scales = 0;
    for (auto voice : all_voice_types)
        for (auto const* vowel : seven) {
            std::set<std::string> left;
            std::string before;
            bool back = false;
            for (auto const& cell : strip(voice, vowel, "classical").strip) {
                auto const name = cell.decision.heard_kept.vowel.ipa();
                if (name == before) continue;
                back = back || left.contains(name);
                left.insert(before);
                before = name;
            }
            ++scales;
            flicker += back;
        }
    CHECK(scales == 56);
    CHECK(flicker <= 2);
}

// The text has a limit that no relation outbids: common practice, no source.
TEST_CASE("belt makes no other vowel of the language of what would stay itself, up to C5") {
    int other = 0, all = 0;
    for (auto voice : all_voice_types)
        for (auto const* vowel : seven)
            for (auto const& cell : strip(voice, vowel, "belt").strip) {
                if (cell.pitch > pitch("C5") + Cents{1}) break;
                auto const& d = cell.decision;
                ++all;
                other += d.heard.vowel.base != parse_vowel(vowel).base &&
                         d.heard_kept.vowel.base == parse_vowel(vowel).base;
            }
    CHECK(all > 800);
    CHECK(other == 0);
}

// Common practice, no source.
TEST_CASE("trebles are never told to close the jaw on /a/, and their shape does not zigzag") {
    auto const v = strip(VoiceType::treble, "a", "classical");
    int turns = 0;
    double last = 0, way = 0;
    for (auto const& cell : v.strip) {
        for (auto const& g : cell.decision.gestures)
            CHECK_FALSE((g.part == acoustics::GesturePart::jaw && g.amount < 0));
        double const now = semitones_between(v.resonances.r1.centre, cell.decision.target.r1.centre);
        if (std::abs(now - last) > 0.5) {
            turns += (now - last) * way < 0;
            way = now - last;
        }
        last = now;
    }
    CHECK(turns == 0);
}

// Sundberg, La & Gill 2013, J. Voice 27, 282: no systematic change of fR1 and fR2 in classical men from 300
// to 400 Hz.
TEST_CASE("classical men are still from 300 to 400 Hz, on close vowels too") {
    int moved = 0, all = 0;
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor})
        for (std::string const vowel : {"i", "u", "a", "ɔ", "ɛ"}) {
            auto const v = strip(voice, vowel, "classical");
            for (auto const& cell : v.strip) {
                if (cell.pitch < Pitch(hertz(295)) || cell.pitch > Pitch(hertz(405))) continue;
                ++all;
                moved += std::abs(semitones_between(v.resonances.r1.centre, cell.decision.target.r1.centre)) >
                         2.01;
            }
        }
    CHECK(all > 30);
    CHECK(moved <= 0.1 * all);
}

// Henrich, Smith & Wolfe 2011, J. Acoust. Soc. Am. 129, 1024: some tenors and baritones keep fR1 at 2fo over
// part of their range. Which part and which vowels: a choice (docs/strategy.md).
TEST_CASE(
    "men who tune keep 2fo at fR1 from the turn to F4 on open vowels, and leave the others as they were") {
    int near = 0, all = 0, far = 0;
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor}) {
        for (std::string const vowel : {"a", "ɔ"}) {
            auto const tuned = strip(voice, vowel, "tuned"), classical = strip(voice, vowel, "classical");
            for (std::size_t i = 0; i < tuned.strip.size(); ++i) {
                auto const fo2 = 2.0 * tuned.strip[i].pitch.frequency();
                if (fo2 < tuned.resonances.r1.centre * 1.04 || tuned.strip[i].pitch > pitch("F4") + Cents{1})
                    continue;
                ++all;
                near += std::abs(semitones_between(fo2, tuned.strip[i].decision.target.r1.centre)) <= 2;
                far += std::abs(semitones_between(fo2, classical.strip[i].decision.target.r1.centre)) > 2;
                CHECK(tuned.strip[i].decision.heard.vowel.base == parse_vowel(vowel).base);
            }
        }
        for (std::string const vowel : {"i", "e", "o", "u"}) {
            auto const tuned = strip(voice, vowel, "tuned"), classical = strip(voice, vowel, "classical");
            for (std::size_t i = 0; i < tuned.strip.size(); ++i) {
                if (tuned.strip[i].pitch > pitch("F4") + Cents{1}) break;
                CHECK(tuned.strip[i].decision.advice == classical.strip[i].decision.advice);
            }
        }
    }
    CHECK(all > 12);
    CHECK(near >= 0.8 * all);
    CHECK(far >= 0.3 * all);
}

// Cover (Titze & Worley 2009: 2fo above fR1 in opera) brings the turn forward. That it is done with rounded
// lips, a low larynx and a wide throat, not by closing the jaw, and that the vowel stays itself: common
// practice, no source.
TEST_CASE("men who cover turn an open vowel before it would turn, with lips, larynx and throat") {
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor})
        for (std::string const vowel : {"a", "ɑ"}) {
            auto const v = strip(voice, vowel, "covered");
            int early = 0;
            for (auto const& cell : v.strip) {
                auto const& d = cell.decision;
                double const own = semitones_between(v.resonances.r1.centre, 2.0 * cell.pitch.frequency());
                if (own > -0.5 || d.advice != Advice::modify) continue;
                CAPTURE(to_string(voice));
                CAPTURE(vowel);
                CHECK(own > -3.1);
                early += semitones_between(d.target.r1.centre, 2.0 * cell.pitch.frequency()) > -0.5;
                CHECK(d.heard.vowel.base == parse_vowel(vowel).base);
                for (auto const& g : d.gestures)
                    CHECK_FALSE((g.part == acoustics::GesturePart::jaw && g.amount < 0));
                REQUIRE_FALSE(d.gestures.empty());
                CHECK(d.gestures.front().part != acoustics::GesturePart::tongue_height);
            }
            CHECK(early >= 1);
        }
}

// Ritzerfeld & Miller 2017 (abstract seen), Schutte & Miller 1994 (from memory): tenors and baritones on /a/
// above the passaggio hold fR2 at 3fo, on front vowels at 4fo.
TEST_CASE("men who tune on top hold fR2 at 3fo on /a/ and at 4fo on /e/ while it is near") {
    int at_third = 0, near_third = 0, at_fourth = 0, near_fourth = 0;
    for (auto voice : {VoiceType::baritone, VoiceType::tenor}) {
        auto const third = strip(voice, "a", "tuned-top"), fourth = strip(voice, "e", "tuned-top");
        auto const count = [](plan::VowelPlan const& v, double n, int& at, int& near) {
            for (auto const& cell : v.strip) {
                auto const harmonic = n * cell.pitch.frequency();
                if (2.0 * cell.pitch.frequency() < v.resonances.r1.centre) continue; // not above the turn
                double const own = semitones_between(v.resonances.r2.centre, harmonic);
                if (own < -1 || own > 2.5 || cell.pitch < pitch("F4")) continue; // it reaches fR2
                ++near;
                at += std::abs(semitones_between(cell.decision.target.r2.centre, harmonic)) < 1;
            }
        };
        count(third, 3, at_third, near_third);
        count(fourth, 4, at_fourth, near_fourth);
    }
    CHECK(near_third >= 4);
    CHECK(at_third == near_third);
    CHECK(near_fourth >= 2);
    CHECK(at_fourth == near_fourth);
}

// Sundberg & Skoog 1997, J. Voice 11, 301: on other vowels than open ones the jaw comes in late, other
// articulators first; Sundberg 2009: tongue, lips, or lips and jaw, by the vowel.
TEST_CASE("the jaw is not the answer to everything") {
    std::set<std::string> leading;
    for (auto voice : all_voice_types)
        for (auto const* vowel : seven)
            for (std::string const technique : {"classical", "belt"})
                for (auto const& cell : strip(voice, vowel, technique).strip) {
                    if (cell.decision.gestures.empty()) continue;
                    auto const& g = cell.decision.gestures.front();
                    if (technique == "classical")
                        CHECK_FALSE(
                            (g.part == acoustics::GesturePart::tongue_advancement && g.amount < -0.3));
                    if (g.part == acoustics::GesturePart::tongue_advancement && g.amount < 0) continue;
                    leading.insert(std::string(to_string(g.part)) + (g.amount > 0 ? "+" : "-"));
                }
    CHECK(leading.size() >= 5);
}

// R. Miller, "The Structure of Singing" (1986), from memory: the upper passaggio of bass, baritone and tenor
// lies at D4, E4 and G4; there, by common practice, their open vowels turn over. A note that rises through it
// is told so.
TEST_CASE("the open vowels of men turn over at the passaggio of the handbooks, and the plan says so there") {
    for (auto voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor})
        for (auto const* vowel : {"a", "ɑ"}) {
            CAPTURE(to_string(voice));
            CAPTURE(vowel);
            auto const v = strip(voice, vowel, "classical", 0, parse_pitch_range("C3..C5"));
            auto const passaggio = Tuning{}.pitch(plan::generic_passaggio(voice)->second);
            auto const here = std::find_if(v.strip.begin(), v.strip.end(),
                                           [](auto const& cell) { return cell.decision.turns_here; });
            REQUIRE(here != v.strip.end());
            auto const from = [&](Pitch p) {
                return in_semitones(interval(p.frequency(), here->pitch.frequency()));
            };
            CHECK(from(v.turning.pitch) >= 0);
            CHECK(from(v.turning.pitch) < 1);
            CHECK(std::abs(from(passaggio)) < 4.5); // a major third; by the levels it was seven and more
        }
}

// By definition of advice under uncertainty; the turn is where 2fo passes fR1 (docs/formulas.md). Behind it,
// at last, the level of fo comes over that of 2fo (for 17 sopranos on /a/ published as early as D5 in
// C5..G5).
TEST_CASE("the advice printed is the likeliest, names are plain, and the turn happens once") {
    for (auto voice : all_voice_types)
        for (auto const* vowel : seven)
            for (std::string const technique : {"classical", "belt"}) {
                auto const v = strip(voice, vowel, technique, 30);
                int turns = 0;
                for (std::size_t i = 0; i < v.strip.size(); ++i) {
                    auto const& d = v.strip[i].decision;
                    CAPTURE(to_string(voice));
                    CAPTURE(vowel);
                    CHECK(d.certainty >= std::max({d.shares.hold, d.shares.migrate, d.shares.modify}) - 1e-9);
                    CHECK(d.shares.hold + d.shares.migrate + d.shares.modify == doctest::Approx(1));
                    CHECK(d.heard.vowel.raised == 0);
                    CHECK(d.heard_kept.vowel.advanced == 0);
                    CHECK(d.target.shade.raised == 0);
                    turns += d.turns_here;
                    if (!d.turns_here) continue;
                    CHECK(d.turned);
                    CHECK(d.zone.p_turned >= 0.5);
                }
                CHECK(turns <= 1);
                CHECK_FALSE(v.fo_leads < v.turning.pitch);
            }
}
