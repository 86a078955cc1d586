// SPDX-License-Identifier: MIT
#include "core/memory.hpp"

#include <cstdlib>
#include <memory>
#include <new>

namespace vowelway {

void require_memory([[maybe_unused]] std::size_t mebibytes) {
#ifndef __EMSCRIPTEN__
    std::unique_ptr<void, decltype(&std::free)> const room(std::malloc(mebibytes << 20), &std::free);
    // Looked at through a volatile pointer: a compiler may else leave out a malloc that nobody uses.
    void* const volatile there = room.get();
    if (!there) throw std::bad_alloc();
#endif
}

} // namespace vowelway
