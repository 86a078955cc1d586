// SPDX-License-Identifier: MIT
// Zeros of a whisper's source, in whole tracts of published areas (Story, Titze & Hoffman 1996) whose noise
// is made at a known place: chain matrices, nothing all-pole.
#include "analysis/levelled.hpp"
#include "analysis/whiten.hpp"
#include "support/measuring_data.hpp"
#include "support/tract_synthesis.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::analysis;
namespace make = probe_synthesis;

namespace {

/// Two seconds at 16 kHz, its noise made this share of the way to the lips.
make::Samples from_place(measuring_data::AreaFunction const& f, double place, std::mt19937& random) {
    constexpr std::size_t n = 32768;
    std::normal_distribution<double> normal;
    std::vector<make::Complex> x(n, 0.0);
    auto const behind = static_cast<std::size_t>(place * static_cast<double>(f.areas.size()));
    for (std::size_t k = 1; k < n / 2; ++k) {
        double const hz = 16000.0 * static_cast<double>(k) / n;
        x[k] = make::Complex(normal(random), normal(random)) * hz *
               make::lip_flow_of_noise(f.areas, f.section_cm, behind, 500, hz);
        x[n - k] = std::conj(x[k]);
    }
    make::transform(x, true);
    make::Samples s(n);
    for (std::size_t k = 0; k < n; ++k) s[k] = x[k].real();
    double const size = std::sqrt(make::power(s));
    auto const hiss = make::white(n, random); // 40 dB below
    for (std::size_t k = 0; k < n; ++k) s[k] = s[k] / size + 0.01 * hiss[k];
    return s;
}

std::vector<measuring_data::AreaFunction> five_vowels() {
    std::vector<measuring_data::AreaFunction> some;
    for (auto const& f : measuring_data::area_functions())
        if (f.source == "story1996" &&
            (f.vowel == "i" || f.vowel == "ɛ" || f.vowel == "ɑ" || f.vowel == "ɔ" || f.vowel == "u"))
            some.push_back(f);
    return some;
}

make::Samples with_desk(make::Samples x, std::size_t delay, double gain) {
    for (std::size_t n = x.size(); n-- > delay;) x[n] += gain * x[n - delay];
    return x;
}

} // namespace

TEST_CASE("zeros are looked for in a whole take, not in what a live reading sees") {
    std::mt19937 random(3);
    int with_zeros = 0;
    for (auto const& f : five_vowels()) {
        auto const sound = make::scaled(from_place(f, 0.95, random));
        auto const zeros = [&](std::size_t samples) {
            auto const s = average_spectrum(std::span(sound).subspan(8000, samples), hertz(16000));
            return find_whitenings(s, s, hertz(16000), hertz(5000), 12).ways.front().zeros.size();
        };
        CAPTURE(f.vowel);
        with_zeros += zeros(16000) > 0;
        // The mean of five frames of white noise is itself no whiter than 0.90, as the mean of n exponential
        // variables has a geometric mean of exp(psi(n)) / n (Abramowitz & Stegun 6.3).
        CHECK(zeros(1760) == 0);
    }
    CHECK(with_zeros >= 4);
}

TEST_CASE("zeros are not looked for in what is left of noise that was taken off") {
    std::mt19937 random(4);
    int in_mouth = 0, as_it_is = 0;
    for (auto const& f : five_vowels()) {
        auto const seen = [&](make::Samples const& sound,
                              double noise_db) { // under noise; with the pauses off
            double const size = std::sqrt(make::power(sound)) * std::pow(10, -noise_db / 20);
            auto heard = make::with_noise(sound, noise_db, random), pause = make::white(16000, random);
            std::vector<float> const now(heard.begin(), heard.end());
            for (auto& v : pause) v *= size;
            auto const before = average_spectrum(now, hertz(16000)),
                       noise = average_spectrum(std::vector<float>(pause.begin(), pause.end()), hertz(16000));
            auto left = before;
            for (std::size_t k = 0; k < left.power.size(); ++k)
                left.power[k] = std::max(before.power[k] - noise.power[k], 0.05 * before.power[k]);
            return find_whitenings(left, before, hertz(16000), hertz(5500), 14);
        };
        // Cascades of resonators have no zeros: means of the men (Peterson & Barney 1952) for u, ɔ.
        for (auto const& formants : {std::array{300., 870., 2240.}, std::array{570., 840., 2410.}})
            for (double const slope : {0., 0.5})
                as_it_is += seen(make::resonate(make::sloped(make::white(16000, random), slope),
                                                make::peaks(formants, 1036, 7800, 1.5), 16000),
                                 10)
                                .as_it_is;
        auto const whole = from_place(f, 0.95, random);
        in_mouth += !seen({whole.begin() + 8000, whole.begin() + 24000}, 40).as_it_is;
    }
    CHECK(as_it_is == 20);
    CHECK(in_mouth >= 4);
}

TEST_CASE("what a fast gain control makes of a whisper is never taken for breath as a mouth has it") {
    for (double const place : {0.0, 0.95}) {
        std::mt19937 random(7);
        std::vector<std::vector<float>> breath, evened;
        for (auto const& f : five_vowels()) {
            auto const x = make::breathed(from_place(f, place, random));
            breath.push_back(make::scaled(x));
            evened.push_back(make::scaled(make::fast_gain(x)));
        }
        auto const is = [](std::vector<std::vector<float>> const& sounds) {
            std::vector<HeardTake> takes;
            for (auto const& s : sounds) // without the onset, as the steady part of a take is
                takes.push_back({nullptr, std::span(s).subspan(3200)});
            return evenness_of(takes, ProbeKind::whisper);
        };
        CAPTURE(place);
        CHECK(is(breath) == Evenness::natural);
        CHECK(is(evened) != Evenness::natural);
    }
}

TEST_CASE("a short reflection is told from the zeros of a source in the mouth") {
    for (double const place : {0.0, 0.6, 0.95}) {
        std::mt19937 random(5);
        std::vector<std::vector<float>> plain, near_desk;
        for (auto const& f : five_vowels()) {
            auto const x = from_place(f, place, random);
            plain.push_back(make::scaled(x));
            near_desk.push_back(make::scaled(with_desk(x, 10, 0.4))); // 0.625 ms
        }
        auto const found = [](std::vector<std::vector<float>> const& sounds) {
            std::vector<PowerSpectrum> spectra;
            std::vector<HeardTake> takes;
            for (auto const& s : sounds) spectra.push_back(average_spectrum(s, hertz(16000)));
            for (std::size_t i = 0; i < sounds.size(); ++i) takes.push_back({&spectra[i], sounds[i]});
            return reflection_in(takes, hertz(8000));
        };
        CAPTURE(place);
        auto const none = found(plain), desk = found(near_desk);
        CHECK_FALSE((none && none->up_to_top)); // said of whispers only if it is
        REQUIRE(desk);
        CHECK(desk->up_to_top);
        CHECK(in_seconds(desk->delay) == doctest::Approx(0.000625).epsilon(0.06));
        CHECK(std::abs(desk->gain - 0.4) < 3 * desk->gain_sd);
    }
}
