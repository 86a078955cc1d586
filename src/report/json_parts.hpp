// SPDX-License-Identifier: MIT
// Pieces that several JSON forms have in common. Private to the layer.
#pragma once

#include "report/format.hpp"
#include "vowelway/plan/plan.hpp"

#include <nlohmann/json.hpp>

namespace vowelway::report {

using Json = nlohmann::ordered_json;

inline double hz(Frequency f) { return rounded(in_hertz(f), 0.01); }

/// fRk_hz, fRk_sd_hz, ..
void put_resonance(Json& out, int k, Resonance const& r);
void put_decision(Json& out, plan::Decision const& decision);
/// Where the note stands, its pitch, time, words and vowel.
Json sung_note_json(SungNote const& note, Tuning const& tuning);
Json warnings_json(Remarks const& remarks);
/// With a line break at the end; bytes that are not UTF-8 become U+FFFD.
std::string text_of(Json const& json, int indent = 1);

} // namespace vowelway::report
