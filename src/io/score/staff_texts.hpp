// SPDX-License-Identifier: MIT
// What is written over the staff. Private to the library.
#pragma once

#include "io/score/part_events.hpp"
#include "vowelway/core/notation.hpp"

#include <vector>

namespace vowelway::io {

/// Tempo, words and dynamics of one direction.
std::vector<StaffText> texts_of(PartDirection const& direction, bool tempo_only);

} // namespace vowelway::io
