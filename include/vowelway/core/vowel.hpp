// SPDX-License-Identifier: MIT
// Vowels: the IPA vowel chart with the diacritics for shades, nasality, rhoticity and length.
// Source: International Phonetic Association, chart of 2020; X-SAMPA after J. C. Wells (1995).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway {

enum class VowelLength { normal, extra_short, half_long, long_ };

/// One vowel: a symbol of the IPA chart and its diacritics.
struct Vowel {
    char32_t base = U'ə';
    int raised = 0;      ///< +1 raised ◌̝, -1 lowered ◌̞
    int advanced = 0;    ///< +1 advanced ◌̟, -1 retracted ◌̠
    int rounding = 0;    ///< +1 more rounded ◌̹, -1 less rounded ◌̜
    int centralised = 0; ///< 1 centralised ◌̈, 2 mid-centralised ◌̽
    int tongue_root = 0; ///< +1 advanced ◌̘, -1 retracted ◌̙
    bool nasal = false;  ///< ◌̃
    bool rhotic = false; ///< ◌˞
    bool glide = false;  ///< non-syllabic ◌̯: the passing part of a diphthong
    VowelLength length = VowelLength::normal;

    std::string ipa() const;     ///< UTF-8
    std::string x_sampa() const; ///< ASCII

    /// The same vowel without length: what a profile lists and a plan compares.
    Vowel quality() const;
    /// The chart symbol alone, without any diacritic.
    Vowel plain() const { return Vowel{.base = base}; }

    friend bool operator==(Vowel const&, Vowel const&) = default;
};

/// Place on the IPA chart. Height: 0 close .. 6 open (3 mid); backness: 0 front, 1 central, 2 back;
/// rounding: 0 spread .. 1 rounded. Diacritics move it by half a step. A description for naming and
/// comparing vowels, not a measurement.
struct ChartPlace {
    double height = 3;
    double backness = 1;
    double rounding = 0;
};
ChartPlace chart_place(Vowel const& vowel);

/// Whether the lips are round by the chart: rounding over 0.5.
bool has_round_lips(Vowel const& vowel);

/// Distance on the chart, one height step or half the width of the chart being 1.
double chart_distance(Vowel const& a, Vowel const& b);

/// Every base symbol of the chart, close to open and front to back.
std::span<char32_t const> vowel_symbols();

/// One vowel in IPA or X-SAMPA (IPA is tried first; slashes or brackets around it are allowed).
/// Throws InputError that names the unknown character and, for look-alikes, the symbol meant.
Vowel parse_vowel(std::string_view text);
Vowel parse_ipa(std::string_view text);
Vowel parse_x_sampa(std::string_view text);

/// Vowels separated by spaces or commas: "i e a o u".
std::vector<Vowel> parse_vowels(std::string_view text);

/// Reads a vowel at the start of an IPA text and says how many bytes it took; nothing if the text does
/// not begin with a vowel. For walking through transcriptions.
struct VowelPrefix {
    Vowel vowel;
    std::size_t bytes;
};
std::optional<VowelPrefix> vowel_prefix(std::string_view ipa);

/// Front to back along the rim of the chart, close front first and close back last: the order of
/// strips and tables. Equal only for vowels at the same place.
bool before_on_the_rim(Vowel const& a, Vowel const& b);

} // namespace vowelway
