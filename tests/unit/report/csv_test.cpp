// SPDX-License-Identifier: MIT
#include "report/csv.hpp"

#include <doctest/doctest.h>

using vowelway::report::csv_line;

namespace {
std::string line(std::vector<std::string> const& fields) {
    std::string out;
    csv_line(out, fields);
    return out;
}
} // namespace

TEST_CASE("fields are quoted where RFC 4180 says so") {
    CHECK(line({"a", "b,c", "say \"ah\"", "two\nlines", ""}) ==
          "a,\"b,c\",\"say \"\"ah\"\"\",\"two\nlines\",\r\n");
}

TEST_CASE("no cell is a formula to a spreadsheet, and numbers stay numbers") {
    // The characters that begin a formula: OWASP, CSV Injection.
    CHECK(line({"=1+1", "+cmd", "-mi", "@SUM(A1)", "\tx", "\rx"}) ==
          "'=1+1,'+cmd,'-mi,'@SUM(A1),'\tx,\"'\rx\"\r\n");
    CHECK(line({"-3", "+3.5", "-0.25", "-1e-3", "12", "1-2", "a=b"}) == "-3,+3.5,-0.25,-1e-3,12,1-2,a=b\r\n");
    CHECK(line({"-3-2", "+", "-", "-inf", "+-3"}) == "'-3-2,'+,'-,'-inf,'+-3\r\n");
}
