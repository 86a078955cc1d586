// SPDX-License-Identifier: MIT
// Comma-separated values (RFC 4180), row by row. Private to the library.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io::csv {

struct Field {
    std::string text; ///< without the quotes around it
    int column = 1;   ///< in characters, from 1
};

struct Row {
    int line = 1;
    std::vector<Field> fields;
};

class Reader {
  public:
    /// `text` must outlive the reader; `file` is named in errors.
    Reader(std::string_view text, std::string file);
    /// The next row that is neither blank nor a comment. Throws InputError for a quote that is never closed
    /// and for text after a closing quote.
    std::optional<Row> next();

  private:
    std::string_view rest_;
    std::string file_;
    int line_ = 1;
};

} // namespace vowelway::io::csv
