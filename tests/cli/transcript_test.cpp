// SPDX-License-Identifier: MIT
#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include "transcript.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sys/wait.h>

namespace fs = std::filesystem;
using namespace vowelway::test;

namespace {

std::string read(fs::path const& path) {
    std::ifstream in(path, std::ios::binary);
    REQUIRE_MESSAGE(in, "cannot read " << path.string());
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string environment(char const* name) {
    char const* value = std::getenv(name);
    REQUIRE_MESSAGE(value != nullptr, name << " is not set");
    return value;
}

std::string join(std::vector<std::string> const& lines) {
    std::string out;
    for (auto const& line : lines) out += line + "\n";
    return out;
}

} // namespace

TEST_CASE("runner: refuses what tests nothing, and tells right from wrong") {
    CHECK_THROWS(parse_transcript("# only a comment\n"));
    CHECK_THROWS(parse_transcript("output\n$ command\n"));
    auto const steps = parse_transcript("$ a\nout\n! err\n-> 3\n\n$ b\n");
    REQUIRE(steps.size() == 2);
    CHECK(steps[0].exit_code == 3);
    CHECK(lines_match({"a", "...", "z"}, {"a", "b", "c", "z"}));
    CHECK(lines_match({"..."}, {}));
    CHECK_FALSE(lines_match({"a", "...", "z"}, {"a", "b"}));
    CHECK_FALSE(lines_match({"a"}, {"a", "b"}));
    CHECK_FALSE(lines_match({}, {"a"}));
}

TEST_CASE("transcript") {
    fs::path const file = environment("VOWELWAY_TRANSCRIPT");
    fs::path const source = environment("VOWELWAY_SOURCE_DIR");
    auto const steps = parse_transcript(read(file));

    char pattern[] = "/tmp/vowelway-transcript-XXXXXX";
    REQUIRE(mkdtemp(pattern) != nullptr);
    fs::path const folder = pattern, work = folder / "work";
    fs::create_directories(folder / "bin");
    fs::create_directories(work);
    fs::create_symlink(environment("VOWELWAY_PROGRAM"), folder / "bin/vowelway");
    for (auto const* name : {"profiles", "charts"}) fs::create_symlink(source / name, work / name);
    fs::create_symlink(source / "tests/data", work / "data");

    for (auto const& step : steps) {
        INFO(file.filename().string(), ":", step.line, ": $ ", step.command);
        std::ofstream(folder / "command") << step.command << "\n";
        std::string const run = "cd '" + work.string() + "' && PATH='" + (folder / "bin").string() +
                                "':$PATH sh ../command >../out 2>../err </dev/null";
        int const status = std::system(run.c_str());
        auto const out = split_lines(read(folder / "out")), err = split_lines(read(folder / "err"));
        CHECK_MESSAGE(WIFEXITED(status), "the command was ended by a signal");
        CHECK_MESSAGE(WEXITSTATUS(status) == step.exit_code,
                      "exit code " << WEXITSTATUS(status) << ", expected " << step.exit_code);
        CHECK_MESSAGE(lines_match(step.output, out), "output:\n"
                                                         << join(out) << "expected:\n"
                                                         << join(step.output));
        CHECK_MESSAGE(lines_match(step.errors, err), "errors:\n"
                                                         << join(err) << "expected:\n"
                                                         << join(step.errors));
    }
    fs::remove_all(folder);
}
