// SPDX-License-Identifier: MIT
// Text for XML: SVG and scores. Private to the library.
#pragma once

#include <string>
#include <string_view>

namespace vowelway {

/// As element content or attribute value; characters that XML 1.0 forbids are left out.
inline std::string escaped_for_xml(std::string_view text) {
    std::string out;
    for (char const c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (c == '"')
            out += "&quot;";
        else if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t')
            out += c;
    }
    return out;
}

} // namespace vowelway
