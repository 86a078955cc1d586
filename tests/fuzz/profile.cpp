// SPDX-License-Identifier: MIT
// A profile that could be read is written so that it reads as the same again.
#include "fuzz/reads.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/profile/write_profile.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    using namespace vowelway;
    return fuzz::reads(data, size, [](std::string const& text) {
        auto const profile = io::parse_profile(text, "fuzz");
        auto const written = io::profile_text(profile);
        try {
            fuzz::require(io::profile_text(io::parse_profile(written, "written")) == written);
        } catch (InputError const&) {
            std::abort(); // what is written can be read
        }
    });
}
