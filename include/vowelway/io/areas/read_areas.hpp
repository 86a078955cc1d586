// SPDX-License-Identifier: MIT
// Area functions of vocal tracts from a table of comma-separated values.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/units.hpp"

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io {

/// One tract of the table, sections from the glottis to the lips.
struct MeasuredTract {
    struct Section {
        Length length;
        Area area;
    };
    std::string vowel; ///< as written in the vowel column; empty when there is none
    std::vector<Section> sections;
};

inline constexpr std::size_t largest_areas = std::size_t{16} << 20; ///< bytes

struct MeasuredTracts {
    std::vector<MeasuredTract> tracts; ///< in the order in which each vowel first appears
    Remarks remarks;                   ///< which columns were not used
};

/// Reads RFC 4180 text in UTF-8 with a header. Columns, in any order: section_length_cm,
/// section_index_from_glottis (whole numbers without gap from 0 or 1, rows in any order), area_cm2, and vowel
/// if there are several tracts. Blank lines and lines that begin with # are skipped. Bounds  16 MiB, 512
/// sections a tract, 1000 tracts; lengths 0.01..30 cm, areas 0.001..100 cm². Errors  InputError with line,
/// column name and remedy.
/// `name` is what messages call the table.
MeasuredTracts parse_areas(std::string_view csv, std::string const& name);
/// The same from a file.
MeasuredTracts read_areas(std::filesystem::path const& file);

} // namespace vowelway::io
