// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/io/audio/read_cues.hpp"

namespace vowelway::io {

std::vector<Cue> read_cues(std::string const& path) {
    return parse_cues(files::read_text(path, largest_cues), path);
}

} // namespace vowelway::io
