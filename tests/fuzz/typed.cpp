// SPDX-License-Identifier: MIT
#include "fuzz/reads.hpp"
#include "vowelway/io/score/read_score.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    return vowelway::fuzz::reads(
        data, size, [](std::string const& text) { vowelway::io::parse_score(text, "fuzz.txt"); });
}
