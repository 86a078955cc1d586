// SPDX-License-Identifier: MIT
// When the folds close, of voices whose closures are known.
#include "analysis/closures.hpp"

#include "analysis/resample.hpp"
#include "support/measuring_data.hpp"
#include "support/probe_synthesis.hpp"
#include "vowelway/analysis/formants.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace vowelway;
using namespace vowelway::analysis;
namespace make = probe_synthesis;

namespace {

constexpr double made_at = 48000, open_part = 0.6;

struct Voice {
    std::vector<double> peaks; ///< F1..F3 in Hz
    double fo, corner;         ///< Hz; the lower the corner, the softer the closure
};

/// Begins in the middle of the sound, as a steady part does.
std::vector<float> sing(Voice const& v, double sign, std::mt19937& random) {
    auto x = make::resonate(make::voiced_source(36000, made_at, v.fo, open_part, v.corner, 0, 0, random),
                            make::peaks(v.peaks, 1036, 7800, 1.3), made_at);
    x = make::with_noise(std::move(x), 40, random);
    for (auto& s : x) s *= sign;
    return make::scaled({x.begin() + 5000, x.end()});
}

/// Share of the moments that lie within a quarter of a period after a true closure, or just before it.
double share_closed(Closures const& found, double fo) {
    int right = 0;
    for (auto const n : found.moments) {
        double const t = static_cast<double>(n) / in_hertz(found.rate) + 5000 / made_at,
                     periods = t * fo - open_part;
        double const after = periods - std::floor(periods + 0.03);
        right += after < 0.25;
    }
    return static_cast<double>(right) / static_cast<double>(found.moments.size());
}

} // namespace

TEST_CASE("closures of a soft voice are found whichever way up the sound is, however it begins") {
    std::mt19937 random(5);
    for (auto const& f : {std::vector{210., 670., 1900.}, std::vector{300., 870., 2240.},
                          std::vector{570., 840., 2410.}, std::vector{730., 1090., 2440.}})
        for (double const fo : {90., 110., 120., 133., 160., 200.})
            for (double const sign : {-1., 1.}) {
                auto const sung = sing({f, fo, 1600}, sign, random);
                auto const low = resample(sung, hertz(made_at), hertz(7252));
                auto sound = low.samples; // less the slope of a voice's source, as it is read
                for (std::size_t n = sound.size(); n-- > 1;) sound[n] -= 0.97 * sound[n - 1];
                CAPTURE(f[0]);
                CAPTURE(fo);
                CAPTURE(sign);
                CHECK(share_closed(find_closures(sound, low.rate, hertz(fo), 12), fo) > 0.7);
            }
}

TEST_CASE("what a voice has on or between harmonics is never far off with a small deviation") {
    std::mt19937 random(7);
    int read = 0, sure = 0, held = 0;
    for (double const fo : {133., 240., 260., 280., 300.})
        for (auto const& t : measuring_data::peterson_barney()) {
            if (t.group != "m" || (t.ipa != "u" && t.ipa != "ɔ" && t.ipa != "ɑ")) continue;
            FormantOptions options;
            options.kind = ProbeKind::sung;
            options.fo = hertz(fo);
            auto const sung = sing({{t.formants.begin(), t.formants.end()}, fo, 1600}, 1, random);
            auto const sound = make::scaled(resample(sung, hertz(made_at), hertz(16000)).samples);
            // Means of the men (Peterson & Barney 1952).
            auto const [f1, f2, f3] = t.ipa == "u"   ? std::array{300., 870., 2240.}
                                      : t.ipa == "ɔ" ? std::array{570., 840., 2410.}
                                                     : std::array{730., 1090., 2440.};
            Expectation const due{{{{hertz(f1), 0.18}, {hertz(f2), 0.15}, {hertz(f3), 0.12}}}, hertz(1036)};
            auto const reading = read_formants(sound, hertz(16000), due, options);
            for (std::size_t k = 0; k < 2; ++k) {
                auto const& f = reading.formants[k];
                if (!f) continue;
                double const away = std::abs(in_hertz(f->centre) - t.formants[k]);
                ++read, held += away < 1.96 * in_hertz(f->sd);
                sure += away > 0.15 * t.formants[k] && in_hertz(f->sd) < 0.05 * in_hertz(f->centre);
            }
        }
    CAPTURE(read);
    CHECK(sure == 0);
    CHECK(held > 0.915 * read);
}

TEST_CASE("two pulses of a creak are enough: what rings after them is read, not the pulses") {
    std::mt19937 random(9);
    for (auto const& f : {std::array{272., 720., 2100.}, std::array{300., 870., 2240.}})
        for (double const sign : {-1., 1.}) {
            make::Samples x(9600, 0.0);
            for (std::size_t const from : {3900, 6000})
                for (std::size_t n = 0; n < 144; ++n) { // 3 ms, as make::creak_source has them
                    double const u = static_cast<double>(n) / 144;
                    x[from + n] += sign * (2 * u - 3 * u * u);
                }
            x = make::with_noise(make::resonate(std::move(x), make::peaks(f, 1036, 7800, 1.3), made_at), 40,
                                 random);
            auto const sound = make::scaled(resample(make::scaled(x), hertz(made_at), hertz(16000)).samples);
            FormantOptions options;
            options.kind = ProbeKind::creak;
            Expectation const due{{{{hertz(340), 0.18}, {hertz(800), 0.15}, {hertz(2240), 0.12}}},
                                  hertz(1036)};
            auto const reading = read_formants(sound, hertz(16000), due, options);
            CAPTURE(f[0]);
            CAPTURE(sign);
            REQUIRE(reading.formants[0]);
            CHECK(in_hertz(reading.formants[0]->centre) == doctest::Approx(f[0]).epsilon(0.05));
        }
}

TEST_CASE("a creak's pulses are found, not the ends of what was cut out") {
    std::array const f{231., 670., 1900.};
    for (unsigned seed = 1; seed <= 40; ++seed) {
        std::mt19937 random(seed);
        auto x = make::resonate(make::creak_source(48000, made_at, 30, random),
                                make::peaks(f, 1036, 7800, 1.3), made_at);
        x = make::with_noise(std::move(x), 40, random);
        auto const cut = make::scaled({x.begin() + 9000 + 97 * seed, x.begin() + 26000 + 211 * seed});
        auto const low = resample(cut, hertz(made_at), hertz(7200));
        auto sound = low.samples;
        for (std::size_t n = sound.size(); n-- > 1;) sound[n] -= 0.97 * sound[n - 1];
        auto const found = find_closures(sound, low.rate, std::nullopt, 12);
        CAPTURE(seed);
        CHECK(found.moments.size() >= 2);
        for (auto const n : found.moments) CHECK((n >= 14 && n + 14 < sound.size()));
    }
}
