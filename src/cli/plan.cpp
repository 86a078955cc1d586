// SPDX-License-Identifier: MIT
// vowelway plan: the main job.
#include "cli/commands.hpp"
#include "cli/remarks.hpp"
#include "cli/score_marks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/io/write_file.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/plan_report.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <memory>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

struct Options {
    std::string score, singer, range, part, language, technique = "classical", a4, vowels, words, paper = "a4", as = "table", marks = "all", kind, map_pitch;
    int verse = 0, draws = 50;
    double transpose = 0;
    bool grey = false;
    std::vector<std::string> outputs;
};

constexpr std::string_view forms = ".txt .csv .json .pdf .svg .png .mxl .musicxml .xml";

bool is_score(std::string_view extension) { return extension == ".mxl" || extension == ".musicxml" || extension == ".xml"; }

// A bad word of the command line is found before any work is done.
void check_outputs(Options const& o) {
    for (auto const& output : o.outputs) {
        if (output == "-") continue;
        auto const extension = fs::path(output).extension().string();
        if (is_score(extension) && o.score.empty())
            throw CLI::ValidationError("--output", output + " is a score, and there is no SCORE to mark; name one");
        if (extension.empty() || (" " + std::string(forms) + " ").find(" " + extension + " ") == std::string::npos)
            throw CLI::ValidationError("--output", fmt::format("{} has no known ending; use one of {}", output, forms));
    }
}

Tuning tuning_of(Options const& o, Singer const& singer) {
    if (o.a4.empty()) return singer.tuning;
    auto const a4 = parse_frequency(o.a4, Tuning{});
    if (a4 < hertz(380) || a4 > hertz(500)) throw InputError("--a4 " + o.a4 + " is no tuning of A4", "give 380 to 500 Hz; today's is 440 Hz");
    return Tuning{a4};
}

ScoreOptions score_options(Options const& o, Singer const& singer, Tuning const& tuning) {
    ScoreOptions options;
    options.part = o.part;
    options.verse = o.verse;
    options.transpose_semitones = o.transpose;
    options.tuning = tuning;
    options.singer_range = singer.range;
    return options;
}

Passage read_passage(Options const& o, ScoreOptions const& options) {
    if (o.score.empty()) {
        Passage none;
        none.tuning = options.tuning;
        return none;
    }
    auto passage = read_score(o.score, options);
    DictionOptions diction;
    if (!o.language.empty()) {
        diction.language = parse_language(o.language);
        if (!diction.language) throw InputError("--language " + o.language + " is not known", "give a tag such as it, la, de, fr, en, es");
    }
    if (!o.words.empty()) diction.words = read_word_list(o.words);
    set_vowels(passage, diction);
    return passage;
}

std::string text_form(Plan const& plan, std::string_view form) {
    if (form == "json" || form == ".json") return plan_json(plan);
    if (form == "csv" || form == ".csv") return plan_csv(plan);
    return plan_text(plan);
}

void write(Plan const& plan, Options const& o, ScoreOptions const& score) {
    if (o.outputs.empty()) std::cout << text_form(plan, o.as);
    for (auto const& output : o.outputs) {
        if (output == "-") {
            std::cout << text_form(plan, o.as);
            continue;
        }
        auto const extension = fs::path(output).extension().string();
        if (extension == ".pdf" || extension == ".svg" || extension == ".png") {
            chart::ChartOptions options;
            options.paper = chart::parse_paper(o.paper).value();
            options.grey = o.grey;
            if (o.kind == "sheet") options.kind = chart::Kind::passage_sheet;
            if (o.kind == "vowels") options.kind = chart::Kind::pitch_by_vowel;
            if (o.kind == "map" || !o.map_pitch.empty()) options.kind = chart::Kind::resonance_map;
            if (!o.map_pitch.empty()) options.map_pitch = parse_spelled_pitch(o.map_pitch);
            for (auto const& written : chart::write_chart(plan, options, output)) std::cerr << "wrote " << written.string() << "\n";
        } else if (is_score(extension)) {
            write_marked_score(o.score, score, marks_of(plan, parse_mark_detail(o.marks).value()), output);
            std::cerr << "wrote " << output << "\n";
        } else {
            write_file(output, text_form(plan, extension));
            std::cerr << "wrote " << output << "\n";
        }
    }
    std::cout.flush();
    if (!std::cout) throw InputError("cannot write to standard output", "check the disk or the program behind the pipe");
}

