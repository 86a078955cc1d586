// SPDX-License-Identifier: MIT
// Any encoding an XML file may declare, to UTF-8. Private to the library.
#pragma once

#include <string>
#include <string_view>

namespace vowelway::io {

struct Decoded {
    std::string text;       ///< UTF-8 without byte order mark
    std::string encoding;   ///< as declared, or "UTF-8"
    std::size_t mark = 0;   ///< bytes of a UTF-8 byte order mark taken off
    bool same_bytes = true; ///< the text is the input's own bytes
    bool ascii = false;     ///< with same_bytes: the encoding is not UTF-8; only ASCII may be added
};

/// The XML declaration at the start of a text of which ASCII is a part: XML 1.0 (fifth edition), production
/// 23,
/// <?xml version="1.0" encoding="..." standalone="..."?>, of which version may be missing too.
struct Declaration {
    std::string_view encoding; ///< where it stands in the text; empty where none is named
    std::string_view fault;    ///< why it is damaged, so that nobody knows what the bytes mean; else empty
};
Declaration declaration_of(std::string_view text);

/// Follows the byte order mark, else the zero bytes of UTF-16, else the declaration, else UTF-8
/// (XML 1.0, 5th edition, appendix F). Throws InputError (binary data, bytes that do not belong to the
/// encoding, an encoding iconv does not know) with `file` and a line.
Decoded decode_xml(std::string bytes, std::string const& file);

/// XML begins with "<", whatever the encoding and byte order mark.
bool looks_like_xml(std::string_view bytes);

/// The line, from 1, of a byte offset.
int line_of(std::string_view text, std::size_t offset);

} // namespace vowelway::io
