// SPDX-License-Identifier: MIT
#include "support/scratch_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/files/write.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <csignal>
#include <fstream>
#include <string>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

using namespace vowelway;
using test::bytes_of;
using test::ScratchFolder;
namespace fs = std::filesystem;

namespace {

unsigned mode_of(fs::path const& file) { return static_cast<unsigned>(fs::status(file).permissions()); }

template <class Write> std::string complaint(Write&& write) {
    try {
        write();
    } catch (InputError const& error) {
        CHECK_FALSE(error.place().file.empty());
        CHECK_FALSE(error.remedy().empty());
        return error.wrong();
    }
    return "written";
}

/// Runs in a process of its own, as nobody when we are root; true when the body returns true.
template <class Body> bool in_child(Body&& body, bool as_nobody) {
    int const child = fork();
    if (child == 0) {
        if (as_nobody && geteuid() == 0 && setuid(65534) != 0) _exit(9);
        bool ok = false;
        try {
            ok = body();
        } catch (...) {
        }
        _exit(ok ? 0 : 1);
    }
    int status = -1;
    return waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace

TEST_CASE("a file appears whole, its mode is kept, and nothing is left beside it") {
    ScratchFolder const folder;
    std::string const bytes("any\0bytes\xFF\n", 11);
    auto const file = folder / "plan.txt";
    auto const mask = umask(0027);
    files::write(file, bytes);
    CHECK(umask(mask) == 0027); // not touched
    CHECK(bytes_of(file) == bytes);
    CHECK(mode_of(file) == 0640u);
    chmod(file.c_str(), 0604);
    files::write(file, "second");
    CHECK(bytes_of(file) == "second");
    CHECK(mode_of(file) == 0604u);
    files::write(file, "");
    CHECK(bytes_of(file).empty());
    CHECK(folder.entries() == 1);
    CHECK_FALSE(files::create(file, "x"));
    CHECK(bytes_of(file).empty());
    CHECK(files::create(folder / "new", "new"));
    CHECK(bytes_of(folder / "new") == "new");
    CHECK(fs::hard_link_count(folder / "new") == 1);
    CHECK(folder.entries() == 2);
}

TEST_CASE("a symbolic link is written through and stays") {
    ScratchFolder const folder;
    fs::create_directory(folder / "real");
    folder.put("real/song", "old");
    fs::create_symlink("real/song", folder / "relative");
    fs::create_symlink(folder / "relative", folder / "twice");
    fs::create_symlink("real/later", folder / "dangling");
    files::write(folder / "twice", "new");
    files::write(folder / "dangling", "made");
    CHECK(fs::is_symlink(folder / "twice"));
    CHECK(fs::is_symlink(folder / "relative"));
    CHECK(fs::is_symlink(folder / "dangling"));
    CHECK(bytes_of(folder / "real/song") == "new");
    CHECK(bytes_of(folder / "real/later") == "made");
}

TEST_CASE("what must not be replaced is refused, untouched, with nothing left beside it") {
    ScratchFolder const folder;
    fs::create_directory(folder / "sub");
    mkfifo((folder / "pipe").c_str(), 0600);
    folder.put("one", "both names");
    fs::create_hard_link(folder / "one", folder / "other");
    fs::create_symlink("round", folder / "round");
    auto const before = folder.entries();
    struct Case {
        fs::path path;
        char const* says;
    };
    Case const cases[] = {
        {folder / "sub", "is a folder, not a file"},
        {folder / "sub/", "is a folder, not a file"},
        {folder / "new/", "is a folder, not a file"},
        {folder / "pipe", "is a device or a pipe, not a file"},
        {"/dev/full", "is a device or a pipe, not a file"},
        {folder / "one", "the file has another name (a hard link) that would keep the old contents"},
        {folder / "round", "cannot write here: Too many levels of symbolic links"},
        {folder / "missing/plan.txt", "cannot write here: No such file or directory"},
        {folder / "one/plan.txt", "cannot write here: Not a directory"},
        {folder / std::string(300, 'n'), "cannot write here: File name too long"},
        {"", "is a folder, not a file"},
    };
    for (auto const& c : cases) {
        CAPTURE(c.path);
        if (c.path.empty())
            CHECK_THROWS_AS(files::write(c.path, "x"), InputError);
        else
            CHECK(complaint([&] { files::write(c.path, "x"); }) == c.says);
    }
    CHECK(bytes_of(folder / "other") == "both names");
    CHECK(folder.entries() == before);
}

TEST_CASE("a protected file and a protected folder are refused") {
    ScratchFolder const folder;
    auto const file = folder.put("locked", "mine");
    fs::permissions(folder.path(), fs::perms::all);
    chmod(file.c_str(), 0444);
    CHECK(in_child(
        [&] { return complaint([&] { files::write(file, "x"); }) == "the file is write-protected"; }, true));
    fs::permissions(folder.path(), fs::perms::owner_all | fs::perms::others_exec);
    CHECK(in_child(
        [&] {
            return complaint([&] { files::write(folder / "new", "x"); }) ==
                   "cannot write here: Permission denied";
        },
        true));
    CHECK(bytes_of(file) == "mine");
    CHECK(folder.entries() == 1);
}

TEST_CASE("when the disk takes only a part, the old file stays and no temporary is left") {
    ScratchFolder const folder;
    auto const file = folder.put("plan", "old");
    CHECK(in_child(
        [&] {
            signal(SIGXFSZ, SIG_IGN);
            rlimit const small{1000, 1000};
            setrlimit(RLIMIT_FSIZE, &small);
            return complaint([&] { files::write(file, std::string(5000, 'x')); }) ==
                       "cannot write: File too large" &&
                   complaint([&] { (void)files::create(folder / "new", std::string(5000, 'x')); }) ==
                       "cannot write: File too large";
        },
        false));
    CHECK(bytes_of(file) == "old");
    CHECK(folder.entries() == 1);
}

TEST_CASE("temporaries of killed writers go at the next write, all others stay") {
    ScratchFolder const folder;
    // A process number that is free: its process has ended and was waited for.
    int const gone = fork();
    if (gone == 0) _exit(0);
    waitpid(gone, nullptr, 0);
    auto const named = [](int process, char const* rest) {
        return ".vowelway-" + std::to_string(process) + rest;
    };
    folder.put(named(gone, "-0123456789abcdef.part"), "half a fi");
    std::string const kept[] = {named(getpid(), "-0123456789abcdef.part"),
                                named(gone, "-0123.part"),
                                named(gone, "-0123456789abcdeg.part"),
                                ".vowelway-.part",
                                "song.part",
                                named(0, "-0123456789abcdef.part")};
    for (auto const& name : kept) folder.put(name, "not ours to remove");
    files::write(folder / "plan", "x");
    CHECK(folder.entries() == 1 + static_cast<std::ptrdiff_t>(std::size(kept)));
    for (auto const& name : kept) CHECK(fs::exists(folder / name));
}

TEST_CASE("killed at any moment, a writer leaves the old file or the new one, and the next write cleans up") {
    ScratchFolder const folder;
    auto const file = folder / "plan";
    std::string const old(1 << 20, 'o'), fresh(1 << 20, 'n');
    files::write(file, old);
    int killed = 0;
    for (int round = 0; round < 40; ++round) {
        int const child = fork();
        if (child == 0) {
            for (;;) files::write(file, fresh);
        }
        usleep(static_cast<useconds_t>(200 + 137 * round));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        killed += WIFSIGNALED(status) ? 1 : 0;
        auto const now = bytes_of(file);
        CHECK((now == old || now == fresh));
        CHECK(folder.entries() <= 2);
        files::write(file, old);
        CHECK(folder.entries() == 1);
    }
    CHECK(killed == 40);
}

TEST_CASE("of many writers at once every reader sees one whole file") {
    ScratchFolder const folder;
    auto const file = folder / "plan";
    files::write(file, std::string(100'000, 'a'));
    {
        std::vector<std::jthread> writers;
        for (char letter = 'b'; letter < 'f'; ++letter)
            writers.emplace_back([&, letter] {
                for (int i = 0; i < 20; ++i) files::write(file, std::string(100'000, letter));
            });
        for (int i = 0; i < 200; ++i) {
            auto const now = bytes_of(file);
            REQUIRE(now.size() == 100'000);
            REQUIRE(std::ranges::count(now, now.front()) == 100'000);
        }
    }
    CHECK(folder.entries() == 1);
    int made = 0;
    {
        std::atomic<int> count = 0;
        {
            std::vector<std::jthread> creators;
            for (int i = 0; i < 8; ++i)
                creators.emplace_back([&] {
                    if (files::create(folder / "once", "x")) ++count;
                });
        }
        made = count;
    }
    CHECK(made == 1);
}
