// SPDX-License-Identifier: MIT
#include "support/scratch_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/files/read.hpp"

#include <doctest/doctest.h>

#include <sys/resource.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace vowelway;
using test::ScratchFolder;

namespace {

std::string complaint(std::filesystem::path const& path, std::uintmax_t bound = 1 << 20) {
    try {
        files::read_text(path, bound);
    } catch (InputError const& error) {
        CHECK(error.place().file == path.string());
        CHECK_FALSE(error.remedy().empty());
        return error.place().line > 0 ? std::to_string(error.place().line) + ":" +
                                            std::to_string(error.place().column) + " " + error.wrong()
                                      : error.wrong();
    }
    return "read";
}

} // namespace

TEST_CASE("the bytes of a file, whatever they are, up to the bound and not one more") {
    ScratchFolder const folder;
    std::string all;
    for (int c = 0; c < 256; ++c) all += static_cast<char>(c);
    CHECK(files::read(folder.put("all", all), 256) == all);
    CHECK(files::read(folder.put("empty", ""), 256).empty());
    CHECK(files::read(folder.put("bound", std::string(4096, 'x')), 4096).size() == 4096);
    CHECK(files::read("/proc/self/status", 1 << 20).size() > 100); // its size is said to be 0
    CHECK_THROWS_WITH_AS(files::read("/proc/self/status", 100), doctest::Contains("larger than 100 bytes"),
                         InputError);
}

TEST_CASE("what is no readable text is told apart, with file, place and remedy") {
    ScratchFolder const folder;
    std::filesystem::create_directory(folder / "sub");
    REQUIRE(mkfifo((folder / "pipe").c_str(), 0600) == 0); // nobody writes: opening it plainly never returns
    int const listener = socket(AF_UNIX, SOCK_STREAM, 0);
    sockaddr_un address{};
    address.sun_family = AF_UNIX;
    auto const name = (folder / "socket").string();
    name.copy(address.sun_path, sizeof address.sun_path - 1);
    REQUIRE(bind(listener, reinterpret_cast<sockaddr*>(&address), sizeof address) == 0);
    std::filesystem::create_symlink("round", folder / "round");
    std::filesystem::create_symlink("nothing", folder / "dangling");

    // RFC 3629 forbids 0xE9 alone, overlong forms and surrogates.
    struct Case {
        char const* what;
        std::filesystem::path path;
        char const* says;
    };
    Case const cases[] = {
        {"missing", folder / "none", "there is no such file"},
        {"under a file", folder.put("file", "x") / "y", "there is no such file"},
        {"dangling link", folder / "dangling", "there is no such file"},
        {"folder", folder / "sub", "is a folder, not a file"},
        {"pipe", folder / "pipe", "is a device or a pipe, not a file"},
        {"socket", folder / "socket", "is a device or a pipe, not a file"},
        {"device", "/dev/zero", "is a device or a pipe, not a file"},
        {"links in a circle", folder / "round", "cannot open the file: Too many levels of symbolic links"},
        {"name too long", folder / std::string(300, 'n'), "cannot open the file: File name too long"},
        {"large", folder.put("large", std::string((1 << 20) + 1, '#')), "the file is larger than 1 MiB"},
        {"Latin-1", folder.put("latin", "one\ncaf\xE9\n"), "2:4 is not UTF-8"},
        {"after other letters", folder.put("after", "ɛ̃ː\xFF"), "1:4 is not UTF-8"},
        {"overlong", folder.put("overlong", "\xC0\xAF"), "1:1 is not UTF-8"},
        {"surrogate", folder.put("surrogate", "a\xED\xA0\x80"), "1:2 is not UTF-8"},
        {"cut off", folder.put("cut", "a\n\nb\xE2\x82"), "3:2 is not UTF-8"},
        {"NUL", folder.put("nul", std::string("ab\0c", 4)),
         "1:3 contains a control character, as binary files do"},
        {"text", folder.put("text", "tab\tand\r\nɑ\n"), "read"},
        {"link to text",
         [&] {
             std::filesystem::create_symlink("text", folder / "link");
             return folder / "link";
         }(),
         "read"},
    };
    for (auto const& c : cases) {
        CAPTURE(c.what);
        CHECK(complaint(c.path) == c.says);
    }
    close(listener);
}

TEST_CASE("a file that may not be read says so, and one that memory does not hold") {
    ScratchFolder const folder;
    auto const secret = folder.put("secret", "x");
    auto const large = folder.put("large", "");
    std::filesystem::resize_file(large, std::uintmax_t{1} << 36); // holes only
    std::filesystem::permissions(secret, std::filesystem::perms::none);
    std::filesystem::permissions(folder.path(), std::filesystem::perms::all);
    int const child = fork();
    if (child == 0) { // as nobody: root may read everything
        if (geteuid() == 0 && setuid(65534) != 0) _exit(9);
        bool told = false, memory = false;
        try {
            files::read(secret, 100);
        } catch (InputError const& error) {
            told = error.wrong() == "you have no permission to read the file";
        }
#if !defined(__SANITIZE_ADDRESS__)
        rlimit const gibibyte{1 << 30, 1 << 30};
        setrlimit(RLIMIT_AS, &gibibyte);
        try {
            files::read(large, std::uintmax_t{1} << 40);
        } catch (InputError const& error) {
            memory = error.wrong() == "there is not enough memory to read the file";
        }
#else
        memory = true; // the sanitizer wants more than any limit
#endif
        _exit((told ? 0 : 1) + (memory ? 0 : 2));
    }
    int status = -1;
    REQUIRE(waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
}

TEST_CASE("a bound is named as people say it") {
    CHECK(size_in_words(1) == "1 byte");
    CHECK(size_in_words(1023) == "1023 bytes");
    CHECK(size_in_words(1024) == "1 KiB");
    CHECK(size_in_words(64 << 20) == "64 MiB");
}
