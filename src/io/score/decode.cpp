// SPDX-License-Identifier: MIT
#include "io/score/decode.hpp"

#include "core/text.hpp"
#include "core/utf8.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <iconv.h>
#include <optional>

namespace vowelway::io {

namespace {

/// EncName of XML 1.0 (production 81): a letter, then letters, digits, dot, underscore or hyphen.
bool is_encoding_name(std::string_view name) {
    auto const letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    return !name.empty() && letter(name.front()) && std::all_of(name.begin(), name.end(), [&](char c) {
        return letter(c) || (c >= '0' && c <= '9') || c == '.' || c == '_' || c == '-';
    });
}

/// One name="value" after blanks, taken off the text; nothing when there is none.
std::optional<std::pair<std::string_view, std::string_view>> eat_attribute(std::string_view& text) {
    auto const skip_blanks = [](std::string_view& t) {
        auto const first = std::min(t.find_first_not_of(" \t\r\n"), t.size());
        t.remove_prefix(first);
        return first > 0;
    };
    auto rest = text;
    if (!skip_blanks(rest)) return std::nullopt;
    auto const name = rest.substr(0, rest.find_first_not_of("abcdefghijklmnopqrstuvwxyz"));
    rest.remove_prefix(name.size());
    skip_blanks(rest);
    if (name.empty() || !rest.starts_with('=')) return std::nullopt;
    rest.remove_prefix(1);
    skip_blanks(rest);
    if (!rest.starts_with('"') && !rest.starts_with('\'')) return std::nullopt;
    auto const close = rest.find(rest.front(), 1);
    if (close == std::string_view::npos) return std::nullopt;
    auto const value = rest.substr(1, close - 1);
    text = rest.substr(close + 1);
    return std::pair(name, value);
}

std::string convert(std::string const& bytes, std::string const& encoding, std::string const& file) {
    auto const handle = iconv_open("UTF-8", encoding.c_str());
    if (handle == reinterpret_cast<iconv_t>(-1))
        throw InputError(worded("the encoding \"{0}\" is not known", encoding),
                         worded("save the score as UTF-8"), {file, 1, 0, {}});
    std::string out(bytes.size() * 4 + 16, '\0');
    auto* in = const_cast<char*>(bytes.data()); // iconv's signature; it does not write there
    auto* to = out.data();
    std::size_t in_left = bytes.size(), out_left = out.size();
    auto const result = iconv(handle, &in, &in_left, &to, &out_left);
    iconv_close(handle);
    out.resize(out.size() - out_left);
    if (result == static_cast<std::size_t>(-1))
        throw InputError(worded("the text says it is {0} but is not", encoding),
                         worded("save the score again as UTF-8"), {file, line_of(out, out.size()), 0, {}});
    return out;
}

std::size_t first_bad_byte(std::string_view text) {
    auto rest = text;
    while (!rest.empty())
        if (!utf8::eat(rest)) break;
    return text.size() - rest.size();
}

bool is_utf8_name(std::string name) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return static_cast<char>(c | 0x20); });
    return name == "utf-8" || name == "utf8" || name == "us-ascii";
}

} // namespace

Declaration declaration_of(std::string_view text) {
    constexpr std::string_view begin = "<?xml";
    auto const end = text.find("?>");
    if (!text.starts_with(begin) || end == std::string_view::npos) return {};
    auto head = text.substr(begin.size(), end - begin.size());
    Declaration found;
    std::array names{std::string_view("version"), std::string_view("encoding"),
                     std::string_view("standalone")};
    auto next = names.begin();
    while (auto const attribute = eat_attribute(head)) {
        auto const& [name, value] = *attribute;
        auto const at = std::find(next, names.end(), name);
        if (at == names.end()) return {{}, to_word("it is not made of version, encoding and standalone")};
        next = at + 1;
        if (name != "encoding") continue;
        if (!is_encoding_name(value)) return {{}, to_word("it names no encoding")};
        found.encoding = value;
    }
    if (head.find_first_not_of(" \t\r\n") != std::string_view::npos)
        return {{}, to_word("it does not end after version, encoding and standalone")};
    return found;
}

int line_of(std::string_view text, std::size_t offset) {
    auto const head = text.substr(0, offset);
    return 1 + static_cast<int>(std::count(head.begin(), head.end(), '\n'));
}

bool looks_like_xml(std::string_view bytes) {
    using namespace std::string_view_literals;
    for (auto mark : {"\xEF\xBB\xBF"sv, "\xFF\xFE\0\0"sv, "\0\0\xFE\xFF"sv, "\xFF\xFE"sv, "\xFE\xFF"sv})
        if (text::eat(bytes, mark)) break;
    auto const first = bytes.find_first_not_of(" \t\r\n\0"sv);
    return first != std::string_view::npos && bytes[first] == '<';
}

Decoded decode_xml(std::string bytes, std::string const& file) {
    using namespace std::string_view_literals;
    Decoded out;
    out.encoding = "UTF-8";
    std::string_view const view = bytes;
    std::string wide;
    if (view.starts_with("\xEF\xBB\xBF"sv))
        out.mark = 3;
    else if (view.starts_with("\xFF\xFE\0\0"sv) || view.starts_with("\0\0\xFE\xFF"sv))
        wide = "UTF-32";
    else if (view.starts_with("\xFF\xFE"sv) || view.starts_with("\xFE\xFF"sv))
        wide = "UTF-16";
    else if (view.starts_with("<\0?\0"sv))
        wide = "UTF-16LE";
    else if (view.starts_with("\0<\0?"sv))
        wide = "UTF-16BE";
    if (!wide.empty()) {
        out.same_bytes = false;
        out.encoding = wide;
        out.text = convert(bytes, wide, file);
    } else {
        bytes.erase(0, out.mark);
        auto const declared = declaration_of(bytes);
        if (!declared.fault.empty())
            throw InputError(
                worded("the XML declaration at the start is damaged: {0}", reworded(declared.fault)),
                worded("save the score again as UTF-8, or begin it with <?xml version=\"1.0\" "
                       "encoding=\"UTF-8\"?>"),
                {file, 1, 0, {}});
        if (!declared.encoding.empty()) out.encoding = std::string(declared.encoding);
        if (out.mark > 0 || is_utf8_name(out.encoding)) {
            auto const bad = first_bad_byte(bytes);
            if (bad < bytes.size())
                throw InputError(worded("the text is not UTF-8"),
                                 worded("save the score again as UTF-8, or declare the encoding it has"),
                                 {file, line_of(bytes, bad), 0, {}});
            out.text = std::move(bytes);
        } else {
            if (out.encoding.starts_with("UTF-16") || out.encoding.starts_with("utf-16"))
                throw InputError(worded("the text says it is {0} but is not", out.encoding),
                                 worded("save the score again as UTF-8"), {file, 1, 0, {}});
            out.text = convert(bytes, out.encoding, file);
            out.same_bytes = out.text == bytes; // ASCII throughout
            out.ascii = true;
        }
    }
    if (auto const zero = out.text.find('\0'); zero != std::string::npos)
        throw InputError(worded("this is binary data, not a score"),
                         worded("give a MusicXML file (.musicxml, .xml, .mxl) or a YAML passage"),
                         {file, line_of(out.text, zero), 0, {}});
    return out;
}

} // namespace vowelway::io
