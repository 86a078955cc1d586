// SPDX-License-Identifier: MIT
// A plain staff for notes that come from no score. Private to the library.
#pragma once

#include "vowelway/core/passage.hpp"

#include <optional>
#include <vector>

namespace vowelway::io {

struct WrittenNote {
    double onset = 0, length = 0;      ///< quarter notes from the start
    std::optional<SpelledPitch> pitch; ///< none: a rest
    std::optional<std::size_t> sung;   ///< index in Passage::notes
};

double bar_length(TimeSignature const& time); ///< quarter notes

/// Fills Passage::staff: bars of the time signature, notes parted and tied where they cross a bar line or
/// have no single note value, clef by the middle of the compass. A length in seconds that no note value
/// fits is drawn as the nearest quarter of a quarter note; the sung lengths stay exact.
void build_staff(Passage& passage, std::vector<WrittenNote> const& notes, TimeSignature const& time,
                 KeySignature key);

} // namespace vowelway::io
