// SPDX-License-Identifier: MIT
// What was assumed and guessed, on standard error, one line each.
#pragma once

#include "vowelway/core/error.hpp"

namespace vowelway::cli {
void print_remarks(Remarks const& remarks);
}
