// SPDX-License-Identifier: MIT
// What a page asks for, as JSON: a singer, a song, a look. The fields are told in src/page/README.md.
#pragma once

#include "vowelway/analysis/measure.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <nlohmann/json.hpp>

#include <string_view>

namespace vowelway::page {

using Json = nlohmann::json;

/// {"voice": "tenor"} or {"profile": "vowelway: 1 ..", "file": "me.yaml"}. Throws InputError.
Profile profile_of(Json const& from, AverageVowels vowels = AverageVowels::spoken);

/// One that comes with the program, classical unless said otherwise. Throws InputError.
Technique technique_of(Json const& request);

/// Where this singer's probes are due: the reference and the singer's own shifts; no vowels yet.
analysis::MeasureRequest measure_request(Json const& singer);

/// How the score is read for this singer: part, verse, octave, tuning.
io::ScoreOptions score_options(Json const& request, Singer const& singer);

/// The language named and the word lists, a later one winning. Throws InputError.
diction::DictionOptions diction_options(Json const& request);

/// The song (or nothing but the tuning, without bytes), its vowels set. Throws InputError.
Passage passage_of(Json const& request, std::string_view score, Singer const& singer);

/// All that a plan needs. Throws InputError.
plan::PlanRequest plan_request(Json const& request, std::string_view score);

/// The plan of the request. The last one is kept: a page asks for its table, its sheet and its marks.
plan::Plan const& planned(Json const& request, std::string_view score);

/// Theme, paper or window (`width` and `height` in points), kind of chart.
chart::ChartOptions chart_options(Json const& request);

} // namespace vowelway::page
