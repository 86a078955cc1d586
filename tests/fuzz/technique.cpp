// SPDX-License-Identifier: MIT
#include "fuzz/reads.hpp"
#include "vowelway/io/technique/read_technique.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    return vowelway::fuzz::reads(
        data, size, [](std::string const& text) { vowelway::io::parse_technique(text, "fuzz"); });
}
