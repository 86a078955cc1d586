// SPDX-License-Identifier: MIT
// What we print beside a score that we mark. Private to the layer.
#pragma once

#include "io/score/our_marks.hpp"

#include <pugixml.hpp>

#include <string>
#include <vector>

namespace vowelway::io {

/// <credit> elements with ids of ours: the lines of the heading, in the upper left corner of the first page.
/// Of a score without credits also its title and composer: engravers print these by themselves only where
/// there is no credit at all.
std::vector<std::string> our_credits(pugi::xml_node root, std::vector<HeadingLine> const& heading);

} // namespace vowelway::io
