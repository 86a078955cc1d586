// SPDX-License-Identifier: MIT
// Exercises at a singer's own turning points. Private to the layer.
#pragma once

#include "vowelway/plan/lesson.hpp"
#include "vowelway/plan/pencil.hpp"

namespace vowelway::plan {

/// For the vowels of the notes to watch, the weightiest first, a scale up to the note; for those that turn
/// over in the song a slide. Nothing outside the singer's range.
std::vector<Exercise> exercises_of(Plan const& plan, Pencil const& pencil);

/// A major scale upwards from a pitch, spelled by its letters; the enharmonic beginning with fewer signs.
std::vector<SpelledPitch> five_notes_up(SpelledPitch const& first);

} // namespace vowelway::plan
