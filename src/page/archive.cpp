// SPDX-License-Identifier: MIT
// A page unpacks a compressed score itself and gives the door its MusicXML; here there is no archive.
#include "io/score/archive.hpp"

#include "vowelway/core/error.hpp"

namespace vowelway::io {

bool looks_like_zip(std::string_view bytes) { return bytes.starts_with("PK"); }

MxlScore read_mxl(std::string const&, std::string const& file) {
    throw InputError("is still compressed", "unpack it and give its MusicXML", {file, 0, 0, {}});
}

} // namespace vowelway::io
