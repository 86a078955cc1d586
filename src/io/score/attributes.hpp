// SPDX-License-Identifier: MIT
// Clef, key, time and transposition, each from its element. Throw InputError at `where`. Private to the
// library.
#pragma once

#include "core/interval.hpp"
#include "io/score/xml_source.hpp"
#include "vowelway/core/notation.hpp"

#include <optional>
#include <string>

namespace vowelway::io {

Clef read_clef(pugi::xml_node node);
KeySignature read_key(XmlSource const& source, pugi::xml_node node, std::string const& where);

struct TimeRead {
    TimeSignature time;
    std::optional<double> quarters; ///< a bar is long, 0 without measure; nothing where it does not say
    std::optional<int> beat_type;
};
TimeRead read_time(XmlSource const& source, pugi::xml_node node, std::string const& where);

Interval read_transposition(XmlSource const& source, pugi::xml_node node, std::string const& where);

} // namespace vowelway::io
