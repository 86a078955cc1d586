// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/io/write_file.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

using namespace vowelway;
using namespace vowelway::io;
namespace fs = std::filesystem;

TEST_CASE("a file appears whole; what stood there stays when writing fails; nothing is left beside it") {
    char pattern[] = "/tmp/vowelway-write-XXXXXX";
    REQUIRE(mkdtemp(pattern));
    fs::path const folder = pattern;
    auto const read = [](fs::path const& p) {
        std::ifstream in(p, std::ios::binary);
        return std::string(std::istreambuf_iterator<char>(in), {});
    };
    write_file(folder / "plan.txt", "first");
    write_file(folder / "plan.txt", "second");
    CHECK(read(folder / "plan.txt") == "second");
    CHECK(fs::status(folder / "plan.txt").permissions() != fs::perms::owner_read);
    fs::create_directory(folder / "busy");
    write_file(folder / "busy/x", "x");
    CHECK_THROWS_AS(write_file(folder / "busy", "a folder cannot be replaced"), InputError);
    CHECK_THROWS_AS(write_file(folder / "missing/plan.txt", "no such folder"), InputError);
    CHECK(std::distance(fs::directory_iterator(folder), fs::directory_iterator{}) == 2);
    fs::remove_all(folder);
}
