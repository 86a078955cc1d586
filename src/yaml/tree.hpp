// SPDX-License-Identifier: MIT
// A YAML text as a tree of values that know where they stand. Private to the library: it has no public
// headers. Strict: no aliases, no tags of its own, no key twice, one document, bounded size and depth.
#pragma once

#include "vowelway/core/error.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::yaml {

inline constexpr std::size_t largest_file = std::size_t{1} << 20; ///< 1 MiB
inline constexpr std::size_t most_values = 100'000;
inline constexpr std::size_t deepest = 16;

struct Field;

struct Node {
    enum class Kind { null, scalar, sequence, map };
    Kind kind = Kind::null;
    std::string text;          ///< of a scalar
    bool quoted = false;       ///< of a scalar
    bool flow = false;         ///< of a collection: in braces or brackets
    Place place;               ///< file, line and column (in characters), both from 1
    std::size_t offset = 0;    ///< bytes from the start of the text
    std::vector<Node> items;   ///< of a sequence
    std::vector<Field> fields; ///< of a map, in the order of the file

    Node const* find(std::string_view key) const; ///< null when absent
};

/// A key of a map and what stands behind it.
struct Field {
    Node key, value;
};

/// Throws InputError with the place, also for a text over 1 MiB, bytes that are not UTF-8 and control
/// characters. `file` is the name used in messages.
Node parse(std::string const& text, std::string const& file);

/// An error at a node.
InputError error_at(Node const& node, std::string wrong, std::string remedy);

/// Runs `read` and adds the node's place to an InputError that has none.
template <class Read> auto placed(Node const& node, Read read) {
    try {
        return read();
    } catch (InputError& error) {
        throw error.at(node.place);
    }
}

/// The text of a scalar; throws where the value is something else. `what` names it: "the range".
std::string const& scalar(Node const& node, std::string_view what);
/// A map; throws where the value is something else. `example` shows what was meant.
Node const& map(Node const& node, std::string_view what, std::string_view example);
/// A sequence; throws likewise.
Node const& sequence(Node const& node, std::string_view what, std::string_view example);
/// Throws for the first key that is not among `known` (separated by blanks).
void only_keys(Node const& map, std::string_view known);

} // namespace vowelway::yaml
