// SPDX-License-Identifier: MIT
// A passage typed as plain text: a syllable and its pitch, again and again. Private to the library.
#pragma once

#include "vowelway/core/passage.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <string>

namespace vowelway::io {

/// Whether a text has a pitch with its octave among its words ("C4").
bool has_pitches(std::string_view text);

/// The format is told in docs/formats.md. Throws InputError with file and line.
Passage read_passage_text(std::string const& text, std::string const& file, ScoreOptions const& options);

} // namespace vowelway::io
