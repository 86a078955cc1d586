// SPDX-License-Identifier: MIT
// A line of four notes and a rest: levels, joints, rests, and no click anywhere.
#include "measures.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/sound/line_sounds.hpp"
#include "vowelway/sound/note_sounds.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

using namespace vowelway;
using namespace vowelway::sound;
using namespace vowelway::sound::test;

namespace {

constexpr double lead = 0.5; // before the first note, for a breath

void add(Passage& passage, char const* pitch, char const* vowel, double start, bool melisma = false) {
    auto const spelled = parse_spelled_pitch(pitch);
    passage.notes.push_back({.pitch = Tuning{}.pitch(spelled),
                             .spelled = spelled,
                             .measure = "1",
                             .start = seconds(start),
                             .length = seconds(1),
                             .melisma = melisma,
                             .syllables = {},
                             .typed_ipa = {},
                             .dynamic = {},
                             .vowel = {}});
    if (vowel) passage.notes.back().vowel = SungVowel{.held = parse_ipa(vowel), .before = {}, .after = {}};
}

// G3 a, C4 e, D4 on the same syllable, a rest of one second, A4 i far above its fR1.
struct Line {
    plan::Plan plan;
    Timing timing;
    Voice voice;
    std::vector<double> samples;

    explicit Line(bool kept, bool breathy = false) {
        plan::PlanRequest request;
        request.singer = sample::singer();
        request.draws = 0;
        add(request.passage, "G3", "a", 0);
        add(request.passage, "C4", "e", 1);
        add(request.passage, "D4", "e", 2, true);
        add(request.passage, "A4", "i", 4);
        auto const technique = request.technique;
        timing = timing_of(request.passage, {});
        plan = plan::make_plan(std::move(request));
        voice = voice_of(plan.singer, technique);
        voice.breathy = breathy;
        auto const programme =
            line_sounds(plan, timing, voice,
                        {.kept = kept, .guide = false, .click = false, .vibrato = {.extent = Cents{0}}});
        play(programme, 1,
             [&](std::span<float const> x) { samples.insert(samples.end(), x.begin(), x.end()); });
    }

    double level(double hz, double from, double to) const {
        return level_at(samples, hz, index(from), index(to));
    }
    double rms(double from, double to) const {
        double power = 0;
        for (auto i = index(from); i < index(to); ++i) power += samples[i] * samples[i];
        return 10 * std::log10(power / static_cast<double>(index(to) - index(from)) + 1e-30);
    }
    static std::size_t index(double t) { return static_cast<std::size_t>((lead + t) * 48000); }
};

} // namespace

TEST_CASE("in the middle of each note stand the planned pitch and the planned levels, or the kept ones") {
    double most = 0;
    for (bool const kept : {false, true}) {
        Line const line(kept);
        for (std::size_t n = 0; n < 4; ++n) {
            CAPTURE(n);
            auto const& note = line.plan.passage.notes[n];
            auto const& vowel = line.plan.vowels[*line.plan.notes[n].vowel].resonances;
            auto const& target = line.plan.notes[n].decision->target;
            Moment const aimed{.pitch = note.pitch, .r1 = target.r1.centre, .r2 = target.r2.centre};
            Moment const own{.pitch = note.pitch, .r1 = vowel.r1.centre, .r2 = vowel.r2.centre};
            auto const expected = sung_levels(line.voice, kept ? own : aimed);
            double const fo = in_hertz(note.pitch.frequency()), at = in_seconds(note.start);
            for (std::size_t h = 0; h < expected.size(); ++h)
                CHECK(std::abs(line.level(fo * static_cast<double>(h + 1), at + 0.3, at + 0.8) -
                               expected[h].value) < 0.1);
            double const cents = std::exp2(5.0 / 1200);
            CHECK(line.level(fo, at + 0.3, at + 0.8) > line.level(fo * cents, at + 0.3, at + 0.8));
            CHECK(line.level(fo, at + 0.3, at + 0.8) > line.level(fo / cents, at + 0.3, at + 0.8));
            most = std::max(most, std::abs(sung_levels(line.voice, own)[0].value -
                                           sung_levels(line.voice, aimed)[0].value));
        }
    }
    CHECK(most > 3); // the plan changes something, else the two lines tell nothing
}

TEST_CASE(
    "no click and no zipper: above the band there is nothing at any moment, joints and onsets among them") {
    Line const line(false);
    double loudest = 0;
    for (double const x : line.samples) loudest = std::max(loudest, std::abs(x));
    double worst = -300;
    for (std::size_t at = 0; at + 1536 < line.samples.size(); at += 512) {
        double const t = static_cast<double>(at) / 48000 - lead;
        if ((t > -0.6 && t < 0) || (t > 3.3 && t < 4)) continue; // a breath is drawn: noise
        for (double hz = 7000; hz < 20000; hz += 1300)
            worst = std::max(worst, level_at(line.samples, hz, at, at + 1536));
    }
    MESSAGE("loudest above 7 kHz: " << worst - 20 * std::log10(loudest) << " dB");
    CHECK(worst < 20 * std::log10(loudest) - 80);
}

TEST_CASE("notes of one syllable are joined, between two the voice gives way for a moment") {
    Line const line(false);
    auto const middle = [&](double note) { return line.rms(note + 0.4, note + 0.7); };
    double syllables = 0, melisma = 0; // how far the softest hundredth of a second lies below the softer note
    for (double t = -0.1; t < 0.1; t += 0.005) {
        syllables = std::max(syllables, std::min(middle(0), middle(1)) - line.rms(1 + t, 1 + t + 0.01));
        melisma = std::max(melisma, std::min(middle(1), middle(2)) - line.rms(2 + t, 2 + t + 0.01));
    }
    CHECK(syllables > 4);
    CHECK(melisma < 2);
}

TEST_CASE("phrases begin and end softly, at the rest it is still, then a breath is drawn") {
    Line const line(false);
    double const sung = line.rms(2.4, 2.7);
    CHECK(line.rms(0, 0.01) < line.rms(0.3, 0.6) - 15);
    CHECK(line.rms(2.99, 3.0) < sung - 15);
    CHECK(line.rms(3.1, 3.3) < sung - 100);
    double const breath = line.rms(3.6, 3.9);
    CHECK(breath < sung - 15);
    CHECK(breath > sung - 60);
}

TEST_CASE("what is assumed is said, and a note without a vowel is hummed, softer") {
    plan::PlanRequest request;
    request.singer = sample::singer();
    request.draws = 0;
    add(request.passage, "C4", "a", 0);
    add(request.passage, "C4", nullptr, 1);
    auto const technique = request.technique;
    auto const timing = timing_of(request.passage, {});
    auto const plan = plan::make_plan(std::move(request));
    auto const programme = line_sounds(plan, timing, voice_of(plan.singer, technique), {});
    auto const says = [&](char const* what) {
        return std::ranges::any_of(programme.remarks,
                                   [&](Remark const& r) { return r.text.find(what) != std::string::npos; });
    };
    CHECK(says("consonants are left out"));
    CHECK(says("1 note has no vowel"));
    std::vector<double> x;
    play(programme, 1, [&](std::span<float const> s) { x.insert(x.end(), s.begin(), s.end()); });
    auto const power = [&](double from) {
        double sum = 0;
        for (auto i = Line::index(from); i < Line::index(from + 0.3); ++i) sum += x[i] * x[i];
        return sum;
    };
    CHECK(power(1.4) > 0);
    CHECK(power(1.4) < 0.5 * power(0.4));
}
