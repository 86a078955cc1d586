// SPDX-License-Identifier: MIT
#include "vowelway/io/areas/read_areas.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::io;
using doctest::Approx;

namespace {

MeasuredTracts parse(std::string_view text) { return parse_areas(text, "t.csv"); }

std::string complaint(std::string_view text) {
    try {
        parse(text);
    } catch (InputError const& error) {
        CHECK_FALSE(error.remedy().empty());
        return error.what();
    }
    return "";
}

constexpr std::string_view header = "section_length_cm,section_index_from_glottis,area_cm2\n";
std::string with(std::string const& rows) { return std::string(header) + rows; }

} // namespace

TEST_CASE("areas: one tract without a vowel column, from 1 or from 0") {
    for (auto const* rows : {"0.5,1,3\n0.4,2,2.5\n", "0.5,0,3\n0.4,1,2.5", "0.4,2,2.5\r\n0.5,1,3\r\n",
                             "\n# a note\n0.5,1,3\n\n0.4,2,2.5\n\n"}) {
        auto const found = parse(with(rows));
        REQUIRE(found.tracts.size() == 1);
        CHECK(found.tracts[0].vowel.empty());
        REQUIRE(found.tracts[0].sections.size() == 2);
        CHECK(in_centimetres(found.tracts[0].sections[0].length) == Approx(0.5));
        CHECK(in_square_centimetres(found.tracts[0].sections[1].area) == Approx(2.5));
        CHECK(found.remarks.empty());
    }
}

TEST_CASE("areas: RFC 4180, columns in any order, tracts interleaved") {
    auto const found = parse(
        "\xEF\xBB\xBFVowel, AREA_CM2 ,\"note, \"\"x\"\"\",section_index_from_glottis,section_length_cm\n"
        "\"ɑ\",3e0,\"two\nlines\",1,.5\ni,+2,,1,0.5\nɑ,1,,2,0.5\n");
    REQUIRE(found.tracts.size() == 2);
    CHECK(found.tracts[0].vowel == "ɑ");
    CHECK(found.tracts[0].sections.size() == 2);
    CHECK(found.tracts[1].vowel == "i");
    REQUIRE(found.remarks.size() == 1);
    CHECK(found.remarks[0].text == "columns ignored: note, \"x\"");
}

TEST_CASE("areas: what is wrong is told with line and column") {
    CHECK(complaint("").find("empty") != std::string::npos);
    CHECK(complaint(with("0.5,1,3\nx,2,3\n"))
              .find("t.csv:3:1, column section_length_cm: \"x\" is not a number") != std::string::npos);
    CHECK(complaint(with("0.5,1,3 cm2\n")).find("column area_cm2") != std::string::npos);
    CHECK(complaint(with("0.5,1,nan\n")).find("is not a number") != std::string::npos);
    CHECK(complaint(with("0.5,1,inf\n")).find("is not a number") != std::string::npos);
    CHECK(complaint(with("0.5,1,-3\n")).find("out of range") != std::string::npos);
    CHECK(complaint(with("0.5,1,1e300\n")).find("out of range") != std::string::npos);
    CHECK(complaint(with("0.5,1.5,3\n")).find("not a whole number") != std::string::npos);
    CHECK(complaint(with("0.5,-1,3\n")).find("out of range") != std::string::npos);
    CHECK(complaint(with("0.5,7,3\n")).find("section 1 is missing") != std::string::npos);
    CHECK(complaint(with("0,5,1,3\n")).find("4 fields") != std::string::npos);
    CHECK(complaint(with("\"0.5,1,3\n")).find("not closed") != std::string::npos);
    CHECK(complaint(with("\"0.5\"x,1,3\n")).find("after a closing quote") != std::string::npos);
    CHECK(complaint("area_cm2,area_cm2,section_index_from_glottis,section_length_cm\n").find("twice") !=
          std::string::npos);
    CHECK(complaint("section_length_cm,area_cm2\n").find("section_index_from_glottis") != std::string::npos);
    CHECK(complaint(std::string("section\0length", 14)).find("1:8: contains a control character") !=
          std::string::npos);
    CHECK(complaint(with("0.5,1,\xFF\n")).find("UTF-8") != std::string::npos);
}

TEST_CASE("areas: sizes are bounded and the bound is named") {
    std::string many(header);
    for (int k = 1; k <= 513; ++k) many += "0.03," + std::to_string(k) + ",3\n";
    CHECK(complaint(many).find("512") != std::string::npos);
    std::string tracts = "vowel,section_length_cm,section_index_from_glottis,area_cm2\n";
    for (int k = 0; k <= 1000; ++k) tracts += "v" + std::to_string(k) + ",0.5,1,3\n";
    CHECK(complaint(tracts).find("1000") != std::string::npos);
    CHECK(complaint(std::string((16u << 20) + 1, ' ')).find("16 MiB") != std::string::npos);
}
