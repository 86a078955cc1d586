// SPDX-License-Identifier: MIT
#include "cli/standard_output.hpp"

#include "core/visible.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <iostream>

namespace vowelway::cli {

void print(std::string_view text) { std::cout << text; }

void say(std::string_view text) { std::cerr << visible(text); }

void finish_standard_output() {
    std::cout.flush();
    if (!std::cout)
        throw InputError(worded("cannot write to standard output"),
                         worded("check the disk, or the program that reads the output"));
}

} // namespace vowelway::cli
