// SPDX-License-Identifier: MIT
#include "fuzz/reads.hpp"
#include "vowelway/diction/word_list.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    return vowelway::fuzz::reads(
        data, size, [](std::string const& text) { vowelway::diction::parse_word_list(text, "fuzz"); });
}
