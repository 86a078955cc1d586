// SPDX-License-Identifier: MIT
#include "support/source_dir.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/pitch.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <fstream>
#include <sstream>
#include <string>

using namespace vowelway;

namespace {

std::string field(std::string const& inputs, std::string const& key) {
    auto const at = inputs.find(key + "=");
    if (at == std::string::npos) return "";
    auto const from = at + key.size() + 1;
    return inputs.substr(from, inputs.find(';', from) - from);
}

double hz(char const* text, Tuning tuning = {}) { return in_hertz(parse_frequency(text, tuning)); }

std::string error(auto run) {
    try {
        run();
    } catch (InputError const& e) {
        CHECK_FALSE(e.remedy().empty());
        return e.wrong();
    }
    return "no error";
}

} // namespace

// The source of each row stands in the table: ISO 16:1975, MIDI numbering, the definition of the cent.
TEST_CASE("pitches, numbers and intervals agree with the table of check values") {
    std::ifstream in(vowelway::test::source_dir() + "/tests/data/checks/pitch.csv");
    REQUIRE(in);
    std::string line;
    std::getline(in, line);
    int rows = 0;
    while (std::getline(in, line)) {
        CAPTURE(line);
        std::istringstream cells(line);
        std::string name, inputs, expected_text, tolerance_text;
        std::getline(cells, name, ',');
        std::getline(cells, inputs, ',');
        std::getline(cells, expected_text, ',');
        std::getline(cells, tolerance_text, ',');
        double const expected = std::stod(expected_text), tolerance = std::stod(tolerance_text);
        auto const a4 = field(inputs, "A4");
        Tuning const tuning{a4.empty() ? 440_Hz : hertz(std::stod(a4))};
        double found = 0;
        if (name.starts_with("note_hz"))
            found = in_hertz(tuning.pitch(parse_spelled_pitch(field(inputs, "note"))).frequency());
        else if (name.starts_with("midi"))
            found = parse_spelled_pitch(field(inputs, "note")).key_number();
        else if (name.starts_with("cents"))
            found =
                interval(hertz(hz(field(inputs, "ref").c_str())), hertz(std::stod(field(inputs, "f")))).value;
        else if (name.starts_with("semitones"))
            found = in_semitones(
                interval(hertz(hz(field(inputs, "ref").c_str())), hertz(std::stod(field(inputs, "f")))));
        else
            FAIL("a row that nothing checks");
        CHECK(std::abs(found - expected) <= tolerance + 1e-9);
        ++rows;
    }
    CHECK(rows == 16);
}

// Scientific pitch notation (Young 1939, J. Acoust. Soc. Am. 11, 134): C4 is middle C, the octave begins at
// C.
TEST_CASE("names of pitches are read however they are typed") {
    auto const key = [](char const* text) { return parse_spelled_pitch(text).key_number(); };
    CHECK(key("C4") == 60);
    CHECK(key("c4") == 60);
    CHECK(key(" C4 ") == 60);
    CHECK(key("B3") == 59);
    CHECK(key("C#4") == 61);
    CHECK(key("C♯4") == 61);
    CHECK(key("Db4") == 61);
    CHECK(key("D♭4") == 61);
    CHECK(key("Cx4") == 62);
    CHECK(key("C##4") == 62);
    CHECK(key("Ebb4") == 62);
    CHECK(key("E𝄫4") == 62);
    CHECK(key("bb3") == 58); // B flat, not two flats
    CHECK(key("Cb4") == 59);
    CHECK(key("B#3") == 60);
    CHECK(key("A0") == 21); // the lowest key of the piano in MIDI
    CHECK(key("C8") == 108);
    CHECK(key("C-1") == 0);
    for (auto const* wrong : {"", "H4", "4", "C", "C10", "C4x", "Do4", "C 4", "####C4", "C####4", "♯4"}) {
        CAPTURE(wrong);
        CHECK(error([&] { parse_spelled_pitch(wrong); }).find("is not a pitch") != std::string::npos);
    }
}

TEST_CASE("names of pitches are printed with real accidentals") {
    CHECK(parse_spelled_pitch("f#4").str() == "F♯4");
    CHECK(parse_spelled_pitch("Bb3").str() == "B♭3");
    CHECK(parse_spelled_pitch("Cx4").str() == "C♯♯4");
    CHECK(SpelledPitch{'C', 0.5, 4}.str() == "C♯4 -50 c");
    for (auto const* name : {"C4", "F♯4", "B♭3", "G♭♭2", "C-1"})
        CHECK(parse_spelled_pitch(name).str() == name);
}

TEST_CASE("a frequency is named by the nearest pitch and the cents to it") {
    Tuning const tuning;
    CHECK(tuning.name(350_Hz).str() == "F4 +4 c"); // 3.82 cents above 349.228 Hz
    CHECK(tuning.name(440_Hz).str() == "A4");
    CHECK(tuning.name(466.16_Hz).str() == "B♭4");
    CHECK(tuning.name(370_Hz).pitch.str() == "F♯4");
    CHECK(tuning.name(270_Hz).deviation.value == doctest::Approx(-45.45).epsilon(0.001));
    CHECK(Tuning{442_Hz}.name(442_Hz).str() == "A4");
    CHECK(Tuning{415.3_Hz}.name(440_Hz).str() == "B♭4"); // half a tone below, the usual old pitch
    for (double key = 0; key <= 127; ++key) {
        auto const named = tuning.name(tuning.pitch(key));
        CHECK(named.pitch.key_number() == key);
        CHECK(named.deviation.value == doctest::Approx(0));
    }
}