void run(Options const& o) {
    check_outputs(o);
    if (o.score.empty() && o.range.empty()) throw CLI::RequiredError("a SCORE or --range");
    PlanRequest request;
    request.technique = find_technique(o.technique);
    request.draws = o.draws;
    Remarks remarks;
    request.singer = find_singer(o.singer, remarks);
    auto const score = score_options(o, request.singer, tuning_of(o, request.singer));
    request.passage = read_passage(o, score);
    if (!o.range.empty()) request.range = parse_pitch_range(o.range);
    if (!o.vowels.empty()) request.vowels = parse_vowels(o.vowels);
    if (!request.singer.average && request.singer.voice != VoiceType::other) request.reference = built_in_voice(request.singer.voice);
    request.passage.remarks.insert(request.passage.remarks.begin(), remarks.begin(), remarks.end());
    auto const plan = make_plan(std::move(request));
    print_remarks(plan.remarks);
    write(plan, o, score);
}

} // namespace

void add_plan(CLI::App& app) {
    auto* command = app.add_subcommand("plan", "What each note will do to each vowel, and what to do about it");
    auto o = std::make_shared<Options>();
    command->add_option("SCORE", o->score, "MusicXML (.musicxml .xml .mxl) or a passage in YAML")->type_name("FILE");
    command->add_option("--singer", o->singer, "profile (YAML) or a voice type: bass baritone tenor countertenor alto mezzo soprano treble")->required()->type_name("PROFILE");
    command->add_option("--range", o->range, "pitches to plan, C3..A4; alone, or instead of the singer's range")->type_name("LOW..HIGH");
    command->add_option("--vowels", o->vowels, "vowels to plan besides those sung, \"i e a o u\" (IPA or X-SAMPA)");
    command->add_option("--part", o->part, "part by name or number (default: the one with the words)");
    command->add_option("--verse", o->verse, "verse (default: the first)")->check(CLI::Range(1, 99));
    command->add_option("--language", o->language, "language of the words (default: found from them)")->type_name("TAG");
    command->add_option("--words", o->words, "your own pronunciations, YAML")->type_name("FILE");
    command->add_option("--transpose", o->transpose, "semitones up (or down, negative)")->check(CLI::Range(-36.0, 36.0));
    command->add_option("--technique", o->technique, "classical, belt, choral, or a YAML file")->capture_default_str();
    command->add_option("--draws", o->draws, "draws over the deviations, for the certainty of each advice")->check(CLI::Range(0, 10000))->capture_default_str();
    command->add_option("--a4", o->a4, "tuning of A4 (default: the profile's, else 440 Hz)")->type_name("HZ");
    command->add_option("-o,--output", o->outputs, fmt::format("file to write, by its ending: {}; - for standard output; may be repeated", forms))->type_name("FILE")->allow_extra_args(false);
    command->add_option("--as", o->as, "form on standard output")->check(CLI::IsMember({"table", "csv", "json"}))->capture_default_str();
    command->add_option("--size", o->paper, "paper of the charts")->check(CLI::IsMember({"a4", "letter", "tablet"}))->capture_default_str();
    command->add_option("--marks", o->marks, "how much is written into a marked score")->check(CLI::IsMember({"vowels", "changes", "all"}))->capture_default_str();
    command->add_option("--chart", o->kind, "only this chart: the passage sheet, the vowels by pitch, or a map of the resonances (default: sheet and vowels)")->check(CLI::IsMember({"sheet", "vowels", "map"}));
    command->add_option("--map-pitch", o->map_pitch, "pitch of the resonance map (default: the highest)")->type_name("PITCH");
    command->add_flag("--grey", o->grey, "charts without colour");
    command->footer("Example:\n  vowelway plan song.mxl --singer me.yaml -o plan.pdf -o marked.mxl\n  vowelway plan --range C3..A4 --singer tenor");
    command->callback([o] { run(*o); });
}

} // namespace vowelway::cli
