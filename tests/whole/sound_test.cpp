// SPDX-License-Identifier: MIT
// What is heard agrees with what is planned, measured by other parts of the house and by another program.
#include "support/scratch_folder.hpp"
#include "unit/sound/measures.hpp"
#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/io/audio/write_audio.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/sung_source.hpp"
#include "vowelway/sound/loudness.hpp"
#include "vowelway/sound/note_sounds.hpp"
#include "vowelway/sound/tones.hpp"
#include "vowelway/sound/vowel_sounds.hpp"
#include "vowelway/sound/whisper.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <random>
#include <utility>

using namespace vowelway;
using sound::test::level_at;

namespace {

SungNote note(char const* pitch, char const* vowel, double start = 0, double length = 2) {
    auto const spelled = parse_spelled_pitch(pitch);
    return {.pitch = Tuning{}.pitch(spelled),
            .spelled = spelled,
            .measure = "1",
            .start = seconds(start),
            .length = seconds(length),
            .syllables = {},
            .typed_ipa = {},
            .dynamic = {},
            .vowel = SungVowel{.held = parse_ipa(vowel), .before = {}, .after = {}}};
}

std::vector<double> heard(sound::Programme const& programme, double gain = 1) {
    std::vector<double> out;
    sound::play(programme, gain,
                [&](std::span<float const> x) { out.insert(out.end(), x.begin(), x.end()); });
    return out;
}

// At the rate of measuring: a low-pass of 255 taps, then every third sample.
std::vector<float> for_measuring(std::vector<double> const& x) {
    constexpr int half = 127;
    std::vector<double> taps;
    for (int k = -half; k <= half; ++k) {
        double const pi = std::numbers::pi, t = pi * k / 3.2;
        taps.push_back((k == 0 ? 1 : std::sin(t) / t) * (0.5 + 0.5 * std::cos(pi * k / (half + 1))) / 3.2);
    }
    std::vector<float> out;
    for (std::size_t i = half; i + half < x.size(); i += 3) {
        double sum = 0;
        for (int k = -half; k <= half; ++k)
            sum +=
                taps[static_cast<std::size_t>(k + half)] * x[i + static_cast<std::size_t>(k + half) - half];
        out.push_back(static_cast<float>(sum));
    }
    return out;
}

analysis::Measurements measured(std::vector<double> x, Singer const& singer, Vowel const& vowel,
                                analysis::ProbeKind kind) {
    std::vector<double> padded(24000, 0.0); // half a second of an almost silent room on both sides
    padded.insert(padded.end(), x.begin(), x.end());
    padded.insert(padded.end(), 24000, 0.0);
    double sign = 1e-5;
    for (auto& v : padded) v += (sign = -sign);
    analysis::Listener listener(analysis::measuring_rate);
    listener.hear(for_measuring(padded));
    analysis::Recording recording;
    recording.name = "rendered";
    recording.heard = listener.finish();
    analysis::MeasureRequest request;
    request.reference = singer;
    request.vowels = {vowel};
    request.kind = kind;
    return analysis::measure({recording}, request);
}

std::string output_of(std::string const& command) {
    std::string out;
    if (FILE* const pipe = popen(command.c_str(), "r")) {
        for (int c = 0; (c = std::fgetc(pipe)) != EOF;) out += static_cast<char>(c);
        pclose(pipe);
    }
    return out;
}

double number_behind(std::string const& text, std::string const& label, std::size_t from) {
    auto const at = text.find(label, from);
    REQUIRE(at != text.npos);
    return std::strtod(text.c_str() + at + label.size(), nullptr);
}

} // namespace

TEST_CASE("the note that is heard has the levels that explain prints, kept and changed") {
    plan::PlanRequest request;
    request.singer = io::built_in_voice(VoiceType::soprano);
    request.technique = io::find_technique("classical");
    request.draws = 0;
    request.passage.notes = {note("E5", "i"), note("C4", "a", 2)};
    int compared = 0;
    for (std::size_t i = 0; i < 2; ++i) {
        auto const e = plan::explain_note(request, i);
        auto voice = sound::voice_of(e.singer, request.technique);
        voice.breathy = false;
        for (auto which : {sound::NoteSound::kept, sound::NoteSound::changed}) {
            auto const* shape = which == sound::NoteSound::kept ? &e.kept : e.changed ? &*e.changed : nullptr;
            if (!shape) continue;
            auto const x = heard(sound::note_sounds(
                e, voice, {.only = which, .each = seconds(2), .vibrato = {.extent = Cents{0}}}));
            for (std::size_t n = 0; n < e.harmonics.size(); ++n) {
                CAPTURE(n + 1);
                CHECK(std::abs(level_at(x, in_hertz(e.harmonics[n]), 30000, 80000) -
                               shape->harmonics[n].value) < 0.1);
                ++compared;
            }
        }
    }
    CHECK(compared > 30);
}

