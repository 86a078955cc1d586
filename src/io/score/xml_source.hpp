// SPDX-License-Identifier: MIT
// A score's XML: text, parsed nodes, and where each node stands in the text. Private to the library.
#pragma once

#include "io/score/decode.hpp"
#include "io/score/outline.hpp"
#include "vowelway/core/error.hpp"

#include <memory>
#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>

namespace vowelway::io {

class XmlSource {
  public:
    /// Throws InputError when the text is not safe, well-formed XML. `file` is for messages.
    XmlSource(std::string bytes, std::string file);
    XmlSource(XmlSource const&) = delete;
    XmlSource& operator=(XmlSource const&) = delete;

    pugi::xml_node root() const { return doc_.document_element(); }
    Decoded const& decoded() const { return decoded_; }
    std::string_view text() const { return decoded_.text; }
    std::string const& file() const { return file_; }

    /// The byte offset of the "<" of an element.
    std::size_t offset(pugi::xml_node node) const;
    Outline const& outline() const { return outline_; }

    Place place(pugi::xml_node node, std::string musical = {}) const;

    /// The number in an element's text. Throws InputError when it is none, or not finite.
    double number(pugi::xml_node node, std::string const& musical) const;

  private:
    std::string file_;
    Decoded decoded_;
    Outline outline_;
    pugi::xml_document doc_;
};

/// The text of an element without blanks around it.
std::string_view trimmed(pugi::xml_node node);

} // namespace vowelway::io
