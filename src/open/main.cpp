// SPDX-License-Identifier: MIT
// vowelway-open FOLDER PORT BROWSER: serves the page until it is interrupted. `vowelway open` starts it; it
// is a program of its own, so that no other command loads the library of the network.
#include "open/serve.hpp"

#include <spawn.h>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <thread>

namespace {

/// The desktop's own way to open an address; where there is none, the person has the address.
void show_in_browser(std::string const& program, std::string const& address) {
    std::string name = program, at = address;
    char* const arguments[] = {name.data(), at.data(), nullptr};
    pid_t child = 0;
    if (posix_spawnp(&child, name.c_str(), nullptr, nullptr, arguments, environ) != 0)
        std::fprintf(stderr, "cannot start %s; open the address yourself\n", program.c_str());
}

} // namespace

int main(int count, char** arguments) {
    if (count != 4) {
        std::fputs("this program is started by: vowelway open\n", stderr);
        return 2;
    }
    std::string const folder = arguments[1], browser = arguments[3];
    // Every thread leaves these to sigwait below; a browser that ends is nobody's child to wait for.
    sigset_t ends;
    sigemptyset(&ends);
    for (int const signal : {SIGINT, SIGTERM, SIGHUP}) sigaddset(&ends, signal);
    pthread_sigmask(SIG_BLOCK, &ends, nullptr);
    std::signal(SIGCHLD, SIG_IGN);

    httplib::Server server;
    int const port = vowelway::open::prepare(server, folder, std::atoi(arguments[2]));
    if (port == 0) {
        std::fprintf(stderr,
                     "cannot listen at port %s of this machine\n  leave out --port: any free one is taken\n",
                     arguments[2]);
        return 3;
    }
    auto const address = "http://127.0.0.1:" + std::to_string(port) + "/";
    std::printf("%s\nCtrl-C stops it.\n", address.c_str());
    std::fflush(stdout);
    std::thread serving([&] { server.listen_after_bind(); });
    if (!browser.empty()) show_in_browser(browser, address);
    int signal = 0;
    sigwait(&ends, &signal);
    server.stop();
    serving.join();
    return 0;
}
