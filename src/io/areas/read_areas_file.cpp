// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/io/areas/read_areas.hpp"

namespace vowelway::io {

MeasuredTracts read_areas(std::filesystem::path const& file) {
    return parse_areas(files::read_text(file, largest_areas), file.string());
}

} // namespace vowelway::io
