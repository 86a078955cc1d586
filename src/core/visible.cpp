// SPDX-License-Identifier: MIT
#include "core/visible.hpp"

#include "core/utf8.hpp"

#include <cstdio>

namespace vowelway {

namespace {

bool acts(char32_t c) {
    bool const control = (c < 0x20 && c != U'\t' && c != U'\n') || (c >= 0x7F && c < 0xA0);
    bool const direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    return control || direction || c == 0x2028 || c == 0x2029;
}

std::string written_out(char const* form, unsigned number) {
    char out[16];
    std::snprintf(out, sizeof out, form, number);
    return out;
}

} // namespace

std::string visible(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    while (!text.empty()) {
        auto const from = text;
        auto const c = utf8::eat(text);
        if (!c) {
            out += written_out("\\x%02x", static_cast<unsigned char>(text.front()));
            text.remove_prefix(1);
        } else if (acts(*c) && !(*c == U'\r' && text.starts_with('\n'))) {
            out += written_out("\\u{%x}", static_cast<unsigned>(*c));
        } else {
            out += from.substr(0, from.size() - text.size());
        }
    }
    return out;
}

} // namespace vowelway
