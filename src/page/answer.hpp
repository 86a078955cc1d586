// SPDX-License-Identifier: MIT
// What a call of the door leaves behind: a text, or what went wrong.
#pragma once

#include <functional>
#include <string>

namespace vowelway::page {

/// How a call ended: the exit codes of the program.
enum Outcome : int { done = 0, our_fault = 1, bad_input = 3 };

/// Runs `work` and keeps its text as the answer. An error is an answer too, as JSON:
/// {"wrong", "remedy", "file", "line", "column", "musical", "context": []}. Nothing is thrown.
Outcome answer(std::function<std::string()> const& work);

} // namespace vowelway::page