TEST_CASE("loudness and peak as ffmpeg's meter of EBU R128 reads them") {
    test::ScratchFolder const folder;
    auto const singer = io::built_in_voice(VoiceType::baritone);
    auto const voice = sound::voice_of(singer, io::find_technique("classical"));
    sound::Programme sung;
    sound::Moment const moment{.pitch = Pitch(hertz(131)), .r1 = hertz(650), .r2 = hertz(1100)};
    sung.items.push_back(
        {"", seconds(0.2), seconds(6), [=] { return sound::sung(voice, sound::steady(moment, {})); }});
    auto const& known = *singer.find(parse_ipa("e"));
    auto const probes = sound::vowel_sounds({.vowel = known,
                                             .tract = plan::tract_length_of(singer),
                                             .tuning = {},
                                             .only = {},
                                             .each = seconds(2),
                                             .faults = true});
    // A loud click and a soft tone: here the peak decides, and lies between the samples.
    sound::Programme click;
    click.items = {{"", seconds(0), seconds(0.06), [] { return sound::click(true, Decibels{100}); }},
                   {"", seconds(1), seconds(5), [] { return sound::tone(hertz(700), Decibels{50}); }}};
    for (sound::Programme const* programme : {&std::as_const(sung), &probes, &std::as_const(click)}) {
        auto const balance = sound::balance(*programme);
        auto const path = (folder / "x.wav").string();
        io::write_audio(path, io::AudioForm::wav, sound::sample_rate,
                        [&](io::AudioFeed const& feed) { sound::play(*programme, balance.gain, feed); });
        auto const says =
            output_of("ffmpeg -hide_banner -nostats -i " + path + " -af ebur128=peak=true -f null - 2>&1");
        auto const summary = says.find("Summary:");
        REQUIRE(summary != says.npos);
        CHECK(balance.held_by_peak == (programme == &click));
        if (!balance.held_by_peak) CHECK(std::abs(number_behind(says, "I:", summary) + 23) <= 0.1);
        CHECK(std::abs(number_behind(says, "I:", summary) - balance.loudness.integrated.value) <= 0.11);
        CHECK(number_behind(says, "Peak:", summary) < -6);
        CHECK(std::abs(number_behind(says, "Peak:", summary) - balance.loudness.peak.value) <= 0.25);
    }
}

// No listener is asked. The vowel is taken from the levels found in the samples, by the model of hearing that
// the plan asks too: a test of the sound, not of that model.
TEST_CASE("rendered vowels are heard as the plan says") {
    int all = 0, same = 0;
    for (auto const type : all_voice_types) {
        plan::PlanRequest request;
        request.singer = io::built_in_voice(type);
        request.technique = io::find_technique("classical");
        request.draws = 0;
        request.vowels = parse_vowels("i e ɛ a ɔ o u");
        auto const plan = plan::make_plan(request);
        auto const voice = sound::voice_of(plan.singer, request.technique);
        std::vector<std::pair<Vowel, acoustics::ResonanceSet>> shapes;
        for (auto const& v : plan.vowels)
            shapes.emplace_back(v.resonances.vowel, acoustics::resonance_set(v.resonances, voice.quarter));
        for (auto const& v : plan.singer.vowels)
            if (std::ranges::none_of(shapes, [&](auto const& s) { return s.first == v.vowel.quality(); }))
                shapes.emplace_back(v.vowel.quality(), acoustics::resonance_set(v, voice.quarter));
        acoustics::VowelSpace const space(shapes, voice.quarter, {}, plan.vowels.size());
        for (std::size_t v = 0; v < plan.vowels.size(); ++v)
            for (std::size_t cell = 2; cell < plan.vowels[v].strip.size(); cell += 7) {
                auto const& c = plan.vowels[v].strip[cell];
                auto const& t = c.decision.target;
                auto const x = sound::test::samples_of(
                    *sound::sung(voice,
                                 sound::steady({.pitch = c.pitch, .r1 = t.r1.centre, .r2 = t.r2.centre})),
                    0.5);
                acoustics::NoteSpectrum const grid(c.pitch, voice.quarter, voice.source);
                std::vector<double> powers;
                for (int n = 1; n <= grid.size(); ++n)
                    powers.push_back(
                        std::pow(10, level_at(x, in_hertz(frequency_of({n}, c.pitch)), 4000, x.size()) / 10));
                auto const set = acoustics::resonance_set(t.r1.centre, t.r2.centre, voice.quarter);
                // As the plan names them: a name stays until another is clearly nearer.
                auto const& before = plan.vowels[v].strip[cell - 1].decision.heard.vowel;
                auto const got = space.hear(heard_place(grid, set, powers), v, &before);
                ++all;
                same += got.vowel == c.decision.heard.vowel;
            }
    }
    MESSAGE(same << " of " << all << " rendered vowels are heard as the plan says");
    CHECK(same >= 0.97 * all);
}

