// SPDX-License-Identifier: MIT
// A vibrato as profiles and techniques write it. Private to the library.
#pragma once

#include "vowelway/core/vibrato.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

/// {extent: 50 cents, rate: 5.5 Hz}; what is left out is as in Vibrato{}.
Vibrato read_vibrato(yaml::Node const& node);

} // namespace vowelway::io
