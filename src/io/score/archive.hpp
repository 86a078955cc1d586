// SPDX-License-Identifier: MIT
// Compressed MusicXML (.mxl): a zip archive whose META-INF/container.xml names the score.
// Source: MusicXML 4.0, "Compressed .MXL files". Private to the library.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace vowelway::io {

/// Whether the bytes begin like a zip archive.
bool looks_like_zip(std::string_view bytes);

struct MxlScore {
    std::string member; ///< the name of the score in the archive
    std::string bytes;
};

/// Finds and unpacks the score. Throws InputError: no container, a score the container names but the
/// archive lacks, a path that leaves the archive, more than largest_score_text bytes.
MxlScore read_mxl(std::string const& archive, std::string const& file);

/// The same archive with one member replaced; every other member keeps its bytes, name, time and order.
std::string replace_member(std::string const& archive, std::string const& member, std::string_view bytes,
                           std::string const& file);

/// A fresh archive around a score. The same score gives the same bytes.
std::string make_mxl(std::string_view musicxml, std::string const& file);

} // namespace vowelway::io
