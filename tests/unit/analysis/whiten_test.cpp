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
            return find_whitenings(s, hertz(16000), hertz(5000), 12).ways.front().zeros.size();
        };
        CAPTURE(f.vowel);
        with_zeros += zeros(16000) > 0;
        // The mean of five frames of white noise is itself no whiter than 0.90, as the mean of n exponential
        // variables has a geometric mean of exp(psi(n)) / n (Abramowitz & Stegun 6.3).
        CHECK(zeros(1760) == 0);
    }
    CHECK(with_zeros >= 4);
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
