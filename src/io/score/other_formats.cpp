// SPDX-License-Identifier: MIT
#include "io/score/other_formats.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

using namespace std::string_view_literals;

bool has_signature(std::string_view bytes, std::initializer_list<std::string_view> marks) {
    return std::any_of(marks.begin(), marks.end(), [&](auto mark) { return bytes.starts_with(mark); });
}

bool mentions(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

/// Whether a line begins so.
bool a_line_begins(std::string_view text, std::string_view mark) {
    return text.starts_with(mark) || mentions(text, "\n" + std::string(mark));
}

/// The name of the first element, behind declaration, comments and document type.
std::string_view first_element(std::string_view text) {
    for (std::size_t at = 0; (at = text.find('<', at)) != std::string_view::npos; ++at) {
        auto const rest = text.substr(at + 1);
        if (rest.starts_with("!--")) {
            auto const end = rest.find("-->");
            if (end == std::string_view::npos) return {};
            at += end;
        } else if (!rest.empty() && rest.front() != '?' && rest.front() != '!') {
            return rest.substr(0, rest.find_first_of(" \t\r\n/>:"));
        }
    }
    return {};
}

std::string how_to_export() {
    return worded("open it in a notation program that reads it, and export MusicXML (.mxl or .musicxml)");
}

std::optional<OtherFormat> no_notation(std::string_view bytes) {
    auto const inside = bytes.size() >= 12 ? bytes.substr(8, 4) : std::string_view{};
    bool const riff = bytes.starts_with("RIFF");
    if (bytes.starts_with("MThd") || (riff && inside == "RMID"))
        return OtherFormat{
            worded("this is a MIDI file"),
            worded("MIDI seldom has the words: open it in a notation program, see that the syllables stand "
                   "under their notes, and export MusicXML (.mxl or .musicxml)")};
    if (bytes.starts_with("%PDF"))
        return OtherFormat{worded("this is a PDF, a picture of a page"),
                           worded("look for the song as MusicXML, or read the page with a program for music "
                                  "recognition, check every note and word, and export MusicXML")};
    bool const picture =
        has_signature(bytes, {"\x89PNG"sv, "\xFF\xD8\xFF"sv, "GIF8"sv, "II*\0"sv, "MM\0*"sv}) ||
        (riff && inside == "WEBP") || first_element(bytes.substr(0, 4000)) == "svg";
    if (picture)
        return OtherFormat{worded("this is a picture"),
                           worded("look for the song as MusicXML, or read the page with a program for music "
                                  "recognition, check every note and word, and export MusicXML")};
    bool const sound = (riff && inside == "WAVE") ||
                       has_signature(bytes, {"fLaC"sv, "OggS"sv, "ID3"sv, "\xFF\xFB"sv}) ||
                       (bytes.size() > 8 && bytes.substr(4, 4) == "ftyp");
    if (sound)
        return OtherFormat{worded("this is a recording, not a score"),
                           worded("give the song as MusicXML; vowelway measure reads recordings")};
    if (bytes.starts_with("\x1F\x8B"))
        return OtherFormat{worded("this file is packed by gzip"),
                           worded("unpack it and give the score inside")};
    return std::nullopt;
}

std::optional<OtherFormat> other_notation(std::string_view text) {
    auto const named = [](std::string_view name) {
        return OtherFormat{worded("this is a score in {0}", name), how_to_export()};
    };
    auto const element = first_element(text);
    if (element == "mei") return named("MEI");
    if (element == "html" || element == "HTML")
        return OtherFormat{worded("this is a web page (<html>), not a score"),
                           worded("download the score itself: the page has a link to it")};
    if (!element.empty() && text::trim(text).starts_with('<')) return std::nullopt;
    if (mentions(text, "**kern")) return named("Humdrum **kern");
    if (a_line_begins(text, "X:") && a_line_begins(text, "K:")) return named("ABC");
    bool const lily = mentions(text, "\\version \"") || mentions(text, "\\relative") ||
                      mentions(text, "\\new Staff") || mentions(text, "\\score");
    if (lily) return named("LilyPond");
    if (text::trim(text).starts_with('{') && mentions(text, "\"mnx\"")) return named("MNX");
    return std::nullopt;
}

} // namespace

std::optional<OtherFormat> other_format(std::string_view bytes) {
    if (auto found = no_notation(bytes)) return found;
    constexpr std::size_t head = 20'000;
    return other_notation(bytes.substr(0, head));
}

std::optional<OtherFormat> own_format(std::string_view bytes) {
    constexpr std::size_t head = 20'000;
    auto const text = bytes.substr(0, head);
    bool const binary = std::any_of(text.begin(), text.end(), [](char c) {
        auto const byte = static_cast<unsigned char>(c);
        return byte < 9 || (byte > 13 && byte < 32);
    });
    if (!binary) return std::nullopt;
    return OtherFormat{
        worded("this is not text: perhaps a notation program's own file"),
        worded("open it in the program that wrote it, and export MusicXML (.mxl or .musicxml)")};
}

} // namespace vowelway::io
