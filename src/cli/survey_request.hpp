// SPDX-License-Identifier: MIT
// What a survey is asked to do: songs, singers, keys and techniques, read once.
#pragma once

#include "cli/command.hpp"
#include "cli/plan_request.hpp"
#include "vowelway/survey/run.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

struct SurveyOptions {
    std::vector<std::string> scores, singers, techniques;
    PlanOptions song; ///< language and words; its other members are set for each song
    std::string keys = "-6..6";
    std::string task; ///< K/N
};

/// The options must outlive the parsing.
void add_survey_options(Command& command, SurveyOptions& o);

/// One request for each technique. Throws InputError for what no singer can be read from; songs are read
/// later, each time they are needed.
std::vector<survey::Request> survey_requests(SurveyOptions const& o, Remarks& remarks);

} // namespace vowelway::cli
