// SPDX-License-Identifier: MIT
// The options of every command that plans, and what they ask for.
#pragma once

#include "cli/chart_look.hpp"
#include "cli/command.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::cli {

struct PlanOptions {
    std::string score, singer, range, part, language, technique = "classical", a4, vowels, words, verse;
    int draws = 50;
    std::optional<double> transpose;
};

/// How the score is read and in which technique it is planned. The options must outlive the parsing.
void add_song_options(Command& command, PlanOptions& o);
/// --singer, which is required.
void add_singer(Command& command, PlanOptions& o);
/// SCORE, which some commands require.
Option add_score(Command& command, PlanOptions& o);
/// Those of a song, the singer, range and vowels: all but SCORE, which stands first.
void add_plan_options(Command& command, PlanOptions& o);
/// The same without --singer.
void add_plan_options_without_singer(Command& command, PlanOptions& o);
/// --singer where it may be left out.
void add_optional_singer(Command& command, PlanOptions& o);

/// Of --verse: its number, io::every_verse, or 0 where it is empty. Throws as bad_command_line does.
int verse_of(std::string const& wish);

/// The files that the options may name; with those of a chart's look.
std::vector<std::string> inputs_of(PlanOptions const& o);
std::vector<std::string> inputs_of(PlanOptions const& o, ChartLook const& look);

/// The song of the options as this singer sings it, with its vowels. Throws InputError.
Passage read_song(PlanOptions const& o, Singer const& singer);

struct ReadRequest {
    plan::PlanRequest request;
    io::ScoreOptions score; ///< the score was read with
};
/// Reads profile, technique, score and words. Throws InputError.
ReadRequest read_request(PlanOptions const& o);
/// The same for one of several parts, whose words may yet change: without the vowels of its notes.
ReadRequest read_request_without_vowels(PlanOptions const& o, bool lowest);
/// The sung vowels of the words of a passage. Throws InputError.
void give_vowels(Passage& passage, PlanOptions const& o);

} // namespace vowelway::cli
