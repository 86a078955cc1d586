// SPDX-License-Identifier: MIT
// The commands of the program: one file each. A new command adds a line here and one in main.cpp.
#pragma once

namespace vowelway::cli {

class Command;

// Each adds its command to `program`, with help and an example, and the callback that runs it. A callback
// throws InputError for bad input (exit code 3) and calls bad_command_line for what is wrong there (exit code
// 2).

void add_check(Command& program);
void add_compare(Command& program);
void add_explain(Command& program);
void add_hear(Command& program);
void add_keys(Command& program);
void add_lesson(Command& program);
void add_measure(Command& program);
void add_open(Command& program);
void add_page(Command& program);
void add_plan(Command& program);
void add_profile(Command& program);
void add_studio(Command& program);
void add_survey(Command& program);
void add_tract(Command& program);
void add_words(Command& program);

} // namespace vowelway::cli
