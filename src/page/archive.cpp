// SPDX-License-Identifier: MIT
// A page unpacks a compressed score itself and gives the door its MusicXML; here there is no archive.
#include "io/score/archive.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::io {

bool looks_like_zip(std::string_view bytes) { return bytes.starts_with("PK"); }

MxlScore read_mxl(std::string const&, std::string const& file) {
    throw InputError(worded("is still compressed"), worded("unpack it and give its MusicXML"),
                     {file, 0, 0, {}});
}

std::string make_mxl(std::string_view, std::string const& file) {
    throw InputError(worded("cannot be written compressed here"), worded("take it as plain MusicXML"),
                     {file, 0, 0, {}});
}

std::string replace_member(std::string const&, std::string const&, std::string_view,
                           std::string const& file) {
    return make_mxl({}, file);
}

} // namespace vowelway::io
