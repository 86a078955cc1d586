// SPDX-License-Identifier: MIT
#include "support/source_dir.hpp"

#define DOCTEST_CONFIG_IMPLEMENT_WITH_MAIN
#include <doctest/doctest.h>

std::string vowelway::test::source_dir() { return VOWELWAY_SOURCE_DIR; }
