// SPDX-License-Identifier: MIT
// The options of every command that plans, and what they ask for.
#pragma once

#include "vowelway/io/score/read_score.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <string>

namespace CLI {
class App;
}

namespace vowelway::cli {

struct PlanOptions {
    std::string score, singer, range, part, language, technique = "classical", a4, vowels, words;
    int verse = 0, draws = 50;
    double transpose = 0;
};

/// How the score is read and in which technique it is planned. The options must outlive the parsing.
void add_song_options(CLI::App& command, PlanOptions& o);
/// Those, the singer, range and vowels: all but SCORE, whose help and need differ.
void add_plan_options(CLI::App& command, PlanOptions& o);

struct ReadRequest {
    plan::PlanRequest request;
    io::ScoreOptions score; ///< the score was read with
};
/// Reads profile, technique, score and words. Throws InputError.
ReadRequest read_request(PlanOptions const& o);

} // namespace vowelway::cli
