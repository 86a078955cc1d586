// SPDX-License-Identifier: MIT
// One program, one subcommand a job. Errors are printed here and nowhere else.
#include "cli/app.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <csignal>
#include <exception>
#include <iostream>
#include <new>
#include <string>

namespace {
using vowelway::reworded;
using vowelway::to_word;
using vowelway::worded;
using vowelway::cli::say;
constexpr int our_fault = 1, bad_input = 3; // and 0 done, 2 bad command line: cli/app.cpp
} // namespace

int main(int argc, char** argv) try {
    std::signal(SIGXFSZ, SIG_IGN); // a file too large is told by the writer
    return vowelway::cli::run(argc, argv);
} catch (vowelway::InputError const& error) {
    say(std::string(error.what()) + "\n");
    return bad_input;
} catch (std::bad_alloc const&) {
    std::cerr << reworded(to_word(
                     "there is not enough memory for this\n  close some programs, or give a shorter input"))
              << "\n";
    return bad_input;
} catch (std::exception const& error) {
    say(worded(
            "vowelway: internal error: {0}\n  this is a fault in vowelway; please report it with the input",
            error.what()) +
        "\n");
    return our_fault;
}
