// SPDX-License-Identifier: MIT
#include "cli/command.hpp"

#include "core/utf8.hpp"
#include "core/visible.hpp"
#include "vowelway/analysis/check.hpp"
#include "vowelway/core/wording.hpp"

#include <CLI/CLI.hpp>

#include <cmath>
#include <cstdlib>
#include <string>

namespace vowelway::cli {

namespace {

/// What a command or an option says of itself, in the language that is spoken.
std::string in_words(std::string const& english) { return std::string(reworded(english)); }

} // namespace

Option& Option::required() {
    option_->required();
    return *this;
}

Option& Option::called(std::string const& name) {
    option_->type_name(name);
    return *this;
}

Option& Option::one_of(std::vector<std::string> const& values) {
    option_->check(CLI::IsMember(values));
    return *this;
}

Option& Option::between(int low, int high) {
    option_->check(CLI::Range(low, high));
    return *this;
}

Option& Option::between(double low, double high) {
    option_->check(CLI::Range(low, high));
    // The library's range lets "nan" pass.
    option_->check(
        [](std::string const& text) {
            return std::isnan(std::strtod(text.c_str(), nullptr)) ? worded("{0} is not a number", text)
                                                                  : std::string();
        },
        "");
    return *this;
}

Option& Option::text() {
    option_->check(CLI::Validator(
        [](std::string& text) {
            return utf8::valid(text) && visible(text) == text && text.find('\n') == std::string::npos
                       ? std::string()
                       : worded("is not plain text: it has control characters, or is not UTF-8");
        },
        ""));
    return *this;
}

Option& Option::day() {
    option_->check(CLI::Validator(
        [](std::string& text) {
            return analysis::day_number(text)
                       ? std::string()
                       : worded("{0} is not a day; write it as 2026-10-03", visible(text));
        },
        ""));
    return *this;
}

Option& Option::shows_default() {
    option_->capture_default_str();
    return *this;
}

Command Command::add(std::string const& name, std::string const& says) {
    return Command(app_->add_subcommand(name, in_words(says)));
}

Option Command::value(std::string const& names, std::string& value, std::string const& says) {
    auto* const option = app_->add_option(names, value, in_words(says));
    option->check(CLI::Validator(
        [](std::string& text) {
            return text.empty() ? worded("is empty; leave it out or name a value") : "";
        },
        ""));
    return Option(option);
}

Option Command::value(std::string const& names, int& value, std::string const& says) {
    return Option(app_->add_option(names, value, in_words(says)));
}

Option Command::value(std::string const& names, double& value, std::string const& says) {
    return Option(app_->add_option(names, value, in_words(says)));
}

Option Command::value(std::string const& names, std::optional<double>& value, std::string const& says) {
    return Option(app_->add_option(names, value, in_words(says)));
}

Option Command::values(std::string const& names, std::vector<std::string>& values, std::string const& says) {
    return Option(app_->add_option(names, values, in_words(says)));
}

Option Command::repeated(std::string const& names, std::vector<std::string>& values,
                         std::string const& says) {
    return Option(app_->add_option(names, values, in_words(says))->allow_extra_args(false));
}

void Command::flag(std::string const& names, bool& value, std::string const& says) {
    app_->add_flag(names, value, in_words(says));
}

void Command::footer(std::string const& text) { app_->footer(in_words(text)); }

void Command::needs_command() { app_->require_subcommand(1); }

void Command::runs(std::function<void()> job) {
    app_->callback([app = app_, job = std::move(job)] {
        if (app->get_subcommands().empty()) job();
    });
}

void bad_command_line(std::string_view option, std::string_view wrong) {
    throw CLI::ValidationError(std::string(option), std::string(wrong));
}

void missing(std::string_view what) { throw CLI::RequiredError(std::string(what)); }

} // namespace vowelway::cli