TEST_CASE("a frequency is typed in hertz or as a pitch with cents") {
    CHECK(hz("698 Hz") == 698);
    CHECK(hz("698Hz") == 698);
    CHECK(hz(" 698.5 ") == 698.5);
    CHECK(hz("F5") == doctest::Approx(698.456)); // ISO 16 and equal temperament
    CHECK(hz("F5 +20c") == doctest::Approx(698.456 * std::exp2(20.0 / 1200)));
    CHECK(hz("F5+20c") == hz("F5 +20 cents"));
    CHECK(hz("D#6 -12 cents") == doctest::Approx(1244.508 * std::exp2(-12.0 / 1200)));
    CHECK(hz("D♯6 −12 c") == hz("D#6 -12 cents"));
    CHECK(hz("A4", Tuning{442_Hz}) == doctest::Approx(442));
    CHECK(hz("440", Tuning{442_Hz}) == 440); // hertz are hertz
    for (auto const* wrong : {"", "Hz", "698 kHz", "F5 20", "F5 + c", "F5 +20%", "H5", "nan", "inf Hz", "5 5",
                              "0x10", "1,5 Hz", "F5-"}) {
        CAPTURE(wrong);
        CHECK(error([&] { hz(wrong); }).find("is neither a frequency nor a pitch") != std::string::npos);
    }
    CHECK(error([] { hz("-5 Hz"); }) == "a frequency must be above 0 Hz");
    CHECK(error([] { hz("0"); }) == "a frequency must be above 0 Hz");
    CHECK(error([] { hz("F5 +1300c"); }).find("more than an octave away") != std::string::npos);
}

TEST_CASE("a range is two pitches, the lower one first") {
    for (auto const* text : {"C3..A4", "C3-A4", "C3 to A4", "C3–A4", "C3 .. A4", "c3…a4"}) {
        CAPTURE(text);
        CHECK(parse_pitch_range(text).str() == "C3..A4");
    }
    CHECK(parse_pitch_range("Bb2..F#4").str() == "B♭2..F♯4");
    CHECK(error([] { parse_pitch_range("A4..C3"); }).find("begins with the higher pitch") !=
          std::string::npos);
    CHECK(error([] { parse_pitch_range("C4..C4"); }).find("a single pitch") != std::string::npos);
    for (auto const* wrong : {"", "C3", "C3..", "..C3", "C3..H4", "low..high"}) {
        CAPTURE(wrong);
        CHECK(error([&] { parse_pitch_range(wrong); }) != "no error");
    }
}

TEST_CASE("a pitch moves by intervals, up and back") {
    Pitch const a4{440_Hz};
    CHECK(in_hertz((a4 + Cents{1200}).frequency()) == doctest::Approx(880)); // the octave doubles
    CHECK(in_hertz((a4 - Cents{1200}).frequency()) == doctest::Approx(220));
    CHECK(((a4 + semitones(7)) - a4).value == doctest::Approx(700));
    CHECK((a4 - (a4 + semitones(7))).value == doctest::Approx(-700));
    // The pure fifth 3:2 is 701.955 cents (Helmholtz/Ellis).
    CHECK(interval(200_Hz, 300_Hz).value == doctest::Approx(701.955));
    CHECK(Pitch{300_Hz} > Pitch{200_Hz});
    for (double bad : {0.0, -1.0, std::nan(""), HUGE_VAL}) CHECK_THROWS_AS(Pitch{hertz(bad)}, InputError);
}

// Elementary theory of music: intervals keep their number of steps.
TEST_CASE("transposition spells intervals as musicians do") {
    auto const moved = [](char const* from, double by) {
        return transposed(parse_spelled_pitch(from), by).str();
    };
    CHECK(moved("C4", 0) == "C4");
    CHECK(moved("Cx4", 0) == "C♯♯4");
    CHECK(moved("C4", 2) == "D4");
    CHECK(moved("B3", 1) == "C4");
    CHECK(moved("D4", 4) == "F♯4"); // major third
    CHECK(moved("E♭4", 4) == "G4");
    CHECK(moved("A3", 3) == "C4"); // minor third
    CHECK(moved("F4", 7) == "C5"); // fifth
    CHECK(moved("B♭3", 7) == "F4");
    CHECK(moved("C4", -1) == "B3");
    CHECK(moved("F4", -4) == "D♭4"); // major third down
    CHECK(moved("F♯4", 12) == "F♯5");
    CHECK(moved("F♯4", -24) == "F♯2");
    for (double by = -24; by <= 24; ++by)
        for (auto const* from : {"C4", "F♯4", "B♭3", "E♭4", "A4", "G♯3"}) {
            CAPTURE(from);
            CAPTURE(by);
            auto const p = parse_spelled_pitch(from);
            CHECK(transposed(p, by).key_number() == p.key_number() + by);
            CHECK(std::abs(transposed(p, by).alter) <= 1);
        }
}

// Values of Titze et al. (2015) notation: nfo is n times fo.
TEST_CASE("quantities convert and kinds stay apart") {
    CHECK(in_centimetres(17.5_cm) == doctest::Approx(17.5));
    CHECK(centimetres(17.5).value() == doctest::Approx(0.175));
    CHECK(in_square_centimetres(square_centimetres(3)) == doctest::Approx(3));
    CHECK(in_seconds(1.5_s) == 1.5);
    CHECK((Cents{50} + Cents{70}).value == 120);
    CHECK((2 * Cents{50} - Cents{70} / 2).value == 65);
    CHECK(Cents{600} / Cents{1200} == 0.5);
    CHECK(Decibels{3} < Decibels{6});
}
