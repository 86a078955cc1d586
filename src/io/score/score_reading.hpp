// SPDX-License-Identifier: MIT
// A MusicXML score as read, with the way back from each sung note to its place in the text. Private to the
// library.
#pragma once

#include "io/score/xml_source.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/io/score/read_score.hpp"

#include "yaml/tree.hpp"

#include <memory>
#include <pugixml.hpp>
#include <string>
#include <vector>

namespace vowelway::io {

/// The bytes of a score file, unpacked when it is compressed.
struct ScoreBytes {
    std::string archive; ///< the whole archive of a compressed score, else empty
    std::string member;  ///< the score's name in it
    std::string xml;
    std::string shown; ///< for messages: "song.mxl/score.xml"
};
ScoreBytes unpack_score(std::string bytes, std::string const& file);

struct ScoreReading {
    Passage passage;
    std::vector<pugi::xml_node> notes;   ///< parallel to passage.notes: the <note> each begins with
    std::vector<double> onsets, lengths; ///< parallel: quarter notes, onsets from the beginning
    std::vector<int> passes;             ///< parallel: how often its bar had been reached
    int staves = 1;                      ///< of the part
};

/// Reads the line of a score. Throws InputError.
ScoreReading read_music(XmlSource const& source, ScoreOptions const& options);

/// Reads a passage from a tree of YAML, however that was made. Throws InputError.
Passage read_passage(yaml::Node const& root, std::string const& file, ScoreOptions const& options);

/// Reads a YAML passage from its text. Throws InputError.
Passage read_passage_yaml(std::string const& text, std::string const& file, ScoreOptions const& options);

} // namespace vowelway::io
