// SPDX-License-Identifier: MIT
// Comma-separated values after RFC 4180. Private to the layer.
#pragma once

#include "core/text.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::report {

/// A text that a spreadsheet would take for a formula (it begins with = + - @, a tab or a line break) gets an
/// apostrophe in front, as in what its user would type; numbers stay numbers.
inline std::string harmless(std::string const& field) {
    if (field.empty() || std::string_view("=+-@\t\r\n").find(field.front()) == std::string_view::npos)
        return field;
    std::string_view rest = field;
    return text::eat_number(rest) && rest.empty() ? field : "'" + field;
}

/// Adds one line; fields are quoted where they must be.
inline void csv_line(std::string& out, std::vector<std::string> const& fields) {
    bool first = true;
    for (auto const& each : fields) {
        auto const field = harmless(each);
        if (!first) out += ',';
        first = false;
        if (field.find_first_of(",\"\r\n") == std::string::npos) {
            out += field;
            continue;
        }
        out += '"';
        for (char const c : field) out += c == '"' ? std::string("\"\"") : std::string(1, c);
        out += '"';
    }
    out += "\r\n";
}

} // namespace vowelway::report
