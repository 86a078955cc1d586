// SPDX-License-Identifier: MIT
#include "cli/app.hpp"

#include "cli/built_with.hpp"
#include "cli/command.hpp"
#include "cli/commands.hpp"
#include "cli/help/help_text.hpp"
#include "cli/help/wrap.hpp"
#include "cli/parser_words.hpp"
#include "cli/spoken.hpp"
#include "cli/standard_output.hpp"
#include "cli/write_manual.hpp"
#include "vowelway/core/wording.hpp"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <sstream>
#include <string>
#include <unistd.h>

namespace vowelway::cli {

namespace {

std::string version_text() {
    std::string out = "vowelway " VOWELWAY_VERSION "\nbuilt with";
    std::string libraries;
    for (auto const& m : built_with())
        libraries += std::string(libraries.empty() ? "" : ", ") + m.name + " " + m.version;
    for (auto const& line : wrapped(libraries, 98)) out += " " + line + "\n";
    return out.substr(0, out.size() - 1);
}

class Layout : public CLI::FormatterBase {
  public:
    std::string make_help(CLI::App const* app, std::string name, CLI::AppFormatMode) const override {
        return help_text(words_of(*app), name, columns_of(STDOUT_FILENO));
    }
};

void set_layout(CLI::App& app, std::shared_ptr<Layout> const& layout) {
    app.formatter(layout);
    if (app.get_parent()) app.fallthrough(); // --say may stand after the command
    app.set_help_flag("-h,--help", worded("this help"));
    for (auto* command : app.get_subcommands([](CLI::App*) { return true; })) set_layout(*command, layout);
}

std::unique_ptr<CLI::App> make_app() {
    auto app = std::make_unique<CLI::App>(
        worded("vowelway: what each note will do to each vowel, and what to do about it"), "vowelway");
    app->require_subcommand(1);
    app->failure_message([](CLI::App const* program, CLI::Error const& error) {
        return parser_words(error.what()) + "\n" +
               worded("Run with {0} for more information.", program->get_help_ptr()->get_name()) + "\n";
    });
    static std::string spoken; // read before the parser runs: it decides what the parser says
    Command program(app.get());
    program.value(
        "--say", spoken,
        "the language of all that is told: en, de, or a file of sentences; also VOWELWAY_SAY in the "
        "environment");
    app->set_version_flag("--version", version_text,
                          worded("the version, and the libraries it was built with"));
    app->footer(worded(
        "Results are predictions, never orders: comfort decides. vowelway COMMAND --help tells more."));
    add_check(program);
    add_compare(program);
    add_explain(program);
    add_hear(program);
    add_keys(program);
    add_lesson(program);
    add_measure(program);
    add_open(program);
    add_page(program);
    add_plan(program);
    add_profile(program);
    add_studio(program);
    add_survey(program);
    add_tract(program);
    add_words(program);
    set_layout(*app, std::make_shared<Layout>());
    return app;
}

// The parser says of a word that is no command only that a command is missing.
bool is_command(CommandWords const& program, std::string const& word) {
    return std::any_of(program.commands.begin(), program.commands.end(),
                       [&](CommandWords const& one) { return one.name == word; });
}

} // namespace

int run(int argc, char** argv) {
    constexpr int done = 0, bad_command_line = 2;
    speak_as_asked(argc, argv);
    auto const app = make_app();
    std::string const first = argc > 1 ? argv[1] : "";
    if (first == "--write-manual" && argc == 3) { // of the build alone: cmake/manual.cmake
        write_manual(argv[2]);
        return done;
    }
    if (!first.empty() && first[0] != '-')
        if (auto const program = words_of(*app); !is_command(program, first)) {
            say(no_such_command(program, first));
            return bad_command_line;
        }
    try {
        app->parse(argc, argv);
    } catch (CLI::ParseError const& error) {
        std::ostringstream out, wrong;
        bool const bad = app->exit(error, out, wrong) != 0;
        print(out.str());
        say(wrong.str());
        if (bad) return bad_command_line;
    }
    finish_standard_output();
    return done;
}

CommandWords all_commands() { return words_of(*make_app()); }

} // namespace vowelway::cli
