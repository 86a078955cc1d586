// SPDX-License-Identifier: MIT
// vowelway words: the sung vowels of a text or a song, syllable by syllable, and its text sheet.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "cli/scores_named.hpp"
#include "vowelway/chart/draw_text.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/diction/sung_text.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/report/sung_text_report.hpp"
#include "vowelway/report/words_report.hpp"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace vowelway::cli {

namespace {

struct Settings {
    std::vector<std::string> text;
    Outputs outputs;
    ChartLook look;
    std::string language, words, part, verse;
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

diction::DictionOptions diction_options(Settings const& settings, diction::WordsRead& read) {
    diction::DictionOptions options;
    options.read = &read; // for the vowels, the sheet and the list alike
    options.r_colour = settings.r_colour;
    if (!settings.words.empty()) options.words = diction::read_word_list(settings.words);
    if (settings.language.empty()) return options;
    options.language = diction::parse_language(settings.language);
    if (!options.language)
        throw InputError(worded("the language \"{0}\" is unknown", settings.language),
                         worded("give a tag such as it, la, de, fr, en or es"));
    return options;
}

/// What is to be sung, read, and its words in order.
struct Found {
    SungText sheet;
    std::vector<SungWord> words;
};

std::string words_in_a_row(SungText const& sheet) {
    std::string out;
    for (auto const& line : sheet.lines)
        for (auto const& word : line.words) out += word.written + " ";
    return out;
}

/// Without a wish every verse is taken, as it is sung; the first alone where another is in another language.
Passage read_verses(Settings const& settings, io::ScoreOptions options) {
    options.verse = verse_of(settings.verse);
    auto passage = read_score(settings.text.front(), options);
    if (!settings.verse.empty()) return passage;
    options.verse = io::every_verse;
    auto all = read_score(settings.text.front(), options);
    auto const one = diction::guess_language(passage), both = diction::guess_language(all);
    if (both.language == one.language && both.share > 0.7 * one.share) return all;
    passage.remarks.push_back(
        {Remark::Kind::assumed,
         worded("the verses are in different languages: the first is taken (--verse chooses another)")});
    return passage;
}

Found found_in_score(Settings const& settings, diction::DictionOptions options) {
    io::ScoreOptions score;
    score.part = settings.part;
    score.transpose_semitones = 0; // nobody sings yet
    auto passage = read_verses(settings, score);
    set_vowels(passage, options);
    print_remarks(passage.remarks);
    options.language = diction::parse_language(passage.language);
    if (!options.language) options.language = diction::Language::italian;
    Found out{sung_text(passage, options), {}};
    out.words = transcribe(words_in_a_row(out.sheet), *options.language, options);
    return out;
}

Found found_in_text(Settings const& settings, diction::DictionOptions options) {
    auto const text = text_of(settings.text);
    if (!options.language) {
        auto const guess = diction::guess_language(text);
        options.language = guess.language;
        print_remarks({{guess.sure ? Remark::Kind::assumed : Remark::Kind::guessed,
                        worded("the language is taken to be {0} ({1})", reworded(to_string(guess.language)),
                               guess.evidence)}});
    }
    if (auto const caution = diction::caution(*options.language))
        print_remarks({{Remark::Kind::guessed, *caution}});
    return {sung_text(text, *options.language, options), transcribe(text, *options.language, options)};
}

void run(Settings const& settings) {
    auto inputs = settings.text;
    inputs.push_back(settings.words);
    inputs.push_back(settings.look.theme);
    settings.outputs.check(inputs);
    auto const charts = chart_options(settings.look);
    diction::WordsRead read;
    auto const options = diction_options(settings, read);
    bool const score = settings.text.size() == 1 && looks_like_score(settings.text.front());
    auto const found = score ? found_in_score(settings, options) : found_in_text(settings, options);
    if (found.words.empty())
        throw InputError(worded("the text has no words"),
                         worded("write some words, a file or - for the standard input"));
    auto const& sheet = found.sheet;
    settings.outputs.write({{Form::words, [&] { return report::words_text(found.words); }},
                            {Form::poem, [&] { return report::sung_text_plain(sheet); }},
                            {Form::json, [&] { return report::sung_text_json(sheet, found.words); }},
                            {Form::html, [&] { return report::sung_text_html(sheet); }},
                            {Form::corrections, [&] { return report::word_list_to_correct(sheet); }},
                            chart_writer(sheet, charts)});
}

} // namespace

void add_words(Command& program) {
    auto command =
        program.add("words", "The vowels sung on a text or a song, syllable by syllable; its text sheet");
    auto settings = std::make_shared<Settings>();
    command.values("TEXT", settings->text, "words, one text file or score, or - for the standard input")
        .required();
    command.value("-l,--language", settings->language,
                  "it, la, de, fr, en, es or another tag (en-US: the American stage; la-DE: Latin in German "
                  "use); without it the language is guessed");
    command.value("--part", settings->part, "part by name or number (default: the one with the words)");
    command
        .value("--verse", settings->verse,
               "verse, or all: repeats, jumps and verses as they are sung (default: all)")
        .called("N");
    command.value("--words", settings->words, "your own pronunciations: a YAML list of word: IPA");
    settings->outputs.add_to(
        command, {Form::words, Form::poem, Form::json, Form::html, Form::corrections, Form::chart});
    add_chart_look(command, settings->look);
    command.flag("--r-colour", settings->r_colour, "English: keep the r in the vowel");
    command.footer("Examples:\n  vowelway words \"dolce sospiro\" --language it\n  "
                   "vowelway words song.mxl -o text.pdf\n  "
                   "vowelway words song.mxl -o mine.yaml       # mend it, then: --words mine.yaml");
    command.runs([settings] { run(*settings); });
}

} // namespace vowelway::cli
