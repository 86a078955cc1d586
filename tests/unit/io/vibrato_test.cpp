// SPDX-License-Identifier: MIT
// A vibrato in a technique and in a profile.
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/technique/read_technique.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::io;

TEST_CASE("a technique's vibrato is read, and what is left out stays usual") {
    auto const t = parse_technique("vowelway: 1\ntechnique: mine\nvibrato: {extent: 20 cents}\n", "t.yaml");
    CHECK(t.vibrato.extent.value == 20);
    CHECK(in_hertz(t.vibrato.rate) == 5.5);
    for (auto const* wrong :
         {"{extent: 20}", "{extent: 300 cents}", "{rate: 20 Hz}", "{depth: 3 cents}", "wide"})
        CHECK_THROWS_AS(
            parse_technique(std::string("vowelway: 1\ntechnique: mine\nvibrato: ") + wrong + "\n", "t.yaml"),
            InputError);
}
