// SPDX-License-Identifier: MIT
// A table for a terminal: columns aligned by what is seen, so that IPA diacritics take no room.
// Threads: a table belongs to one thread at a time.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::report {

/// Columns on a terminal that a text takes: combining marks none, wide characters are not expected.
std::size_t display_width(std::string_view utf8);

class Table {
  public:
    enum class Align { left, right };
    struct Column {
        std::string heading;
        Align align = Align::left;
    };
    explicit Table(std::vector<Column> columns);

    /// One cell for each column; missing ones stay empty.
    void row(std::vector<std::string> cells);
    bool empty() const { return rows_.empty(); }
    /// Lines with two spaces between columns, headings first, no trailing blanks.
    std::string str() const;

  private:
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

} // namespace vowelway::report
