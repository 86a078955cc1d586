// SPDX-License-Identifier: MIT
#include "vowelway/core/pitch.hpp"

#include "core/text.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <array>
#include <cmath>
#include <cstdlib>

namespace vowelway {

namespace {

constexpr int semitone_of(char step) {
    switch (step) {
    case 'C':
        return 0;
    case 'D':
        return 2;
    case 'E':
        return 4;
    case 'F':
        return 5;
    case 'G':
        return 7;
    case 'A':
        return 9;
    default:
        return 11; // B
    }
}

InputError not_a_pitch(std::string_view text) {
    return InputError(worded("\"{0}\" is not a pitch", text),
                      worded("write a letter, an accidental if any (# b ♯ ♭) and an octave: F#4, B♭3, C5"));
}

std::string signed_cents(Cents c) {
    long const rounded = std::lround(c.value);
    return (rounded < 0 ? "-" : "+") + std::to_string(std::labs(rounded)) + " c";
}

} // namespace

Pitch::Pitch(Frequency fo) : fo_(fo) {
    if (!(fo.value() > 0) || !std::isfinite(fo.value()))
        throw InputError(worded("a pitch must be above 0 Hz"), worded("check the number before the Hz"));
}

Pitch operator+(Pitch p, Cents c) { return Pitch(p.fo_ * std::exp2(c.value / 1200)); }
Cents operator-(Pitch a, Pitch b) { return interval(b.fo_, a.fo_); }

Cents interval(Frequency from, Frequency to) { return {1200 * std::log2(to.value() / from.value())}; }

double SpelledPitch::key_number() const { return 12 * (octave + 1) + semitone_of(step) + alter; }

std::string SpelledPitch::str() const {
    std::string out(1, step);
    double const whole = std::round(alter);
    for (int i = 0; i < std::abs(static_cast<int>(whole)); ++i) out += whole > 0 ? "♯" : "♭";
    out += std::to_string(octave);
    if (alter != whole) out += " " + signed_cents(semitones(alter - whole));
    return out;
}

SpelledPitch parse_spelled_pitch(std::string_view text) {
    auto s = text::trim(text);
    SpelledPitch out;
    if (s.empty()) throw not_a_pitch(text);
    char const letter = static_cast<char>(s.front() & ~0x20);
    if (letter < 'A' || letter > 'G') throw not_a_pitch(text);
    out.step = letter;
    s.remove_prefix(1);
    for (;;) {
        if (text::eat(s, "#") || text::eat(s, "♯"))
            out.alter += 1;
        else if (text::eat(s, "b") || text::eat(s, "♭"))
            out.alter -= 1;
        else if (text::eat(s, "x") || text::eat(s, "𝄪"))
            out.alter += 2;
        else if (text::eat(s, "𝄫"))
            out.alter -= 2;
        else
            break;
    }
    bool const negative = text::eat(s, "-");
    if (s.size() != 1 || s.front() < '0' || s.front() > '9' || std::abs(out.alter) > 3)
        throw not_a_pitch(text);
    out.octave = (negative ? -1 : 1) * (s.front() - '0');
    return out;
}

SpelledPitch transposed(SpelledPitch const& pitch, double by_semitones) {
    if (by_semitones == 0) return pitch;
    if (std::fmod(by_semitones, 12) == 0) {
        auto out = pitch;
        out.octave += static_cast<int>(by_semitones / 12);
        return out;
    }
    // Move by the interval's usual number of steps so that the spelling stays in its own key's neighbourhood.
    static constexpr std::array<int, 12> steps_of{0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6};
    static constexpr std::string_view letters = "CDEFGAB";
    int const whole = static_cast<int>(std::floor(by_semitones));
    int const octaves = static_cast<int>(std::floor(whole / 12.0));
    int const steps = steps_of[static_cast<std::size_t>(whole - 12 * octaves)] + 7 * octaves;
    int const from = static_cast<int>(letters.find(pitch.step)) + 7 * pitch.octave;
    double const target = pitch.key_number() + by_semitones;
    SpelledPitch best;
    double best_alter = 99;
    for (int shift : {0, 1, -1}) {
        int const place = from + steps + shift;
        int const octave = static_cast<int>(std::floor(place / 7.0));
        SpelledPitch candidate{letters[static_cast<std::size_t>(place - 7 * octave)], 0, octave};
        candidate.alter = target - candidate.key_number();
        if (std::abs(candidate.alter) < std::abs(best_alter)) {
            best = candidate;
            best_alter = candidate.alter;
        }
    }
    return best;
}

std::string NamedPitch::str() const {
    return std::lround(deviation.value) == 0 ? pitch.str() : pitch.str() + " " + signed_cents(deviation);
}

Pitch Tuning::pitch(double key_number) const { return Pitch(a4 * std::exp2((key_number - 69) / 12)); }

double Tuning::key_number(Frequency f) const { return 69 + 12 * std::log2(f.value() / a4.value()); }

NamedPitch Tuning::name(Frequency f) const {
    static constexpr std::array<std::pair<char, int>, 12> names{{{'C', 0},
                                                                 {'C', 1},
                                                                 {'D', 0},
                                                                 {'E', -1},
                                                                 {'E', 0},
                                                                 {'F', 0},
                                                                 {'F', 1},
                                                                 {'G', 0},
                                                                 {'A', -1},
                                                                 {'A', 0},
                                                                 {'B', -1},
                                                                 {'B', 0}}};
    double const key = key_number(f);
    int const nearest = static_cast<int>(std::lround(key));
    int const octave = static_cast<int>(std::floor(nearest / 12.0));
    auto const [step, alter] = names[static_cast<std::size_t>(nearest - 12 * octave)];
    return {{step, static_cast<double>(alter), octave - 1}, semitones(key - nearest)};
}

Frequency parse_frequency(std::string_view text, Tuning const& tuning) {
    auto s = text::trim(text);
    auto const wrong = [&] {
        return InputError(worded("\"{0}\" is neither a frequency nor a pitch", text),
                          worded("write hertz (698 Hz) or a pitch with cents (F5 +20c)"));
    };
    if (auto const number = text::eat_number(s)) {
        s = text::trim(s);
        if (!s.empty() && s != "Hz" && s != "hz") throw wrong();
        if (!(*number > 0))
            throw InputError(worded("a frequency must be above 0 Hz"),
                             worded("check the sign and the digits of \"{0}\"", text));
        return hertz(*number);
    }
    auto const split = s.find_first_of(" +", 1);
    auto const name = s.substr(0, split);
    SpelledPitch pitch;
    try {
        pitch = parse_spelled_pitch(name);
    } catch (InputError const&) {
        throw wrong();
    }
    Cents deviation{0};
    auto rest = text::trim(split == std::string_view::npos ? std::string_view{} : s.substr(split));
    if (!rest.empty()) {
        bool const minus = text::eat(rest, "−"); // U+2212, as typeset
        auto const number = text::eat_number(rest);
        rest = text::trim(rest);
        if (!number || (rest != "c" && rest != "ct" && rest != "cent" && rest != "cents")) throw wrong();
        deviation = Cents{minus ? -*number : *number};
        if (std::abs(deviation.value) > 1200)
            throw InputError(worded("\"{0}\" is more than an octave away from its pitch", text),
                             worded("name the nearest pitch and its cents (-50 to +50)"));
    }
    return (tuning.pitch(pitch) + deviation).frequency();
}

std::string PitchRange::str() const { return low.str() + ".." + high.str(); }

PitchRange parse_pitch_range(std::string_view text) {
    auto const s = text::trim(text);
    for (std::string_view separator : {"..", "…", "–", " to ", "-"}) {
        auto const at = s.find(separator, 2);
        if (at == std::string_view::npos) continue;
        PitchRange range{parse_spelled_pitch(s.substr(0, at)),
                         parse_spelled_pitch(s.substr(at + separator.size()))};
        if (range.low.key_number() == range.high.key_number())
            throw InputError(worded("the range {0} is a single pitch", s),
                             worded("write two pitches: C3..A4"));
        if (range.low.key_number() > range.high.key_number())
            throw InputError(
                worded("the range {0} begins with the higher pitch", s),
                worded("write the lower pitch first: {0}..{1}", range.high.str(), range.low.str()));
        return range;
    }
    throw InputError(worded("\"{0}\" is not a range of pitches", text), worded("write two pitches: C3..A4"));
}

} // namespace vowelway
