// SPDX-License-Identifier: MIT
// A first look at XML before it is parsed: is it safe, and where do its elements end. Private to the library.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::io {

/// The elements of an XML text by byte offset of their "<".
class Outline {
  public:
    struct Element {
        std::size_t begin;   ///< of the start tag
        std::size_t end_tag; ///< of the "</"; of the "/>" when it has no content
        std::size_t end;     ///< one past its last ">"
    };

    /// Walks the markup once. Throws InputError with file and line when elements nest deeper than
    /// deepest_score_nesting, when a document type declares entities of its own, and when the text ends
    /// within a tag. It does not check names: the parser does.
    Outline(std::string_view text, std::string const& file);

    /// The element that begins at this offset; null if none does.
    Element const* at(std::size_t begin) const;

  private:
    std::vector<Element> elements_; ///< by begin
};

} // namespace vowelway::io
