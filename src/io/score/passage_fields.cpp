// SPDX-License-Identifier: MIT
#include "io/score/passage_fields.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::io {

double bounded_number(yaml::Node const& node, std::string_view what, double least, double most) {
    auto text = text::trim(yaml::scalar(node, what));
    auto const value = text::eat_number(text);
    if (!value || !text.empty() || *value < least || *value > most)
        throw yaml::error_at(node, worded("{0} is \"{1}\"", what, node.text),
                             worded("write a number from {0} to {1}", std::lround(least), std::lround(most)));
    return *value;
}

double length_of(yaml::Node const& node, double per_minute, int beat_type) {
    auto text = text::trim(yaml::scalar(node, worded("a duration")));
    auto const value = text::eat_number(text);
    auto const unit = text::trim(text);
    auto const wrong = [&](std::string const& what) {
        return yaml::error_at(node, what,
                              worded("write a duration above 0 with its unit: 1.5 s, 500 ms or 2 beats"));
    };
    if (!value) throw wrong(worded("\"{0}\" is not a duration", node.text));
    if (!(*value > 0)) throw wrong(worded("the duration \"{0}\" is not above 0", node.text));
    double quarters = 0;
    if (unit == "s")
        quarters = *value * per_minute / 60;
    else if (unit == "ms")
        quarters = *value / 1000 * per_minute / 60;
    else if (unit == "beat" || unit == "beats")
        quarters = *value * 4 / beat_type;
    else if (unit.empty())
        throw wrong(worded("the duration \"{0}\" has no unit", node.text));
    else
        throw wrong(worded("\"{0}\" is not a unit of duration", unit));
    if (quarters * 60 / per_minute > longest_note)
        throw wrong(worded("\"{0}\" is longer than ten minutes", node.text));
    if (quarters < 1.0 / 256) throw wrong(worded("\"{0}\" is too short to sing", node.text));
    return quarters;
}

std::vector<Syllable> syllables_of(std::string_view text) {
    std::vector<Syllable> out;
    auto const add = [&](std::string_view word) {
        word = text::trim(word);
        bool const goes_on = word.ends_with('-'), continues = word.starts_with('-');
        while (word.ends_with('-')) word.remove_suffix(1);
        while (word.starts_with('-')) word.remove_prefix(1);
        if (word.empty()) return;
        using Part = Syllable::Part;
        out.push_back({std::string(word), goes_on && continues ? Part::middle
                                          : goes_on            ? Part::begin
                                          : continues          ? Part::end
                                                               : Part::single});
    };
    while (!text.empty()) {
        std::size_t cut = text.size(), skip = 0;
        for (std::string_view sign : {"‿", "_", " ", "\u00A0"})
            if (auto const at = text.find(sign); at < cut) {
                cut = at;
                skip = sign.size();
            }
        add(text.substr(0, cut));
        text.remove_prefix(std::min(text.size(), cut + skip));
    }
    return out;
}

double dynamic_of(yaml::Node const& node) {
    static constexpr std::array<std::pair<std::string_view, double>, 8> levels{
        {{"ppp", -4}, {"pp", -3}, {"p", -2}, {"mp", -1}, {"mf", 0}, {"f", 1}, {"ff", 2}, {"fff", 3}}};
    auto const& text = yaml::scalar(node, worded("the dynamic"));
    for (auto const& [name, level] : levels)
        if (name == text) return level;
    throw yaml::error_at(node, worded("\"{0}\" is not a dynamic", text),
                         worded("write ppp, pp, p, mp, mf, f, ff or fff"));
}

TimeSignature time_of(yaml::Node const& node) {
    TimeSignature time;
    auto text = text::trim(yaml::scalar(node, worded("the time signature")));
    auto const beats = text::eat_number(text);
    bool const slash = text::eat(text, "/");
    auto const type = text::eat_number(text);
    bool const whole = beats && type && *beats == std::floor(*beats) && *type == std::floor(*type);
    if (!whole || !slash || !text.empty() || *beats < 1 || *beats > 64 || *type < 1 || *type > 16 ||
        (static_cast<int>(*type) & (static_cast<int>(*type) - 1)) != 0)
        throw yaml::error_at(node, worded("\"{0}\" is not a time signature", node.text),
                             worded("write it as 3/4 or 6/8 (lower number at most 16)"));
    time.beats = std::to_string(static_cast<int>(*beats));
    time.beat_type = static_cast<int>(*type);
    return time;
}

KeySignature key_of(yaml::Node const& node) {
    static constexpr std::string_view line_of_fifths = "FCGDAEB";
    auto const& whole = yaml::scalar(node, worded("the key"));
    auto text = text::trim(whole);
    auto const wrong = [&] {
        return yaml::error_at(node, worded("\"{0}\" is not a key", whole),
                              worded("write it as C major, F# minor or Eb major"));
    };
    if (text.empty()) throw wrong();
    auto const letter = line_of_fifths.find(static_cast<char>(text.front() & ~0x20));
    if (letter == std::string_view::npos) throw wrong();
    text.remove_prefix(1);
    int fifths = static_cast<int>(letter) - 1;
    if (text::eat(text, "#") || text::eat(text, "♯"))
        fifths += 7;
    else if (text::eat(text, "b") || text::eat(text, "♭"))
        fifths -= 7;
    text = text::trim(text);
    if (text == "minor")
        fifths -= 3;
    else if (text != "major" && !text.empty())
        throw wrong();
    if (std::abs(fifths) > 7) throw wrong();
    return {fifths};
}

std::string language_of(yaml::Node const& node) {
    auto const& text = yaml::scalar(node, worded("the language"));
    auto const tag = text.substr(0, text.find('-'));
    bool const letters = std::all_of(tag.begin(), tag.end(), [](char c) { return c >= 'a' && c <= 'z'; });
    if (!letters || tag.size() < 2 || tag.size() > 3)
        throw yaml::error_at(node, worded("\"{0}\" is not a language", text),
                             worded("write its code: it, la, de, fr, en, es"));
    return tag;
}

bool hummed_of(yaml::Node const& node) {
    auto const& text = yaml::scalar(node, "hummed");
    if (text != "true" && text != "false")
        throw yaml::error_at(node, worded("hummed is \"{0}\"", text), worded("write true or false"));
    return text == "true";
}

} // namespace vowelway::io
