// SPDX-License-Identifier: MIT
// Where a line lies and what it asks of the folds. Checked by hand, and by the method of the papers: the line
// cut into its shortest note, each piece counted once (as in the published analyses of song cycles, which cut
// every pitch by the shortest common length and take quartiles of what they get).
#include "vowelway/plan/load.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>
#include <vector>

using namespace vowelway;
using namespace vowelway::plan;

namespace {

SungNote note(char const* pitch, double start, double length) {
    SungNote n{Tuning{}.pitch(parse_spelled_pitch(pitch)), parse_spelled_pitch(pitch)};
    n.start = seconds(start);
    n.length = seconds(length);
    return n;
}

} // namespace

TEST_CASE("time dose and cycle dose are sums over the notes") {
    // Titze, Švec & Popolo 2003: time dose = sum of t, cycle dose = sum of fo t. A4 for 2 s and A3 for 1 s
    // are 3 s and 2 * 440 + 220 cycles.
    Passage p;
    p.notes = {note("A4", 0, 2), note("A3", 5, 1)};
    auto const load = load_of(p, parse_pitch_range("C4..G4"));
    REQUIRE(load);
    CHECK(in_seconds(load->voiced) == doctest::Approx(3));
    CHECK(in_seconds(load->whole) == doctest::Approx(6));
    CHECK(load->cycles == doctest::Approx(1100));
    CHECK(in_semitones(*load->reserve_below) == doctest::Approx(-3));
    CHECK(in_semitones(*load->reserve_above) == doctest::Approx(-2));
    CHECK(in_seconds(load->below) == doctest::Approx(1));
    CHECK(in_seconds(load->above) == doctest::Approx(2));
}

TEST_CASE("a note at the end of the range is within it") {
    Passage p;
    p.notes = {note("C4", 0, 1), note("G4", 1, 1)};
    auto const load = load_of(p, parse_pitch_range("C4..G4"));
    CHECK(in_seconds(load->below) == 0);
    CHECK(in_seconds(load->above) == 0);
    CHECK(load->reserve_above->value == doctest::Approx(0));
}

TEST_CASE("quartiles weighted by time are those of the line cut into its shortest notes") {
    std::mt19937 random(7);
    for (int song = 0; song < 50; ++song) {
        Passage p;
        std::vector<Pitch> pieces;
        double at = 0;
        for (int i = 0; i < 40; ++i) {
            int const eighths = 1 + static_cast<int>(random() % 8);
            auto n = note("C4", at, 0.25 * eighths);
            n.pitch = n.pitch + semitones(static_cast<int>(random() % 20));
            at += 0.25 * eighths;
            pieces.insert(pieces.end(), static_cast<std::size_t>(eighths), n.pitch);
            p.notes.push_back(n);
        }
        std::sort(pieces.begin(), pieces.end());
        auto const load = load_of(p, std::nullopt);
        // the piece at or below which the share lies
        auto const at_share = [&](std::size_t of_four) {
            return pieces[(pieces.size() * of_four + 3) / 4 - 1];
        };
        CHECK(load->tessitura.low == pieces.front());
        CHECK(load->tessitura.quartile1 == at_share(1));
        CHECK(load->tessitura.median == at_share(2));
        CHECK(load->tessitura.quartile3 == at_share(3));
        CHECK(load->tessitura.high == pieces.back());
        CHECK_FALSE(load->reserve_below);
    }
}

TEST_CASE("a passage without notes has no load") { CHECK_FALSE(load_of({}, std::nullopt)); }
