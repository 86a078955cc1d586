// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/read_cues.hpp"

#include "core/text.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <sstream>

namespace vowelway::io {
namespace {

std::string cue_shape() { return worded("write start, end and vowel, such as: 0.50 1.60 e"); }

/// Seconds, from "3.25", "0:03.2" or "1:02:03".
std::optional<double> moment(std::string_view text) {
    double total = 0;
    for (int parts = 0; parts < 3; ++parts) {
        auto const value = text::eat_number(text);
        if (!value || *value < 0) return std::nullopt;
        total = 60 * total + *value;
        if (text.empty()) return total;
        if (!text::eat(text, ":")) return std::nullopt;
    }
    return std::nullopt;
}

} // namespace

std::vector<Cue> parse_cues(std::string const& text, std::string const& file) {
    require_size(text.size(), largest_cues, file);
    require_text(text, file);
    std::vector<Cue> cues;
    std::istringstream lines(text);
    std::string line;
    for (int number = 1; std::getline(lines, line); ++number) {
        line = line.substr(0, line.find('#'));
        std::replace(line.begin(), line.end(), ',', ' ');
        std::replace(line.begin(), line.end(), '\t', ' ');
        std::istringstream words(line);
        std::vector<std::string> const word{std::istream_iterator<std::string>(words), {}};
        if (word.empty()) continue;
        Place const place{file, number, 0, {}};
        if (word.size() != 3)
            throw InputError(worded("a cue with {0} words", word.size()), cue_shape(), place);
        auto const start = moment(word[0]), end = moment(word[1]);
        if (!start || !end)
            throw InputError(worded("\"{0}\" is not a time", word[start ? 1 : 0]), cue_shape(), place);
        if (*end <= *start) throw InputError(worded("the cue ends before it begins"), cue_shape(), place);
        if (!cues.empty() && seconds(*start) < cues.back().span.end)
            throw InputError(worded("the cue begins before the one above has ended"),
                             worded("put them in order, without overlap"), place);
        if (cues.size() == most_cues)
            throw InputError(worded("more than 500 cues"), worded("measure the recording in parts"), place);
        try {
            cues.push_back({{seconds(*start), seconds(*end)}, parse_vowel(word[2])});
        } catch (InputError& error) {
            throw error.at(place);
        }
    }
    if (cues.empty()) throw InputError(worded("has no cues"), cue_shape(), Place{file, 0, 0, {}});
    return cues;
}

} // namespace vowelway::io
