// SPDX-License-Identifier: MIT
#include "acoustics/published_tracts.hpp"

namespace vowelway::acoustics::tube {

namespace {

struct PublishedTract {
    char32_t vowel;
    Series series;
};

// Story, Titze & Hoffman 1996, Table III (tests/data/acoustics): terms 1..8 of the cosine series of ln A over
// the length of the tract. Term 0, the mean area, is left out: tables differ in it more than vowels do.
constexpr PublishedTract published[] = {
    {U'i', {0.58, -0.66, -1.24, 0.37, -0.40, -0.11, 0.02, -0.01}},
    {U'ɪ', {-0.42, -0.84, -0.69, -0.08, -0.09, -0.19, 0.02, -0.15}},
    {U'ɛ', {-0.84, -0.72, -0.55, -0.06, -0.05, -0.19, -0.03, -0.07}},
    {U'æ', {-1.19, -0.65, -0.40, -0.12, -0.01, -0.10, 0.01, 0.08}},
    {U'ʌ', {-1.22, -0.28, 0.12, -0.46, 0.00, -0.17, 0.06, 0.03}},
    {U'ɑ', {-1.59, 0.05, 0.43, -0.20, -0.31, -0.24, -0.06, 0.21}},
    {U'ɔ', {-1.33, -0.17, 0.39, -0.65, -0.02, -0.15, 0.18, 0.12}},
    {U'o', {-0.43, -0.17, -0.36, -0.86, 0.46, -0.62, 0.12, -0.10}},
    {U'ʊ', {-0.49, -0.16, 0.40, -0.89, 0.16, -0.42, 0.07, -0.21}},
    {U'u', {0.22, -0.21, -1.05, -0.42, 0.38, -0.69, 0.18, 0.04}},
    {U'ɜ', {-0.57, -0.48, -0.23, 0.17, -0.41, -0.02, 0.03, -0.17}}, // the table's rhotic [ɝ]
};

} // namespace

Series mean_tract() {
    // Means over Story's table and Fant's (1960) five vowels, the two tables weighing the same.
    return {-0.40, -0.23, -0.10, -0.23, -0.05, -0.23, -0.02, -0.01};
}

Series tract_like(Vowel const& vowel) {
    bool const rounded = has_round_lips(vowel);
    PublishedTract const* nearest = nullptr;
    double apart = 2; // a vowel two steps of the chart away tells nothing
    for (auto const& tract : published) {
        Vowel const known{.base = tract.vowel};
        if (has_round_lips(known) != rounded) continue;
        if (double const d = chart_distance(known, vowel); d < apart) {
            apart = d;
            nearest = &tract;
        }
    }
    Series out = mean_tract();
    if (!nearest) return out;
    // Close back vowels have two constrictions, at the lips and at 0.61 of the length, which a start near the
    // mean never finds.
    bool const two = rounded && chart_place(Vowel{.base = nearest->vowel}).height <= 2;
    double const share = (two ? 0.9 : 0.25) * (1 - apart / 2);
    for (std::size_t m = 0; m < out.size(); ++m) out[m] += share * (nearest->series[m] - out[m]);
    return out;
}

} // namespace vowelway::acoustics::tube
