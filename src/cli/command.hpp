// SPDX-License-Identifier: MIT
// A command and its options. The library that reads the command line is seen by command.cpp, app.cpp and
// help/command_words.cpp alone: its header costs more time to compile than all of a command's own code.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace vowelway::cli {

class Option {
  public:
    explicit Option(CLI::Option* option) : option_(option) {}
    Option& required();
    /// How its value is called in the help: FILE, PITCH.
    Option& called(std::string const& name);
    Option& one_of(std::vector<std::string> const& values);
    Option& between(int low, int high);
    Option& between(double low, double high);
    /// Words for people: UTF-8 without control characters, on one line.
    Option& text();
    /// A day, such as 2026-10-03.
    Option& day();
    /// The help shows the value that holds without the option.
    Option& shows_default();

  private:
    CLI::Option* option_;
};

/// Values that options are bound to must outlive the parsing.
class Command {
  public:
    explicit Command(CLI::App* app) : app_(app) {}
    Command add(std::string const& name, std::string const& says);
    /// An empty value is refused.
    Option value(std::string const& names, std::string& value, std::string const& says);
    Option value(std::string const& names, int& value, std::string const& says);
    Option value(std::string const& names, double& value, std::string const& says);
    /// Stays without a value when the option is not given.
    Option value(std::string const& names, std::optional<double>& value, std::string const& says);
    /// As many as stand side by side.
    Option values(std::string const& names, std::vector<std::string>& values, std::string const& says);
    /// One each time the option is given.
    Option repeated(std::string const& names, std::vector<std::string>& values, std::string const& says);
    void flag(std::string const& names, bool& value, std::string const& says);
    /// Below the help: an example.
    void footer(std::string const& text);
    /// One of its own commands must follow.
    void needs_command();
    /// What it does; nothing where one of its own commands followed, which has done its work.
    void runs(std::function<void()> job);

  private:
    CLI::App* app_;
};

/// Ends the program with exit code 2 and "option: what is wrong".
[[noreturn]] void bad_command_line(std::string_view option, std::string_view wrong);
/// The same with "what is required".
[[noreturn]] void missing(std::string_view what);

} // namespace vowelway::cli
