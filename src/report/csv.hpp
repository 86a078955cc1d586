// SPDX-License-Identifier: MIT
// Comma-separated values after RFC 4180. Private to the layer.
#pragma once

#include <string>
#include <vector>

namespace vowelway::report {

/// Adds one line; fields are quoted where they must be.
inline void csv_line(std::string& out, std::vector<std::string> const& fields) {
    bool first = true;
    for (auto const& field : fields) {
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
