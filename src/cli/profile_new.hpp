// SPDX-License-Identifier: MIT
// vowelway profile new: a profile to fill in.
#pragma once

namespace vowelway::cli {

class Command;

/// Adds `new` to the commands of `profile`.
void add_profile_new(Command& profile);

} // namespace vowelway::cli
