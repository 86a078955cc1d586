// SPDX-License-Identifier: MIT
// Changes to a YAML text that leave everything else as it was typed. Private to the library.
#pragma once

#include "yaml/tree.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::yaml {

/// Collects changes at places of one text, then makes them all at once.
class Edit {
  public:
    /// `root` must be the tree of `text`; both must outlive the edit.
    Edit(std::string const& text, Node const& root) : text_(text), root_(root) {}

    /// The byte behind the last one of a value. Throws InputError for a plain scalar over several lines.
    std::size_t end_of(Node const& node) const;

    void replace(Node const& value, std::string with);
    /// `key: value` behind the last field of a map; in the style of the map.
    void add_field(Node const& map, std::string_view key, std::string const& value);
    /// `key: value` behind that field of a map.
    void add_field_after(Node const& map, std::size_t field, std::string_view key, std::string const& value);
    void remove_field(Node const& map, std::size_t field);
    /// An item behind the last one of a sequence; in the style of the sequence.
    void add_item(Node const& sequence, std::string const& item);
    /// `key:` with a block below it, at the end of the file.
    void add_block(std::string_view key, std::string const& line);
    /// The block below a key of the root that has none yet (`history:` alone, or `history: []`).
    void fill(Node const& value, std::string const& line);

    std::string done() const;

  private:
    struct Change {
        std::size_t at, length;
        std::string with;
    };
    std::size_t end_of_line(std::size_t at) const;
    std::string indent_of(Node const& node) const;

    std::string const& text_;
    Node const& root_;
    std::vector<Change> changes_;
};

/// A text in double quotes.
std::string quoted(std::string_view text);

} // namespace vowelway::yaml
