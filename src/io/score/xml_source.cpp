// SPDX-License-Identifier: MIT
#include "io/score/xml_source.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <new>

namespace vowelway::io {

XmlSource::XmlSource(std::string bytes, std::string file)
    : file_(std::move(file)), decoded_(decode_xml(std::move(bytes), file_)), outline_(decoded_.text, file_) {
    // Comments and white space are no part of the music; the text itself keeps them.
    auto const result =
        doc_.load_buffer(decoded_.text.data(), decoded_.text.size(),
                         pugi::parse_default | pugi::parse_ws_pcdata_single, pugi::encoding_utf8);
    if (result.status == pugi::status_out_of_memory) throw std::bad_alloc(); // the score may be a good one
    if (!result) {
        auto const at = static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, result.offset));
        throw InputError(worded("this is not well-formed XML ({0})", result.description()),
                         worded("export or download the score again"),
                         {file_, line_of(decoded_.text, at), 0, {}});
    }
}

std::size_t XmlSource::offset(pugi::xml_node node) const {
    auto const name = node.offset_debug();
    return name > 0 ? static_cast<std::size_t>(name) - 1 : 0;
}

Place XmlSource::place(pugi::xml_node node, std::string musical) const {
    return {file_, line_of(decoded_.text, offset(node)), 0, std::move(musical)};
}

double XmlSource::number(pugi::xml_node node, std::string const& musical) const {
    auto text = trimmed(node);
    auto const value = text::eat_number(text);
    if (!value || !text.empty())
        throw InputError(worded("<{0}> is \"{1}\", not a number", node.name(), node.child_value()),
                         worded("write a plain number there, or export the score again"),
                         place(node, musical));
    return *value;
}

std::string_view trimmed(pugi::xml_node node) { return text::trim(node.child_value()); }

} // namespace vowelway::io
