// SPDX-License-Identifier: MIT
#include "vowelway/core/input_text.hpp"

#include "core/utf8.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway {

std::string size_in_words(std::uintmax_t bytes) {
    if (bytes >= std::uintmax_t{1} << 20) return std::to_string(bytes >> 20) + " MiB";
    if (bytes >= 1024) return std::to_string(bytes >> 10) + " KiB";
    return bytes == 1 ? worded("1 byte") : worded("{0} bytes", bytes);
}

void require_size(std::uintmax_t size, std::uintmax_t bound, std::string const& name) {
    if (size > bound)
        throw InputError(worded("the file is larger than {0}", size_in_words(bound)),
                         worded("check that it is the right file; larger ones are not read"),
                         Place{name, 0, 0, {}});
}

void require_text(std::string_view text, std::string const& name) {
    Place here{name, 1, 1, {}};
    while (!text.empty()) {
        auto const c = utf8::eat(text);
        if (!c) throw InputError(worded("is not UTF-8"), worded("save it as UTF-8 text"), here);
        if ((*c < 0x20 && *c != '\t' && *c != '\n' && *c != '\r') || *c == 0x7F)
            throw InputError(worded("contains a control character, as binary files do"),
                             worded("check that it is a text file"), here);
        ++here.column;
        if (*c == '\n') ++here.line, here.column = 1;
    }
}

} // namespace vowelway
