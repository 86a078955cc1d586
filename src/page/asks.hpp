// SPDX-License-Identifier: MIT
// Everything a page may ask besides a plan and a measurement, by name. Each answers JSON or a text; the
// fields are told in src/page/README.md.
#pragma once

#include "page/request.hpp"

#include <string>
#include <string_view>

namespace vowelway::page {

/// request["ask"] names the question; InputError where there is no such question.
std::string answer_to(Json const& request, std::string_view bytes);

// The questions, each in the file it belongs to.
std::string singer_told(Json const& request, std::string_view bytes); // asks_singer.cpp
std::string voices_told(Json const& request, std::string_view bytes);
std::string song_told(Json const& request, std::string_view bytes); // asks_song.cpp
std::string score_marked(Json const& request, std::string_view bytes);
std::string sheet_drawn(Json const& request, std::string_view bytes);  // asks_sheet.cpp
std::string note_told(Json const& request, std::string_view bytes);    // asks_note.cpp
std::string plans_beside(Json const& request, std::string_view bytes); // asks_beside.cpp
std::string keys_told(Json const& request, std::string_view bytes);
std::string practice_told(Json const& request, std::string_view bytes);  // asks_practice.cpp
std::string frequency_told(Json const& request, std::string_view bytes); // pitch_told.cpp
std::string choices_told(Json const& request, std::string_view bytes);   // asks_choices.cpp
/// From now on every answer is told in request["language"]; InputError where that is none of
/// io::wording_codes().
std::string language_said(Json const& request, std::string_view bytes);

} // namespace vowelway::page
