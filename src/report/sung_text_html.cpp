// SPDX-License-Identifier: MIT
#include "core/xml.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/sung_text_report.hpp"

#include <fmt/format.h>

namespace vowelway::report {

namespace {

constexpr std::string_view look = R"(
body { font: 1.15rem/1.3 "Charis SIL", "Doulos SIL", "Noto Serif", serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.5rem; margin: 0; } .by { font-style: italic; margin: 0 0 1.5rem; }
.stanza { margin: 0 0 1.6rem; } .line { margin: 0 0 .5rem 1.5rem; text-indent: -1.5rem; }
.word { display: inline-block; text-indent: 0; margin-right: .55rem; vertical-align: top; }
.word > * { display: block; } .ipa { font-size: .92em; opacity: .75; }
table { border-collapse: collapse; font-size: .9rem; } td { padding: .1rem 1rem .1rem 0; } .note { font-size: .9rem; }
@media print { body { margin: 0; } .stanza { break-inside: avoid; } }
)";

std::string word_html(TextWord const& word, std::string_view language) {
    return fmt::format("<span class=\"word\"><span lang=\"{0}\">{1}</span> <span class=\"ipa\" "
                       "lang=\"{0}-fonipa\">{2}{3}{4}</span></span> ",
                       language, escaped_for_xml(word.written), escaped_for_xml(word.ipa),
                       word.guessed ? "?" : "", word.joined ? "‿" : "");
}

} // namespace

std::string sung_text_html(SungText const& text) {
    auto const title = escaped_for_xml(text.title.empty() ? worded("Text sheet") : text.title);
    std::string out =
        fmt::format("<!DOCTYPE html>\n<html lang=\"{}\">\n<head><meta charset=\"utf-8\">\n<meta "
                    "name=\"viewport\" content=\"width=device-width\">\n<title>{}</title>\n"
                    "<style>{}</style></head>\n<body>\n<h1>{}</h1>\n<p class=\"by\">{}</p>\n",
                    wording_language(), title, look, title, escaped_for_xml(text.composer));
    for (auto const& line : text.lines) {
        bool const first = &line == &text.lines.front();
        if (first || line.begins_stanza)
            out += first ? "<div class=\"stanza\">\n" : "</div>\n<div class=\"stanza\">\n";
        out += "<p class=\"line\">";
        for (auto const& word : line.words) out += word_html(word, text.language);
        if (line.times > 1) out += fmt::format("({}×)", line.times);
        out += "</p>\n";
    }
    if (!text.lines.empty()) out += "</div>\n";
    out += "<table>\n";
    for (auto const& sign : text.key)
        out += fmt::format("<tr><td>{}</td><td>{}</td><td><i>{}</i></td></tr>\n", escaped_for_xml(sign.sign),
                           escaped_for_xml(sign.says), escaped_for_xml(sign.example));
    out += "</table>\n";
    for (auto const& note : text.notes) out += "<p class=\"note\">" + escaped_for_xml(note) + "</p>\n";
    return out + "</body>\n</html>\n";
}

} // namespace vowelway::report
