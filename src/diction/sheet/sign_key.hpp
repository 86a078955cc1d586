// SPDX-License-Identifier: MIT
// What the signs of a text stand for. Private to the layer.
#pragma once

#include "vowelway/core/sung_text.hpp"
#include "vowelway/diction/language.hpp"

namespace vowelway::diction {

/// Fills the key with the signs that occur and are not read as they are written, each with the first word
/// that has it.
void add_key(SungText& text, Language language);

} // namespace vowelway::diction
