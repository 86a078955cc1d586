// SPDX-License-Identifier: MIT
// Where the answer of a command goes: one way for every command. A command names the forms it has and gives a
// writer for each; endings, standard output, refusals and messages are here.
#pragma once

#include "cli/command.hpp"
#include "vowelway/chart/document.hpp"

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace vowelway::cli {

/// What an answer can be written as. Names and endings stand in a table in outputs.cpp.
enum class Form { table, csv, json, chart, score, wav, flac, midi, survey, words, poem, html, corrections };

/// Makes one form: a text, or the documents of a file with that ending (".svg"); several are saved under
/// numbered names.
struct Writer {
    using Text = std::function<std::string()>;
    using Documents = std::function<std::vector<chart::Document>(std::string const& ending)>;
    Form form;
    std::variant<Text, Documents> make;
    /// For what is too long to be held in memory: writes the file itself; `make` is for standard output.
    std::function<void(std::filesystem::path const&)> save = {};
    /// The lines of a text are to be read one after another: they are not broken to fit a width.
    bool whole_lines = false;
};

/// Throws as bad_command_line does where the output is one of the inputs (empty names and names of no file
/// are passed over).
void refuse_what_is_read(std::string const& output, std::vector<std::string> const& inputs);

class Outputs {
  public:
    /// Adds -o, --as and --overwrite for these forms; the first is the one for the terminal. Must outlive the
    /// parsing.
    void add_to(Command& command, std::vector<Form> const& forms);

    /// Before any work: refuses endings that no form has, and outputs that are one of the inputs (files named
    /// on the command line; empty names and names of no file are passed over) unless --overwrite. Throws as
    /// bad_command_line does.
    void check(std::vector<std::string> const& inputs) const;

    /// The first file to be written in that form; empty when there is none.
    std::string first(Form form) const;

    /// Whether an output is asked for in that form.
    bool has(Form form) const;

    /// Whether `write` prints the form for the terminal, or another, to standard output.
    bool prints() const;

    /// Writes every output, prints to standard output for "-" or when there is no output at all, says on
    /// standard error what was written. Throws InputError for what cannot be written, standard output too.
    void write(std::vector<Writer> const& writers) const;

  private:
    std::vector<Form> forms_;
    std::vector<std::string> files_;
    std::string as_;
    bool overwrite_ = false;
};

} // namespace vowelway::cli