TEST_CASE("the shift of a whisper is the one that measuring takes off again") {
    VowelResonances open{.vowel = parse_ipa("ɛ"),
                         .r1 = {.centre = hertz(550), .sd = hertz(25), .bandwidth = {}},
                         .r2 = {.centre = hertz(1800), .sd = hertz(60), .bandwidth = {}},
                         .r3 = Resonance{.centre = hertz(2500), .sd = hertz(80), .bandwidth = {}},
                         .r4 = {},
                         .origin = {}};
    auto const whispered = sound::whispered_resonances(open);
    auto const shift = analysis::published_shift(analysis::ProbeKind::whisper);
    CHECK(in_hertz(whispered.r1.centre - open.r1.centre) == doctest::Approx(in_hertz(shift.of[0].mean)));
    CHECK(in_hertz(whispered.r2.centre - open.r2.centre) == doctest::Approx(in_hertz(shift.of[1].mean)));
    CHECK(in_hertz(whispered.r3->centre - open.r3->centre) == doctest::Approx(in_hertz(shift.of[2].mean)));
}

TEST_CASE("a modelled whisper, measured, gives the singer's resonances within the interval") {
    int all = 0, inside[2]{}, refused = 0;
    for (auto const type : all_voice_types) {
        auto const singer = io::built_in_voice(type);
        for (auto const& vowel : parse_vowels("i e ɛ a ɔ o u")) {
            auto const& known = *singer.find(vowel);
            auto const x = heard(sound::vowel_sounds({.vowel = known,
                                                      .tract = plan::tract_length_of(singer),
                                                      .tuning = {},
                                                      .only = sound::VowelSound::whisper,
                                                      .each = seconds(2),
                                                      .faults = false}),
                                 1e-4);
            ++all;
            try {
                auto const m = measured(x, singer, vowel, analysis::ProbeKind::whisper);
                Resonance const truth[]{known.r1, known.r2};
                for (std::size_t k = 0; k < 2; ++k) {
                    auto const& found = m.vowels.at(0).tract.resonances[k];
                    bool const in = found && std::abs(in_hertz(found->centre - truth[k].centre)) <=
                                                 1.645 * in_hertz(found->sd);
                    inside[k] += in;
                    if (!in)
                        MESSAGE(to_string(type) << " " << vowel.ipa() << " fR" << k + 1 << " true "
                                                << in_hertz(truth[k].centre) << " found "
                                                << (found ? in_hertz(found->centre) : 0) << " sd "
                                                << (found ? in_hertz(found->sd) : 0));
                }
            } catch (InputError const& e) {
                ++refused;
                MESSAGE(to_string(type) << " " << vowel.ipa() << ": " << e.what());
            }
        }
    }
    MESSAGE("of " << all << " whispers " << inside[0] << " give fR1 and " << inside[1]
                  << " fR2 within the 90 % interval, " << refused << " are refused");
    CHECK(inside[0] >= 0.85 * all);
    CHECK(inside[1] >= 0.85 * all);
}

