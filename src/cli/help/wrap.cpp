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

void wrap_line(std::string_view line, std::size_t width, std::vector<std::string>& out) {
    auto const indent = line.substr(0, std::min(line.find_first_not_of(' '), line.size()));
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
            now = indent;
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
        wrap_line(text.substr(0, end), width, out);
        if (end == std::string_view::npos) return out;
        text.remove_prefix(end + 1);
    }
}

std::size_t columns_of(int descriptor) {
    winsize size{};
    if (ioctl(descriptor, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return 100;
    return std::max<std::size_t>(40, size.ws_col);
}

} // namespace vowelway::cli
