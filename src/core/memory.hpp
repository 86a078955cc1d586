// SPDX-License-Identifier: MIT
// Memory for libraries that end the process when there is none: asked for beforehand. Private to the library.
#pragma once

#include <cstddef>

namespace vowelway {

/// Throws std::bad_alloc unless `mebibytes` could be had in one piece at this moment. Takes nothing and
/// touches nothing. In a page, where asking would grow the memory for good, it does nothing.
void require_memory(std::size_t mebibytes);

} // namespace vowelway
