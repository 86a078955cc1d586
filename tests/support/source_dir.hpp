// SPDX-License-Identifier: MIT
// The folder of the sources, for tests that read data of the repository.
#pragma once

#include <string>

namespace vowelway::test {
/// Defined in doctest_main.cpp: only that file is compiled with the path, so that the others are the same
/// everywhere.
std::string source_dir();
} // namespace vowelway::test
