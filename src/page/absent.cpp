// SPDX-License-Identifier: MIT
// What a page does not have, and what it says instead.
#include "diction/synthesis/synthesiser.hpp"
#include "io/score/archive.hpp"
#include "vowelway/core/error.hpp"

namespace vowelway {

namespace diction {

Synthesiser::Synthesiser() = default;
Synthesiser::~Synthesiser() = default;

Synthesiser& Synthesiser::instance() {
    static Synthesiser none;
    return none;
}

std::string Synthesiser::ipa(std::string_view word, Language) {
    throw InputError("no rule says how \"" + std::string(word) + "\" is pronounced",
                     "add its pronunciation to the words");
}

} // namespace diction

namespace io {

// The page unpacks a compressed score before it gives it to the door.
bool looks_like_zip(std::string_view) { return false; }

MxlScore read_mxl(std::string const&, std::string const& file) {
    throw InputError("is a compressed score", "unpack it first", {file, 0, 0, {}});
}

} // namespace io

} // namespace vowelway
