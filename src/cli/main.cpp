// SPDX-License-Identifier: MIT
// One program, one subcommand a job. Errors are printed here and nowhere else.
#include "cli/command.hpp"
#include "cli/commands.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/core/error.hpp"

#include <CLI/CLI.hpp>

#include <csignal>
#include <exception>
#include <iostream>
#include <new>

namespace {
constexpr int done = 0, our_fault = 1, bad_command_line = 2, bad_input = 3;
}

int main(int argc, char** argv) try {
    std::signal(SIGXFSZ, SIG_IGN); // a file too large is told by the writer
    CLI::App app{"vowelway: what each note will do to each vowel, and what to do about it", "vowelway"};
    app.require_subcommand(1);
    app.failure_message(CLI::FailureMessage::simple);
    app.set_version_flag("--version", "vowelway " VOWELWAY_VERSION);
    app.footer("Results are predictions, never orders: comfort decides. vowelway COMMAND --help tells more.");
    vowelway::cli::Command program(&app);
    vowelway::cli::add_check(program);
    vowelway::cli::add_compare(program);
    vowelway::cli::add_explain(program);
    vowelway::cli::add_measure(program);
    vowelway::cli::add_plan(program);
    vowelway::cli::add_profile(program);
    vowelway::cli::add_tract(program);
    vowelway::cli::add_words(program);
    try {
        app.parse(argc, argv);
    } catch (CLI::ParseError const& error) {
        if (app.exit(error) != 0) return bad_command_line;
    }
    vowelway::cli::finish_standard_output();
    return done;
} catch (vowelway::InputError const& error) {
    std::cerr << error.what() << "\n";
    return bad_input;
} catch (std::bad_alloc const&) {
    std::cerr << "there is not enough memory for this\n  close some programs, or give a shorter input\n";
    return bad_input;
} catch (std::exception const& error) {
    std::cerr << "vowelway: internal error: " << error.what()
              << "\n  this is our fault; please report it with the input\n";
    return our_fault;
}
