// SPDX-License-Identifier: MIT
// vowelway words: the sung vowels of a text, syllable by syllable.
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/remarks.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/report/words_report.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::vector<std::string> text;
    Outputs outputs;
    std::string language, words;
    bool r_colour = false;
};

constexpr std::size_t longest = 1 << 20;

// One argument that names a file is read; "-" is the standard input; anything else is the text itself.
std::string text_of(std::vector<std::string> const& arguments) {
    if (arguments.size() == 1) {
        auto const& one = arguments.front();
        if (one == "-") {
            auto text = files::read_standard_input(longest);
            require_text(text, worded("standard input"));
            return text;
        }
        std::error_code error;
        if (std::filesystem::is_regular_file(one, error)) return files::read_text(one, longest);
        if (one.ends_with(".txt"))
            throw InputError(worded("there is no such file"), worded("check the name"), Place{one, 0, 0, ""});
    }
    std::string out;
    for (auto const& part : arguments) out += (out.empty() ? "" : " ") + part;
    return out;
}

void run(Settings const& settings) {
    auto inputs = settings.text;
    inputs.push_back(settings.words);
    settings.outputs.check(inputs);
    diction::DictionOptions options;
    options.r_colour = settings.r_colour;
    if (!settings.words.empty()) options.words = diction::read_word_list(settings.words);
    auto const text = text_of(settings.text);
    diction::Language language;
    if (settings.language.empty()) {
        auto const guess = diction::guess_language(text);
        language = guess.language;
        print_remarks({{guess.sure ? Remark::Kind::assumed : Remark::Kind::guessed,
                        worded("the language is taken to be {0} ({1})", reworded(to_string(language)),
                               guess.evidence)}});
    } else {
        auto const named = diction::parse_language(settings.language);
        if (!named)
            throw InputError(worded("the language \"{0}\" is unknown", settings.language),
                             worded("give a tag such as it, la, de, fr, en or es"));
        language = *named;
    }
    auto const words = transcribe(text, language, options);
    if (words.empty())
        throw InputError(worded("the text has no words"),
                         worded("write some words, a file or - for the standard input"));
    settings.outputs.write({{Form::table, [&] { return report::words_text(words); }},
                            {Form::json, [&] { return report::words_json(words, tag(language)); }}});
}

} // namespace

void add_words(Command& program) {
    auto command = program.add("words", "The vowels sung on a text, syllable by syllable");
    auto settings = std::make_shared<Settings>();
    command.values("TEXT", settings->text, "words, one text file, or - for the standard input").required();
    command.value("-l,--language", settings->language,
                  "it, la, de, fr, en, es or another tag; without it the language is guessed");
    command.value("--words", settings->words, "your own pronunciations: a YAML list of word: IPA");
    settings->outputs.add_to(command, {Form::table, Form::json});
    command.flag("--r-colour", settings->r_colour, "English: keep the r in the vowel");
    command.footer("Example: vowelway words \"dolce sospiro\" --language it");
    command.runs([settings] { run(*settings); });
}

} // namespace vowelway::cli