// The interval covers what singers scatter about the mean shift. So it is asked of whispers that scatter as
// published: 255 +-90, 115 +-105, 125 +-125 Hz (Swerdlin, Smith & Wolfe 2010). fR1 of close vowels, which
// cannot follow that mean, is not counted.
TEST_CASE("whispers that scatter as singers do lie in the 90 % interval about nine times in ten") {
    std::mt19937_64 random(20260411); // any seed; the standard fixes its numbers
    auto const normal = [&] {
        auto const even = [&] { return (static_cast<double>(random() >> 11U) + 0.5) * 0x1p-53; };
        double const radius = std::sqrt(-2 * std::log(even()));
        return radius * std::cos(2 * std::numbers::pi * even());
    };
    int asked[2]{}, inside[2]{}, refused = 0;
    for (auto const type : all_voice_types) {
        auto const singer = io::built_in_voice(type);
        for (auto const& vowel : parse_vowels("i e ɛ a ɔ o u")) {
            auto const& known = *singer.find(vowel);
            bool const close = analysis::is_close(vowel);
            auto whispering = sound::whispered_resonances(known);
            double const mean = in_hertz(whispering.r1.centre - known.r1.centre);
            double low = 0, high = 0;
            do { // a tract has its resonances in order, and apart
                low = in_hertz(known.r1.centre) + mean + (close ? 0 : 90 * normal());
                high = in_hertz(known.r2.centre) + 115 + 105 * normal();
            } while (low < 200 || low > 0.85 * high);
            whispering.r1.centre = hertz(low);
            whispering.r2.centre = hertz(high);
            auto const tract = acoustics::ReachableSet(whispering, plan::tract_length_of(singer)).tract();
            sound::Programme one;
            one.items.push_back({"",
                                 seconds(0.1),
                                 seconds(2),
                                 [&] { return sound::whisper({.tract = tract}, Decibels{50}); },
                                 {},
                                 seconds(0.15)});
            try {
                auto const m = measured(heard(one, 1e-4), singer, vowel, analysis::ProbeKind::whisper);
                Resonance const truth[]{known.r1, known.r2};
                for (std::size_t k = close ? 1 : 0; k < 2; ++k) {
                    auto const& found = m.vowels.at(0).tract.resonances[k];
                    ++asked[k];
                    inside[k] += found && std::abs(in_hertz(found->centre - truth[k].centre)) <=
                                              1.645 * in_hertz(found->sd);
                }
            } catch (InputError const&) {
                ++refused;
            }
        }
    }
    MESSAGE("scattered whispers: fR1 in the 90 % interval " << inside[0] << " of " << asked[0] << ", fR2 "
                                                            << inside[1] << " of " << asked[1] << ", refused "
                                                            << refused);
    for (std::size_t k = 0; k < 2; ++k) { // three deviations of a count of about 50 are 12 %
        CHECK(inside[k] >= 0.78 * asked[k]);
        CHECK(asked[k] >= 35);
    }
    CHECK(inside[0] + inside[1] < asked[0] + asked[1]); // an interval that holds everything says nothing
}

TEST_CASE("low notes, rendered and measured, give F1 and F2 back") {
    int all = 0, inside[2]{}, refused = 0;
    double square[2]{};
    for (auto const type : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor, VoiceType::alto}) {
        auto const singer = io::built_in_voice(type);
        auto voice = sound::voice_of(singer, io::find_technique("classical"));
        voice.blur = acoustics::Blur::none(); // a steady tone: nothing moves across the resonances
        auto const pitch = Tuning{}.pitch(singer.range->low) + semitones(2);
        for (auto const& vowel : parse_vowels("i e ɛ a ɔ o u")) {
            auto const& known = *singer.find(vowel);
            sound::Programme one;
            sound::Moment const m{.pitch = pitch, .r1 = known.r1.centre, .r2 = known.r2.centre};
            one.items.push_back(
                {"", seconds(0), seconds(2), [=] { return sound::sung(voice, sound::steady(m)); }});
            ++all;
            try {
                auto const got = measured(heard(one, 1e-4), singer, vowel, analysis::ProbeKind::sung);
                Resonance const truth[]{known.r1, known.r2};
                for (std::size_t k = 0; k < 2; ++k) {
                    auto const& found = got.vowels.at(0).measured.formants[k];
                    if (!found) continue;
                    double const off = in_hertz(found->centre) / in_hertz(truth[k].centre) - 1;
                    inside[k] += std::abs(off) < 0.1;
                    square[k] += off * off;
                }
            } catch (InputError const& e) {
                ++refused;
                MESSAGE(to_string(type) << " " << vowel.ipa() << ": " << e.what());
            }
        }
    }
    MESSAGE("of " << all << " low notes " << inside[0] << " give F1 and " << inside[1]
                  << " F2 within 10 %, rms " << 100 * std::sqrt(square[0] / all) << " and "
                  << 100 * std::sqrt(square[1] / all) << " %, " << refused << " refused");
    CHECK(inside[0] >= 0.8 * all);
    CHECK(inside[1] >= 0.8 * all);
}
