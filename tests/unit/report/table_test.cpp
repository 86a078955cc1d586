// SPDX-License-Identifier: MIT
#include "vowelway/report/table.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::report;

TEST_CASE("columns are aligned by what is seen: diacritics take no room") {
    Table table({{"vowel"}, {"Hz", Table::Align::right}, {"heard"}});
    table.row({"ɑ̃", "700", "ɔ̃"});
    table.row({"i", "2290", ""});
    CHECK(table.str() == "vowel    Hz  heard\n"
                         "ɑ̃       700  ɔ̃\n"
                         "i      2290\n");
    CHECK(display_width("ɛ̝̟") == 1);
    CHECK(display_width("fR1 ±") == 5);
}
