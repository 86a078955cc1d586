// SPDX-License-Identifier: MIT
// The language in which the program tells what it tells.
#pragma once

namespace vowelway::cli {

/// Sets the wording that `--say` names on the command line, else VOWELWAY_SAY in the environment, else
/// English. Never the locale: who did not ask gets what the manual shows. Throws InputError for what is
/// neither a language nor a file.
void speak_as_asked(int argc, char const* const* argv);

} // namespace vowelway::cli
