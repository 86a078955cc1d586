// SPDX-License-Identifier: MIT
// The cutting of the vocal line into systems.
#include "chart/engraving/engrave.hpp"
#include "chart/engraving/score_layout.hpp"
#include "support/fixed_measurer.hpp"
#include "support/sample_plan.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <set>

using namespace vowelway;
using namespace vowelway::chart;

namespace {
std::vector<System> systems_of(plan::Plan const& plan, double width) {
    static sample::FixedMeasurer const fixed;
    static Staff staff;
    staff = staff_to_draw(plan.passage);
    return assign_systems(measure_bars(plan, staff, fixed), width);
}
} // namespace

TEST_CASE("places on the staff") { // common practice, no source
    Clef const treble{'G', 2, 0}, bass{'F', 4, 0}, alto{'C', 3, 0}, tenor{'C', 4, 0};
    CHECK(staff_step(parse_spelled_pitch("E4"), treble) == 0);  // bottom line
    CHECK(staff_step(parse_spelled_pitch("C4"), treble) == -2); // first ledger line below
    CHECK(staff_step(parse_spelled_pitch("F5"), treble) == 8);  // top line
    CHECK(staff_step(parse_spelled_pitch("G2"), bass) == 0);
    CHECK(staff_step(parse_spelled_pitch("C4"), bass) == 10); // first ledger line above
    CHECK(staff_step(parse_spelled_pitch("C4"), alto) == 4);  // middle line
    CHECK(staff_step(parse_spelled_pitch("C4"), tenor) == 6);
    CHECK(staff_step(parse_spelled_pitch("F#5"), treble) == 8); // an accidental does not move the head
}

TEST_CASE("every sung note begins once, in order, within its system") {
    auto const plan = sample::song_plan();
    for (double const width : {200.0, 300.0, 470.0}) {
        CAPTURE(width);
        std::size_t next = 0;
        for (auto const& system : systems_of(plan, width)) {
            CHECK(system.width <= width + 0.01);
            double x = -1;
            for (auto const& a : system.atoms) {
                CHECK(a.x >= x);
                x = a.x;
                if (a.begins_note) CHECK(*a.note == next++);
            }
        }
        CHECK(next == plan.passage.notes.size());
    }
}

TEST_CASE("words under one system never touch") {
    auto const plan = sample::song_plan();
    for (auto const& system : systems_of(plan, 300)) {
        double end = -1;
        for (auto const& a : system.atoms) {
            if (a.under == 0) continue;
            CHECK(a.x - a.under > end);
            end = a.x + a.under;
        }
    }
}

TEST_CASE("a longer note gets more room") { // common practice, no source
    Passage p;
    sample::add_bar(p,
                    {{"C4", 2, "a", "a"}, {"C4", 1, "a", "a"}, {"C4", 0.5, "a", "a"}, {"C4", 0.5, "a", "a"}});
    auto const system =
        systems_of(sample::plan_of(p, sample::singer(), parse_pitch_range("C3..A4")), 400).front();
    std::vector<double> x;
    for (auto const& a : system.atoms)
        if (a.note) x.push_back(a.x);
    REQUIRE(x.size() == 4);
    CHECK(x[1] - x[0] > 1.2 * (x[2] - x[1]));
    CHECK(x[2] - x[1] > 1.2 * (x[3] - x[2]));
}

TEST_CASE("bars of rest are counted together") {
    auto const systems = systems_of(sample::song_plan(), 470);
    auto const& atoms = systems.front().atoms;
    auto const rest = std::ranges::find(atoms, Atom::Kind::multi_rest, &Atom::kind);
    REQUIRE(rest != atoms.end());
    CHECK(rest->bars == 3);
}

TEST_CASE("a bar wider than the page is cut between its notes and loses none") {
    Passage p;
    std::vector<sample::Tone> crowd;
    for (int i = 0; i < 40; ++i) crowd.push_back({"C4", 0.1, "strength", "ɛ"});
    sample::add_bar(p, crowd);
    auto const systems = systems_of(sample::plan_of(p, sample::singer(), parse_pitch_range("C3..A4")), 300);
    CHECK(systems.size() > 3);
    std::size_t notes = 0;
    for (auto const& s : systems) {
        CHECK(s.width <= 300.01);
        for (auto const& a : s.atoms) notes += a.begins_note;
    }
    CHECK(notes == 40);
}
