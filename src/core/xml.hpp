// SPDX-License-Identifier: MIT
// Text for XML: SVG and scores. Private to the library.
#pragma once

#include "core/visible.hpp"

#include <string>
#include <string_view>

namespace vowelway {

/// As element content or attribute value; what visible() writes out, XML 1.0 mostly forbids.
inline std::string escaped_for_xml(std::string_view text) {
    std::string out;
    for (char const c : visible(text)) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (c == '"')
            out += "&quot;";
        else
            out += c;
    }
    return out;
}

} // namespace vowelway
