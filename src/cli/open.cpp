// SPDX-License-Identifier: MIT
// vowelway open: the page from this machine, where browsers give it the microphone.
#include "cli/command.hpp"
#include "cli/commands.hpp"
#include "cli/page_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <unistd.h>

#include <memory>
#include <string>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

struct Options {
    std::string folder;
    int port = 0;
    bool no_browser = false;
};

/// The program that serves: beside this one, or where the build puts it.
fs::path server_program() {
    std::error_code none;
    auto const here = fs::read_symlink("/proc/self/exe", none).parent_path();
    for (auto const* place : {"vowelway-open", "../open/vowelway-open"})
        if (fs::is_regular_file(here / place, none)) return here / place;
    throw InputError(
        worded("the program vowelway-open is not there"),
        worded("build it with Debian's libcpp-httplib-dev, or open vowelway.html itself in a browser"));
}

/// Becomes the server, so that Ctrl-C and exit code are its own.
void run(Options const& o) {
    auto const folder = page_folder(o.folder) / "folder";
    auto program = server_program().string(), where = folder.string(), port = std::to_string(o.port),
         browser = std::string(o.no_browser ? "" : "xdg-open");
    char* const arguments[] = {program.data(), where.data(), port.data(), browser.data(), nullptr};
    execv(program.c_str(), arguments);
    throw InputError(worded("cannot start {0}", program), worded("check that it may be run"));
}

} // namespace

void add_open(Command& program) {
    auto command = program.add("open", "The page in a browser, served to this machine alone");
    auto o = std::make_shared<Options>();
    command.value("--port", o->port, "port to listen at (default: any free one)").between(1, 65535);
    command.flag("--no-browser", o->no_browser, "only say the address");
    command.value("--page", o->folder, "the folder that src/page/make.sh builds (default: found)")
        .called("FOLDER");
    command.footer("Example: vowelway open");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
