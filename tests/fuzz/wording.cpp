// SPDX-License-Identifier: MIT
#include "fuzz/reads.hpp"
#include "vowelway/io/wording/read_wording.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    return vowelway::fuzz::reads(data, size,
                                 [](std::string const& text) { vowelway::io::parse_wording(text, "fuzz"); });
}
