// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/io/score/mark_score.hpp"

namespace vowelway::io {

void write_marked_score(std::filesystem::path const& file, ScoreOptions const& options,
                        ScoreMarks const& marks, std::filesystem::path const& destination) {
    auto extension = destination.extension().string();
    for (char& c : extension) c = static_cast<char>(c | 0x20);
    auto const form = extension == ".mxl" ? ScoreForm::compressed : ScoreForm::plain;
    files::write(destination,
                 marked_score(files::read(file, largest_score_file), file.string(), options, marks, form));
}

} // namespace vowelway::io
