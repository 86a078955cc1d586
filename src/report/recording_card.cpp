// SPDX-License-Identifier: MIT
#include "vowelway/report/recording_card.hpp"

#include <algorithm>
#include <sstream>

namespace vowelway::report {
namespace {

constexpr std::ptrdiff_t widest_line = 80;

std::ptrdiff_t letters_in(std::string const& utf8) {
    return std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; });
}

/// One point, its further lines set in below the first.
std::string point_of_card(std::string const& sentence) {
    std::istringstream words(sentence);
    std::string out, line = "-";
    for (std::string word; words >> word; line += " " + word)
        if (letters_in(line) + 1 + letters_in(word) > widest_line) {
            out += line + "\n";
            line = " ";
        }
    return out + line + "\n";
}

} // namespace

std::string recording_card_text(analysis::RecordingCard const& card) {
    std::string out = card.title + "\n\n" + card.vowels + "\n";
    for (auto const& part : card.parts) {
        out += "\n" + part.heading + "\n";
        for (auto const& point : part.points) out += point_of_card(point);
    }
    return out;
}

} // namespace vowelway::report
