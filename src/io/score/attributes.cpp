// SPDX-License-Identifier: MIT
#include "io/score/attributes.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::io {

namespace {

/// The sum of "3+2"; nothing if it is none.
std::optional<int> sum_of(std::string_view text) {
    int sum = 0;
    for (text = text::trim(text);;) {
        auto const value = text::eat_number(text);
        if (!value || *value < 1 || *value > 1000 || *value != std::floor(*value)) return std::nullopt;
        sum += static_cast<int>(*value);
        text = text::trim(text);
        if (text.empty()) return sum;
        if (!text::eat(text, "+")) return std::nullopt;
        text = text::trim(text);
    }
}

/// One of several fractions of a time signature.
struct Fraction {
    std::string beats; ///< may be a sum, "3+2"
    int sum = 0, type = 4;
};

std::vector<Fraction> fractions_of(XmlSource const& source, pugi::xml_node node, std::string const& where) {
    std::vector<Fraction> fractions;
    for (auto child = node.child("beats"); child; child = child.next_sibling("beats")) {
        auto const type_node = child.next_sibling("beat-type");
        auto const sum = sum_of(child.child_value());
        int const type = type_node ? type_node.text().as_int(0) : 0;
        if (!sum || type < 1 || type > 1024 || (type & (type - 1)) != 0)
            throw InputError(
                worded("the time signature {0}/{1} is not possible", trimmed(child), trimmed(type_node)),
                worded("write beats above 0 over a power of two"), source.place(child, where));
        fractions.push_back({std::string(trimmed(child)), *sum, type});
    }
    return fractions;
}

/// Several fractions ("3/8 + 2/4") are written over their finest denominator.
void write_over_finest(std::vector<Fraction> const& fractions, TimeRead& out) {
    int finest = 1;
    for (auto const& f : fractions) finest = std::max(finest, f.type);
    double quarters = 0;
    auto& time = out.time;
    time.beats.clear();
    for (auto const& [beats, sum, type] : fractions) {
        quarters += 4.0 * sum / type;
        if (!time.beats.empty()) time.beats += "+";
        time.beats += type == finest ? beats : std::to_string(sum * (finest / type));
    }
    std::erase(time.beats, ' ');
    time.beat_type = finest;
    out.quarters = quarters;
    out.beat_type = finest;
}

} // namespace

Clef read_clef(pugi::xml_node node) {
    Clef clef;
    auto const sign = trimmed(node.child("sign"));
    clef.sign = sign == "F"            ? 'F'
                : sign == "C"          ? 'C'
                : sign == "percussion" ? 'P'
                : sign == "TAB"        ? 'T'
                                       : 'G';
    int const usual = clef.sign == 'F' ? 4 : clef.sign == 'G' ? 2 : 3;
    clef.line = std::clamp(node.child("line").text().as_int(usual), 1, 5);
    clef.octave_change = std::clamp(node.child("clef-octave-change").text().as_int(0), -3, 3);
    return clef;
}

KeySignature read_key(XmlSource const& source, pugi::xml_node node, std::string const& where) {
    auto const f = node.child("fifths");
    if (!f) return {0};
    double const value = source.number(f, where);
    if (std::abs(value) > 21 || value != std::floor(value))
        throw InputError(worded("a key signature of {0} fifths is not possible", trimmed(f)),
                         worded("write -7 to 7"), source.place(f, where));
    return {static_cast<int>(value)};
}

TimeRead read_time(XmlSource const& source, pugi::xml_node node, std::string const& where) {
    TimeRead out;
    std::string_view const symbol = node.attribute("symbol").value();
    out.time.sign = symbol == "common" ? TimeSignature::Sign::common
                    : symbol == "cut"  ? TimeSignature::Sign::cut
                                       : TimeSignature::Sign::numbers;
    if (node.child("senza-misura")) {
        out.time.sign = TimeSignature::Sign::none;
        out.quarters = 0;
        return out;
    }
    auto const fractions = fractions_of(source, node, where);
    if (fractions.empty()) return out;
    write_over_finest(fractions, out);
    if (node.attribute("print-object").value() == std::string_view("no"))
        out.time.sign = TimeSignature::Sign::none;
    return out;
}

Interval read_transposition(XmlSource const& source, pugi::xml_node node, std::string const& where) {
    auto const value = [&](char const* name) {
        auto const child = node.child(name);
        double const v = child ? source.number(child, where) : 0.0;
        if (std::abs(v) > 100)
            throw InputError(worded("a transposition of {0} is not possible", trimmed(child)),
                             worded("export the score again"), source.place(child, where));
        return v;
    };
    double const chromatic = value("chromatic"), octaves = value("octave-change");
    Interval interval = interval_for_key(chromatic, 0);
    if (node.child("diatonic"))
        interval.fifths = static_cast<int>(std::lround(7 * chromatic - 12 * value("diatonic")));
    interval.semitones += 12 * octaves;
    return interval;
}

} // namespace vowelway::io
