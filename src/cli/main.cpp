// SPDX-License-Identifier: MIT
// One program, one subcommand a job. Errors are printed here and nowhere else.
#include "cli/commands.hpp"
#include "vowelway/core/error.hpp"

#include <CLI/CLI.hpp>

#include <exception>
#include <iostream>

namespace {
constexpr int done = 0, our_fault = 1, bad_command_line = 2, bad_input = 3;
}

int main(int argc, char** argv) try {
    CLI::App app{"vowelway: what each note will do to each vowel, and what to do about it", "vowelway"};
    app.require_subcommand(1);
    app.failure_message(CLI::FailureMessage::simple);
    app.set_version_flag("--version", "vowelway " VOWELWAY_VERSION);
    app.footer("Results are predictions, never orders: comfort decides. vowelway COMMAND --help tells more.");
    vowelway::cli::add_check(app);
    vowelway::cli::add_compare(app);
    vowelway::cli::add_explain(app);
    vowelway::cli::add_measure(app);
    vowelway::cli::add_plan(app);
    vowelway::cli::add_profile(app);
    vowelway::cli::add_tract(app);
    vowelway::cli::add_words(app);
    try {
        app.parse(argc, argv);
    } catch (CLI::ParseError const& error) {
        return app.exit(error) == 0 ? done : bad_command_line;
    }
    return done;
} catch (vowelway::InputError const& error) {
    std::cerr << error.what() << "\n";
    return bad_input;
} catch (std::exception const& error) {
    std::cerr << "vowelway: internal error: " << error.what()
              << "\n  this is our fault; please report it with the input\n";
    return our_fault;
}
