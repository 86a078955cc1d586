// SPDX-License-Identifier: MIT
#include "vowelway/report/table.hpp"

#include "core/utf8.hpp"

#include <algorithm>

namespace vowelway::report {

std::size_t display_width(std::string_view utf8) {
    std::size_t width = 0;
    while (!utf8.empty()) {
        auto const c = utf8::eat(utf8);
        if (!c) {
            utf8.remove_prefix(1);
            ++width;
            continue;
        }
        bool const combining =
            (*c >= 0x300 && *c <= 0x36F) || (*c >= 0x1DC0 && *c <= 0x1DFF) || *c == 0x200B || *c == 0xFE0E;
        if (!combining) ++width;
    }
    return width;
}

Table::Table(std::vector<Column> columns) : columns_(std::move(columns)) {}

void Table::row(std::vector<std::string> cells) {
    cells.resize(columns_.size());
    rows_.push_back(std::move(cells));
}

std::string Table::str() const {
    std::vector<std::size_t> widths;
    for (std::size_t c = 0; c < columns_.size(); ++c) {
        std::size_t width = display_width(columns_[c].heading);
        for (auto const& row : rows_) width = std::max(width, display_width(row[c]));
        widths.push_back(width);
    }
    std::string out;
    auto const put = [&](auto const& cell_of) {
        std::string line;
        for (std::size_t c = 0; c < columns_.size(); ++c) {
            if (c > 0) line += "  ";
            std::string const& cell = cell_of(c);
            std::string const gap(widths[c] - display_width(cell), ' ');
            line += columns_[c].align == Align::right ? gap + cell : cell + gap;
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + "\n";
    };
    put([&](std::size_t c) -> std::string const& { return columns_[c].heading; });
    for (auto const& row : rows_) put([&](std::size_t c) -> std::string const& { return row[c]; });
    return out;
}

} // namespace vowelway::report
