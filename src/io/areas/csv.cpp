// SPDX-License-Identifier: MIT
#include "io/areas/csv.hpp"

#include "core/text.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::io::csv {

Reader::Reader(std::string_view text, std::string file) : rest_(text), file_(std::move(file)) {
    text::eat(rest_, "\xEF\xBB\xBF");
}

std::optional<Row> Reader::next() {
    for (;;) {
        if (rest_.empty()) return std::nullopt;
        auto const end = rest_.find_first_of("\r\n");
        auto const line = text::trim(rest_.substr(0, end));
        if (!line.empty() && line.front() != '#') break;
        rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end);
        if (!text::eat(rest_, "\r\n") && !rest_.empty()) rest_.remove_prefix(1);
        ++line_;
    }
    Row row{line_, {}};
    int column = 1;
    for (;;) {
        Field field{"", column};
        auto const take = [&] {
            char const c = rest_.front();
            rest_.remove_prefix(1);
            // Continuation bytes of UTF-8 are part of the character before them.
            if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) ++column;
            if (c == '\n') {
                ++line_;
                column = 1;
            }
            return c;
        };
        if (text::eat(rest_, "\"")) {
            ++column;
            for (;;) {
                if (rest_.empty())
                    throw InputError(worded("a quote is opened but not closed"), worded("close it with \""),
                                     Place{file_, row.line, field.column, ""});
                if (rest_.starts_with("\"\"")) {
                    rest_.remove_prefix(2);
                    column += 2;
                    field.text += '"';
                } else if (text::eat(rest_, "\"")) {
                    ++column;
                    break;
                } else {
                    field.text += take();
                }
            }
            if (!rest_.empty() && rest_.front() != ',' && rest_.front() != '\r' && rest_.front() != '\n')
                throw InputError(worded("text after a closing quote"),
                                 worded("put the whole field in quotes, and \"\" for a quote in it"),
                                 Place{file_, line_, column, ""});
        } else {
            while (!rest_.empty() && rest_.front() != ',' && rest_.front() != '\r' && rest_.front() != '\n')
                field.text += take();
        }
        row.fields.push_back(std::move(field));
        if (!text::eat(rest_, ",")) break;
        ++column;
    }
    if (!text::eat(rest_, "\r\n") && !rest_.empty()) rest_.remove_prefix(1);
    ++line_;
    return row;
}

} // namespace vowelway::io::csv
