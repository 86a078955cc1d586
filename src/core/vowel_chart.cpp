// SPDX-License-Identifier: MIT
// Vowels as places in the chart.
#include "core/utf8.hpp"
#include "core/vowel_symbols.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <iterator>
#include <tuple>

namespace vowelway {

VowelSymbol const* vowel_symbol(char32_t ipa) {
    auto const found = std::find_if(std::begin(vowel_table), std::end(vowel_table),
                                    [&](VowelSymbol const& s) { return s.ipa == ipa; });
    return found == std::end(vowel_table) ? nullptr : found;
}

VowelSymbol const& symbol_of(Vowel const& vowel) {
    if (auto const* found = vowel_symbol(vowel.base)) return *found;
    throw InputError(worded("\"{0}\" is not a symbol of the vowel chart", utf8::encode(vowel.base)),
                     worded("use one from the IPA vowel chart"));
}

ChartPlace chart_place(Vowel const& vowel) {
    auto const& s = symbol_of(vowel);
    ChartPlace place{s.height, s.backness, s.rounded ? 1.0 : 0.0};
    place.height -= 0.5 * vowel.raised + 0.25 * vowel.tongue_root;
    place.backness -= 0.25 * vowel.advanced + 0.15 * vowel.tongue_root;
    place.rounding += 0.25 * vowel.rounding;
    if (vowel.centralised) place.backness += 0.5 * (1 - place.backness);
    if (vowel.centralised == 2) place.height += 0.5 * (3 - place.height);
    return place;
}

bool has_round_lips(Vowel const& vowel) { return chart_place(vowel).rounding > 0.5; }

double chart_distance(Vowel const& a, Vowel const& b) {
    auto const p = chart_place(a), q = chart_place(b);
    double const nasal = a.nasal == b.nasal ? 0 : 0.5, rhotic = a.rhotic == b.rhotic ? 0 : 0.5;
    return std::hypot(p.height - q.height, p.backness - q.backness, p.rounding - q.rounding) + nasal + rhotic;
}

std::span<char32_t const> vowel_symbols() {
    static auto const symbols = [] {
        std::array<char32_t, std::size(vowel_table)> out{};
        std::transform(std::begin(vowel_table), std::end(vowel_table), out.begin(),
                       [](VowelSymbol const& s) { return s.ipa; });
        return out;
    }();
    return symbols;
}

bool before_on_the_rim(Vowel const& a, Vowel const& b) {
    // Down the front, across the bottom, up the back: an angle around the middle of the chart.
    auto const key = [](Vowel const& v) {
        auto const p = chart_place(v);
        double const side = p.backness < 0.95 ? 0 : p.backness <= 1.2 ? 1 : 2;
        double const along = side == 2 ? 6 - p.height : p.height;
        return std::tuple(side, along, p.rounding, p.backness, v.nasal, v.rhotic,
                          static_cast<std::uint32_t>(v.base));
    };
    return key(a) < key(b);
}

} // namespace vowelway
