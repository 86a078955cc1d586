// SPDX-License-Identifier: MIT
#include "cli/outputs.hpp"

#include "cli/help/wrap.hpp"
#include "cli/standard_output.hpp"
#include "core/visible.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/write.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <unistd.h>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

/// A form of an answer: the name of --as (empty: not for standard output) and the endings of its files.
struct FormRow {
    Form form;
    std::string_view as, endings;
};
constexpr std::array form_rows{FormRow{Form::table, "table", ".txt"},
                               FormRow{Form::csv, "csv", ".csv"},
                               FormRow{Form::json, "json", ".json"},
                               FormRow{Form::chart, "", ".pdf .svg .png"},
                               FormRow{Form::score, "", ".mxl .musicxml .xml"},
                               FormRow{Form::wav, "wav", ".wav"},
                               FormRow{Form::flac, "flac", ".flac"},
                               FormRow{Form::midi, "", ".mid"},
                               FormRow{Form::survey, "", ".db"},
                               FormRow{Form::words, "table", ""}, // `.txt` is the poem
                               FormRow{Form::poem, "poem", ".txt"},
                               FormRow{Form::html, "html", ".html"},
                               FormRow{Form::corrections, "corrections", ".yaml"}};

FormRow const& row_of(Form form) { return *std::ranges::find(form_rows, form, &FormRow::form); }

bool has_ending(Form form, std::string const& file) {
    auto const ending = fs::path(file).extension().string();
    return ending.size() > 1 &&
           fmt::format(" {} ", row_of(form).endings).find(" " + ending + " ") != std::string::npos;
}

std::string endings_of(std::vector<Form> const& forms) {
    std::string out;
    for (auto const form : forms)
        if (auto const endings = row_of(form).endings; !endings.empty())
            out += (out.empty() ? "" : " ") + std::string(endings);
    return out;
}

/// One file under either name, links looked through.
bool same_file(std::string const& output, std::string const& input) {
    std::error_code none;
    return fs::equivalent(output, input, none) && !none;
}

/// "song-2.svg" of "song.svg".
fs::path with_suffix(fs::path const& file, std::string const& suffix) {
    if (suffix.empty()) return file;
    return file.parent_path() / (file.stem().string() + suffix + file.extension().string());
}

Writer const& writer_of(std::vector<Writer> const& writers, Form form) {
    auto const found = std::ranges::find(writers, form, &Writer::form);
    if (found == writers.end()) throw std::logic_error("a form without a writer");
    return *found;
}

} // namespace

void refuse_what_is_read(std::string const& output, std::vector<std::string> const& inputs) {
    if (std::ranges::any_of(inputs, [&](auto const& input) { return same_file(output, input); }))
        bad_command_line("--output",
                         worded("{0} is a file to be read; name another, or add --overwrite", output));
}

void Outputs::add_to(Command& command, std::vector<Form> const& forms) {
    forms_ = forms;
    as_ = row_of(forms.front()).as;
    command
        .repeated("-o,--output", files_,
                  worded("file to write, by its ending: {0}; - for standard output; may be repeated",
                         endings_of(forms)))
        .called("FILE");
    std::vector<std::string> names;
    for (auto const form : forms)
        if (auto const as = row_of(form).as; !as.empty()) names.emplace_back(as);
    command.value("--as", as_, worded("form on standard output")).one_of(names).shows_default();
    command.flag("--overwrite", overwrite_, worded("an output may replace a file that was read"));
}

void Outputs::check(std::vector<std::string> const& inputs) const {
    for (auto const& file : files_) {
        if (file == "-") continue;
        if (std::ranges::none_of(forms_, [&](Form form) { return has_ending(form, file); }))
            bad_command_line("--output",
                             worded("{0} has no known ending; use one of {1}", file, endings_of(forms_)));
        if (overwrite_) continue;
        refuse_what_is_read(file, inputs);
    }
}

std::string Outputs::first(Form form) const {
    auto const found = std::ranges::find_if(files_, [&](auto const& file) { return has_ending(form, file); });
    return found == files_.end() ? std::string() : *found;
}

bool Outputs::has(Form form) const {
    return !first(form).empty() || (!as_.empty() && as_ == row_of(form).as);
}

bool Outputs::prints() const { return files_.empty() || std::ranges::find(files_, "-") != files_.end(); }

void Outputs::write(std::vector<Writer> const& writers) const {
    auto const text = [&](Form form) {
        auto made = std::get<Writer::Text>(writer_of(writers, form).make)();
        bool const read =
            form == Form::table || form == Form::csv || form == Form::words || form == Form::poem;
        return read ? visible(made) : made;
    };
    auto const show = [&](Form form) {
        auto made = text(form);
        bool const fits =
            (form == Form::table || form == Form::words) && !writer_of(writers, form).whole_lines;
        print(fits ? fitted(made, columns_of(STDOUT_FILENO)) : made);
    };
    auto const named = std::ranges::find_if(
        forms_, [&](Form form) { return !row_of(form).as.empty() && row_of(form).as == as_; });
    if (files_.empty()) show(*named);
    for (auto const& file : files_) {
        if (file == "-") {
            show(*named);
            continue;
        }
        auto const form = *std::ranges::find_if(forms_, [&](Form f) { return has_ending(f, file); });
        if (auto const& save = writer_of(writers, form).save) {
            save(file);
            say(worded("wrote {0}", file) + "\n");
            continue;
        }
        std::vector<chart::Document> documents;
        if (auto const* make = std::get_if<Writer::Documents>(&writer_of(writers, form).make))
            documents = (*make)(fs::path(file).extension().string());
        else
            documents.push_back({"", text(form)});
        for (auto const& document : documents) {
            auto const name = with_suffix(file, document.suffix);
            files::write(name, document.bytes);
            say(worded("wrote {0}", name.string()) + "\n");
        }
    }
    finish_standard_output();
}

} // namespace vowelway::cli
