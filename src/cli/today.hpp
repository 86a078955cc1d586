// SPDX-License-Identifier: MIT
// The day it is here.
#pragma once

#include <string>

namespace vowelway::cli {

/// ISO 8601, by the clock and the time zone of this machine.
std::string today();

} // namespace vowelway::cli
