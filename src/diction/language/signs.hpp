// SPDX-License-Identifier: MIT
// What a single word says about the language it is in. Private to the layer.
#pragma once

#include "vowelway/diction/language.hpp"

#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::diction {

/// The languages a lower-case word speaks for, with weights: a function word counts 1, shared among the
/// languages that have it; a letter only few languages write counts 1, an ending up to 1/2.
std::vector<std::pair<Language, double>> signs(std::string_view word);

} // namespace vowelway::diction
