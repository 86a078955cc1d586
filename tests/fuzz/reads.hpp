// SPDX-License-Identifier: MIT
// What every reader must do with any bytes: give a value, or throw InputError with something to read in it.
#pragma once

#include "vowelway/core/error.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

namespace vowelway::fuzz {

/// Runs `read` on the bytes as a text; every other exception ends the program, which libFuzzer reports.
template <class Read> int reads(std::uint8_t const* data, std::size_t size, Read read) {
    try {
        read(std::string(reinterpret_cast<char const*>(data), size));
    } catch (InputError const& error) {
        if (error.wrong().empty()) std::abort();
    }
    return 0;
}

/// Ends the program where a promise does not hold.
inline void require(bool holds) {
    if (!holds) std::abort();
}

} // namespace vowelway::fuzz

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size);
