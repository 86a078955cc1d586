// SPDX-License-Identifier: MIT
#include "io/profile/values.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/default_deviation.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>

namespace vowelway::io::profile {

namespace {

struct Bounds {
    double low, high;
};
// What a vocal tract can do, with room to spare: children's open vowels and close vowels of the longest
// tracts lie well inside (Peterson & Barney 1952, Hillenbrand et al. 1995).
constexpr std::array<Bounds, 4> bounds{{{150, 1400}, {400, 4000}, {1000, 6000}, {1500, 8000}}};

std::string hz(double value) { return fmt::format("{:g} Hz", std::round(value * 10) / 10); }

/// Splits "value ± deviation"; the second part is nothing where there is none.
std::pair<std::string_view, std::optional<std::string_view>> split_deviation(std::string_view s) {
    for (std::string_view sign : {"±", "+/-", "+-"})
        if (auto const at = s.find(sign); at != std::string_view::npos)
            return {text::trim(s.substr(0, at)), text::trim(s.substr(at + sign.size()))};
    return {s, std::nullopt};
}

bool is_cents(std::string_view unit) {
    return unit == "c" || unit == "ct" || unit == "cent" || unit == "cents";
}
bool is_hertz(std::string_view unit) { return unit == "Hz" || unit == "hz"; }

Frequency deviation(yaml::Node const& node, std::string_view s, Frequency centre, bool centre_is_pitch) {
    auto const wrong = [&] {
        return yaml::error_at(node, worded("\"{0}\" is not a deviation", s),
                              worded("write ± 15 Hz or ± 30c after the value"));
    };
    auto rest = s;
    auto const number = text::eat_number(rest);
    if (!number) throw wrong();
    auto const unit = text::trim(rest);
    if (unit.empty() && centre_is_pitch)
        throw yaml::error_at(node, worded("the deviation of a pitch needs a unit"),
                             worded("write ± {0} Hz or ± {0}c", fmt::format("{:g}", *number)));
    if (!unit.empty() && !is_hertz(unit) && !is_cents(unit)) throw wrong();
    auto const sd = is_cents(unit) ? centre * (std::exp2(*number / 1200) - 1) : hertz(*number);
    if (!(sd > hertz(0)))
        throw yaml::error_at(node, worded("a deviation must be above 0"),
                             worded("leave it out to use the default, or write how sure you are"));
    if (sd > centre * 0.5)
        throw yaml::error_at(node,
                             worded("a deviation of {0} is more than half the value ({1})", hz(in_hertz(sd)),
                                    hz(in_hertz(centre))),
                             worded("write one standard deviation, in Hz or with c for cents"));
    return sd;
}

} // namespace

Frequency plain_frequency(yaml::Node const& node, std::string const& what, double low, double high,
                          Tuning const& tuning) {
    auto const f = yaml::placed(node, [&] { return parse_frequency(yaml::scalar(node, what), tuning); });
    if (in_hertz(f) < low || in_hertz(f) > high)
        throw yaml::error_at(node,
                             worded("{0} is {1}, outside {2}..{3} Hz", what, hz(in_hertz(f)),
                                    fmt::format("{:g}", low), fmt::format("{:g}", high)),
                             worded("check the digits, and the octave if it is a pitch"));
    return f;
}

Resonance resonance(yaml::Node const& node, int k, Tuning const& tuning, Method method) {
    auto const name = "fR" + std::to_string(k);
    auto const [value, spread] = split_deviation(yaml::scalar(node, name));
    yaml::Node centre_node = node;
    centre_node.text = std::string(value);
    auto const [low, high] = bounds[static_cast<std::size_t>(k - 1)];
    Resonance out;
    out.centre = plain_frequency(centre_node, name, low, high, tuning);
    auto digits = text::trim(value);
    bool const pitch = !text::eat_number(digits);
    if (spread) {
        out.sd = deviation(node, *spread, out.centre, pitch);
    } else {
        out.sd = default_deviation(method, {k}, out.centre);
        out.sd_assumed = true;
    }
    return out;
}

Resonances resonances(yaml::Node const& map, std::string const& vowel, Tuning const& tuning, Method method) {
    std::array<std::optional<Resonance>, 4> found;
    std::array<yaml::Node const*, 4> nodes{};
    for (int k = 1; k <= 4; ++k) {
        auto const i = static_cast<std::size_t>(k - 1);
        auto const* node = nodes[i] = map.find("fR" + std::to_string(k));
        auto const* width = map.find("BR" + std::to_string(k));
        if (node) found[i] = resonance(*node, k, tuning, method);
        if (width && !node)
            throw yaml::error_at(*width, worded("BR{0} of /{1}/ has no fR{0}", k, vowel),
                                 worded("give the resonance too"));
        if (width) found[i]->bandwidth = plain_frequency(*width, "BR" + std::to_string(k), 10, 1000, tuning);
    }
    if (!found[0] || !found[1])
        throw yaml::error_at(map, worded("/{0}/ has no {1}", vowel, found[0] ? "fR2" : "fR1"),
                             worded("give both: {fR1: 540 Hz ± 25, fR2: 1780 Hz ± 60}"));
    if (found[3] && !found[2])
        throw yaml::error_at(*nodes[3], worded("/{0}/ has fR4 but no fR3", vowel),
                             worded("give fR3, or leave fR4 out"));
    for (std::size_t i = 1; i < 4 && found[i]; ++i) {
        if (found[i - 1]->centre < found[i]->centre) continue;
        throw yaml::error_at(*nodes[i - 1],
                             worded("fR{0} of /{1}/ is {2}, not below its fR{3} ({4})", i, vowel,
                                    hz(in_hertz(found[i - 1]->centre)), i + 1,
                                    hz(in_hertz(found[i]->centre))),
                             worded("are they swapped, or is there a digit too many?"));
    }
    return {*found[0], *found[1], found[2], found[3]};
}

ShiftOfResonance shift(yaml::Node const& node) {
    auto const wrong = [&] {
        return yaml::error_at(node, worded("\"{0}\" is not a shift", node.text), worded("write 210 Hz ± 60"));
    };
    auto const [value, spread] = split_deviation(yaml::scalar(node, worded("a shift")));
    auto const number_of = [&](std::string_view s) {
        auto const number = text::eat_number(s);
        s = text::trim(s);
        if (!number || !(s.empty() || is_hertz(s)) || std::abs(*number) > 1000) throw wrong();
        return hertz(*number);
    };
    if (!spread) throw wrong();
    ShiftOfResonance const out{number_of(value), number_of(*spread)};
    if (!(out.sd > hertz(0)))
        throw yaml::error_at(node, worded("the deviation of a shift must be above 0"),
                             worded("write 210 Hz ± 60"));
    return out;
}

Length tract_length(yaml::Node const& node) {
    std::string_view s = yaml::scalar(node, worded("the tract length"));
    auto const number = text::eat_number(s);
    auto const unit = text::trim(s);
    if (!number || (unit != "cm" && unit != "mm"))
        throw yaml::error_at(node, worded("\"{0}\" is not a length", node.text),
                             worded("write the unit: 17.0 cm"));
    auto const length = centimetres(unit == "cm" ? *number : *number / 10);
    if (length < centimetres(8) || length > centimetres(25))
        throw yaml::error_at(node, worded("a vocal tract of {0} is outside 8..25 cm", node.text),
                             worded("from glottis to lips an adult singer has 13 to 19 cm"));
    return length;
}

std::string day(yaml::Node const& node) {
    auto const& s = yaml::scalar(node, worded("the date"));
    auto const wrong = [&] {
        return yaml::error_at(node, worded("\"{0}\" is not a date", s),
                              worded("write year, month and day: 2026-10-03"));
    };
    if (s.size() != 10 || s[4] != '-' || s[7] != '-') throw wrong();
    auto const number = [&](std::size_t from, std::size_t length) {
        int value = 0;
        auto const* end = s.data() + from + length;
        if (std::from_chars(s.data() + from, end, value).ptr != end) throw wrong();
        return value;
    };
    int const year = number(0, 4), month = number(5, 2), date = number(8, 2);
    constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    if (month < 1 || month > 12) throw wrong();
    bool const leap = month == 2 && year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    if (date < 1 || date > days[static_cast<std::size_t>(month - 1)] + leap) throw wrong();
    return s;
}

Method method(yaml::Node const& node) {
    auto const& s = yaml::scalar(node, worded("the method"));
    for (auto const candidate :
         {Method::typed, Method::whisper, Method::creak, Method::sung, Method::published})
        if (s == to_string(candidate)) return candidate;
    throw yaml::error_at(node, worded("\"{0}\" is not a method", s),
                         worded("write whisper, creak, sung, typed or published"));
}

bool truth(yaml::Node const& node, std::string_view what) {
    auto const& s = yaml::scalar(node, what);
    if (s == "true") return true;
    if (s == "false") return false;
    throw yaml::error_at(node, worded("{0} is \"{1}\"", what, s), worded("write true or false"));
}

int count(yaml::Node const& node, std::string_view what, int most) {
    auto const& s = yaml::scalar(node, what);
    int value = 0;
    auto const* end = s.data() + s.size();
    if (std::from_chars(s.data(), end, value).ptr != end || value < 1 || value > most)
        throw yaml::error_at(node, worded("{0} is \"{1}\"", what, s),
                             worded("write a whole number from 1 to {0}", most));
    return value;
}

Vowel vowel(yaml::Node const& key) {
    return yaml::placed(key, [&] { return parse_vowel(key.text); }).quality();
}

std::string written(Frequency f) { return hz(in_hertz(f)); }

std::string written(Resonance const& r) {
    auto out = written(r.centre);
    if (!r.sd_assumed) out += fmt::format(" ± {:g}", std::max(0.1, std::round(in_hertz(r.sd) * 10) / 10));
    return out;
}

} // namespace vowelway::io::profile
