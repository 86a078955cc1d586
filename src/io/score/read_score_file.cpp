// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/io/score/read_score.hpp"

namespace vowelway::io {

Passage read_score(std::filesystem::path const& file, ScoreOptions const& options) {
    return parse_score(files::read(file, largest_score_file), file.string(), options);
}

} // namespace vowelway::io
