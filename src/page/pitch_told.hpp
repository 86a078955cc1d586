// SPDX-License-Identifier: MIT
// A frequency as a person reads it, and where it stands on a staff.
#pragma once

#include "page/request.hpp"

namespace vowelway::page {

/// `hz`, `pitch` (the nearest name), `cents` from it, and `step`: steps of the staff above C0's, the natural
/// notes being whole (C4 is 28), in between for what lies between them.
Json pitch_told(Frequency f, Tuning const& tuning);

} // namespace vowelway::page
