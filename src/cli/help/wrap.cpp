// SPDX-License-Identifier: MIT
#include "cli/help/wrap.hpp"

#include <algorithm>
#include <sys/ioctl.h>

namespace vowelway::cli {

namespace {

std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

/// `hanging`: how far lines after the first are set in beside the indent.
void wrap_line(std::string_view line, std::size_t width, std::size_t hanging, std::vector<std::string>& out) {
    auto const indent = line.substr(0, std::min(line.find_first_not_of(' '), line.size()));
    auto const next = std::string(indent) + std::string(hanging, ' ');
    std::string now(indent);
    bool any = false;
    for (std::size_t at = indent.size(); at < line.size();) {
        auto const end = std::min(line.find(' ', at), line.size());
        auto const word = line.substr(at, end - at);
        at = end + 1;
        if (word.empty()) {
            now += ' '; // blanks that were set on purpose stay
            continue;
        }
        if (any && characters(now) + 1 + characters(word) > width) {
            out.push_back(now);
            now = next;
            any = false;
        }
        if (any) now += ' ';
        now += word;
        any = true;
    }
    out.push_back(now);
}

} // namespace

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    std::vector<std::string> out;
    while (true) {
        auto const end = text.find('\n');
        wrap_line(text.substr(0, end), width, 0, out);
        if (end == std::string_view::npos) return out;
        text.remove_prefix(end + 1);
    }
}

namespace {

/// How far what follows a broken line is set in: under the last column of a table's row, else by four.
std::size_t hanging_of(std::string_view line, std::size_t width) {
    auto const indent = std::min(line.find_first_not_of(' '), line.size());
    auto const gap = line.rfind("  ");
    if (gap == std::string_view::npos || gap < indent) return 4;
    auto const column = characters(line.substr(0, gap + 2));
    return column + 16 <= width ? column - indent : 4;
}

} // namespace

std::string fitted(std::string_view text, std::size_t width) {
    std::string out;
    while (!text.empty()) {
        auto const end = std::min(text.find('\n'), text.size());
        auto const line = text.substr(0, end);
        if (characters(line) <= width) {
            out += line;
        } else {
            std::vector<std::string> lines;
            wrap_line(line, width, hanging_of(line, width), lines);
            for (auto const& part : lines) out += (&part == lines.data() ? "" : "\n") + part;
        }
        if (end < text.size()) out += '\n';
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

std::size_t columns_of(int descriptor) {
    winsize size{};
    if (ioctl(descriptor, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return 100;
    return std::max<std::size_t>(40, size.ws_col);
}

} // namespace vowelway::cli
