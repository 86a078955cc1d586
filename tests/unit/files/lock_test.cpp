// SPDX-License-Identifier: MIT
#include "support/scratch_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/files/lock.hpp"
#include "vowelway/files/write.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

using namespace vowelway;
using test::bytes_of;
using test::ScratchFolder;

namespace {
void extend(std::filesystem::path const& file, int times) {
    for (int i = 0; i < times; ++i)
        files::update(file, 1 << 20, [](std::string const& text) { return text + "line\n"; });
}
} // namespace

TEST_CASE("of processes and threads that extend one file none loses a line") {
    ScratchFolder const folder;
    auto const file = folder.put("profile", "");
    std::vector<int> children;
    for (int p = 0; p < 4; ++p) {
        children.push_back(fork());
        if (children.back() == 0) {
            try {
                extend(file, 25);
            } catch (...) {
                _exit(1);
            }
            _exit(0);
        }
    }
    {
        std::vector<std::jthread> threads;
        for (int t = 0; t < 4; ++t) threads.emplace_back([&] { extend(file, 25); });
    }
    for (int const child : children) {
        int status = -1;
        waitpid(child, &status, 0);
        CHECK((WIFEXITED(status) && WEXITSTATUS(status) == 0));
    }
    auto const text = bytes_of(file);
    CHECK(std::ranges::count(text, '\n') == 200);
    CHECK(folder.entries() == 1);
}

TEST_CASE("a lock that is held is waited for, not for ever, it goes with its holder") {
    ScratchFolder const folder;
    auto const file = folder.put("profile", "x");
    using namespace std::chrono_literals;
    {
        files::Lock const held(file);
        CHECK_THROWS_WITH_AS(files::Lock(file, 30ms),
                             doctest::Contains("another program is writing this file"), InputError);
        files::write(file, "replaced"); // the name now means another file, which nobody holds
        CHECK_NOTHROW(files::Lock(file, 30ms));
    }
    CHECK_NOTHROW(files::Lock(file, 30ms));
    CHECK_THROWS_WITH_AS(files::Lock(folder / "none"), doctest::Contains("there is no such file"),
                         InputError);
    CHECK_THROWS_WITH_AS(files::Lock(folder.path()), doctest::Contains("is a folder"), InputError);
}

TEST_CASE("when extending fails the file stays as it was, to the byte and to the moment") {
    ScratchFolder const folder;
    auto const file = folder.put("profile", "old");
    auto const then = std::filesystem::last_write_time(file);
    CHECK_THROWS_AS(
        files::update(file, 100, [](auto const&) -> std::string { throw InputError("wrong", "mend it"); }),
        InputError);
    files::update(file, 100, [](std::string const& text) { return text; });
    CHECK(std::filesystem::last_write_time(file) == then);
    CHECK_THROWS_AS(files::update(file, 2, [](auto const& t) { return t; }), InputError);
    CHECK(bytes_of(file) == "old");
}
