// SPDX-License-Identifier: MIT
#include "plan/landscape.hpp"
#include "vowelway/acoustics/note_spectrum.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <utility>
#include <vector>

using namespace vowelway;
using namespace vowelway::plan;
using doctest::Approx;

namespace {

// The same without any table.
Landscape::Sample exact(acoustics::NoteSpectrum const& note, Frequency r1, Frequency r2, Frequency quarter) {
    auto const shape = acoustics::resonance_set(r1, r2, quarter);
    std::array<double, acoustics::NoteSpectrum::most_harmonics> powers{};
    note.powers(shape, powers);
    double sum = 0;
    for (int n = 0; n < note.size(); ++n) sum += powers[static_cast<std::size_t>(n)];
    return {{10 * std::log10(sum)}, note.level(shape), heard_place(note, shape)};
}

// What this share of the errors stays under.
double share_of(std::vector<double> errors, double share) {
    std::sort(errors.begin(), errors.end());
    return errors[static_cast<std::size_t>(share * static_cast<double>(errors.size() - 1))];
}

Frequency up(double from, double semitones) { return hertz(from * std::exp2(semitones / 12)); }

} // namespace

TEST_CASE("a landscape tells level and place of any shape as its harmonics have them") {
    auto const quarter = acoustics::quarter_wave(15_cm);
    std::mt19937 random(3);
    for (double fo : {98.0, 220.0, 440.0, 880.0}) {
        CAPTURE(fo);
        Pitch const pitch(hertz(fo));
        Decibels const loudness{3.5};
        Landscape const land(pitch, loudness, {}, quarter);
        acoustics::NoteSpectrum const note(pitch, quarter, {}, loudness);
        CHECK(land.pitch() == pitch);
        CHECK(land.loudness().value == 3.5);
        std::vector<double> level, openness, front; // errors
        auto const look = [&](double row, double column) {
            auto const r1 = up(Landscape::first_r1, row), r2 = up(Landscape::first_r2, column);
            auto const told = land.at(r1, r2), truth = exact(note, r1, r2, quarter);
            level.push_back(std::abs(told.level.value - truth.level.value));
            level.push_back(std::abs(told.loudness.value - truth.loudness.value));
            openness.push_back(std::abs(told.heard.openness.value - truth.heard.openness.value));
            front.push_back(std::abs(told.heard.front.value - truth.heard.front.value));
        };
        std::vector<std::pair<int, int>> points;
        for (int times = 0; times < 200; ++times) {
            int const row = std::uniform_int_distribution(0, 38)(random);
            points.emplace_back(row, std::uniform_int_distribution(std::max(0, row - 15), 35)(random));
        }
        for (auto [row, column] : points) look(row, column);
        for (auto* errors : {&level, &openness, &front}) { // on the lattice: but for single precision
            CHECK(share_of(*errors, 1) < 1e-4);
            errors->clear();
        }
        std::uniform_real_distribution share(0.0, 1.0);
        for (auto [row, column] : points) look(row + share(random), column + share(random));
        // Between its points, blended. A harmonic of a high note that enters or leaves the band of fR2 moves
        // the upper peak by a jump, which no table follows.
        CHECK(share_of(level, 1) < 1);
        CHECK(share_of(level, 0.9) < 0.5);
        CHECK(share_of(openness, 0.95) < 0.1);
        CHECK(share_of(front, 0.95) < 0.25);
    }
}

TEST_CASE("beyond its lattice a landscape takes the edge, and fR2 never comes under fR1") {
    auto const quarter = acoustics::quarter_wave(17_cm);
    Landscape const land(Pitch(hertz(200)), {}, {}, quarter);
    auto const same = [](Landscape::Sample const& a, Landscape::Sample const& b) {
        CHECK(a.level.value == Approx(b.level.value).epsilon(1e-6));
        CHECK(a.heard.front.value == Approx(b.heard.front.value).epsilon(1e-6));
    };
    same(land.at(hertz(60), hertz(1500)), land.at(hertz(150), hertz(1500)));
    same(land.at(hertz(500), hertz(200)), land.at(hertz(500), hertz(480)));
    // 1000 Hz with fR2 at 700: heard as with the lowest fR2 there is.
    auto const low = land.at(up(150, 33), up(480, 6)), lowest = land.at(up(150, 33), up(480, 2));
    same(low, lowest);

    CHECK(Landscape::row_of(hertz(150)).step == 0);
    CHECK(Landscape::row_of(hertz(301)).step == 12);
    CHECK(Landscape::row_of(hertz(9000)).step == Landscape::rows - 2);
    CHECK(Landscape::column_of(hertz(961)).step == 12);
    CHECK(Landscape::column_of(hertz(9000)).step == Landscape::columns - 2);
}
