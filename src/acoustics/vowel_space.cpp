// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/hearing.hpp"

#include "vowelway/acoustics/scales.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace vowelway::acoustics {

namespace {

// How far apart listeners tell vowels on this map: the standard deviation of one judgement, in Bark.
constexpr double judgement_sd = 0.45;
// Within this the vowel still is the vowel: 1.5 % of fR1 or fR2 (Kewley-Port & Watson 1994) is about 0.1
// Bark, and listeners to song are not in a laboratory.
constexpr double unnoticed = 0.25;
constexpr double foreign_penalty = 0.2, mark_penalty = 0.12, rounding_penalty = 0.4;

// Symbols that singers' transcriptions use; the rest of the chart is only named when the singer has the
// vowel.
constexpr char32_t common_symbols[] = {U'i', U'ɪ', U'e', U'ɛ', U'æ', U'a', U'ɑ', U'ʌ', U'ə',
                                       U'ɔ', U'o', U'ʊ', U'u', U'y', U'ʏ', U'ø', U'œ', U'ɒ'};

bool is_rounded(Vowel const& v) { return chart_place(v).rounding > 0.5; }

// Slope of y over x by least squares, held between two limits.
template <class Points> double slope(Points const& points, double fallback, double low, double high) {
    double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (auto [x, y] : points) {
        ++n;
        sx += x;
        sy += y;
        sxx += x * x;
        sxy += x * y;
    }
    double const spread = sxx - sx * sx / n;
    if (!(spread > 0.5)) return fallback;
    return std::clamp((sxy - sx * sy / n) / spread, low, high);
}

} // namespace

VowelSpace::VowelSpace(std::vector<std::pair<Vowel, ResonanceSet>> const& vowels, Frequency quarter,
                       Pitch speaking)
    : quarter_(quarter) {
    if (vowels.empty()) throw std::invalid_argument("VowelSpace: no vowels");
    for (double step = -5; step <= 5; step += 2)
        speech_.emplace_back(speaking + semitones(step), quarter, Source{}, Decibels{}, Blur{});
    for (auto const& [vowel, shape] : vowels) entries_.push_back({vowel, shape, spoken_place(shape)});
    find_candidates();
}

HeardPlace VowelSpace::spoken_place(ResonanceSet const& shape) const {
    HeardPlace sum;
    for (auto const& note : speech_) {
        auto const place = heard_place(note, shape);
        sum.openness = sum.openness + place.openness;
        sum.front = sum.front + place.front;
    }
    auto const count = static_cast<double>(speech_.size());
    return {sum.openness / count, sum.front / count};
}

namespace {

/// How much a step of the chart moves the heard place, for one singer.
struct ChartSlopes {
    double height = 0, backness = 0;
};

template <class Entries> ChartSlopes slopes_of(Entries const& entries) {
    std::vector<std::pair<double, double>> height, backness;
    for (auto const& entry : entries) {
        auto const place = chart_place(entry.vowel);
        height.emplace_back(place.height, entry.spoken.openness.value);
        backness.emplace_back(place.backness, entry.spoken.front.value);
    }
    return {slope(height, 0.7, 0.4, 1.0), slope(backness, -2.5, -4.0, -1.5)};
}

/// The four shades of a vowel; not those that lead out of the chart, such as a raised /i/ or a retracted /u/.
std::vector<std::pair<Vowel, HeardPlace>> shades_of(Vowel const& vowel, HeardPlace const& place,
                                                    ChartSlopes const& slopes) {
    std::vector<std::pair<Vowel, HeardPlace>> out;
    auto const home = chart_place(vowel);
    for (int way : {1, -1}) {
        auto shade = vowel;
        if (way > 0 ? home.height > 0.5 : home.height < 5.5) {
            shade.raised = way;
            out.emplace_back(shade,
                             HeardPlace{place.openness - Bark{slopes.height * 0.75 * way}, place.front});
        }
        shade.raised = 0;
        if (way > 0 ? home.backness > 0.5 : home.backness < 1.5) {
            shade.advanced = way;
            out.emplace_back(shade,
                             HeardPlace{place.openness, place.front - Bark{slopes.backness * 0.3 * way}});
        }
    }
    return out;
}

/// A vowel that the singer lacks, placed from the vowels around it, near ones counting most.
template <class Entries>
HeardPlace place_among(Entries const& entries, Vowel const& vowel, ChartSlopes const& slopes) {
    auto const place = chart_place(vowel);
    HeardPlace sum;
    double total = 0;
    for (auto const& entry : entries) {
        auto const own = chart_place(entry.vowel);
        double const apart = chart_distance(vowel, entry.vowel);
        double const w = 1 / (0.01 + apart * apart * apart * apart);
        sum.openness =
            sum.openness + w * (entry.spoken.openness + Bark{slopes.height * (place.height - own.height)});
        sum.front =
            sum.front + w * (entry.spoken.front + Bark{slopes.backness * (place.backness - own.backness)});
        total += w;
    }
    return {sum.openness / total, sum.front / total};
}

} // namespace

void VowelSpace::find_candidates() {
    auto const slopes = slopes_of(entries_);
    for (auto const& entry : entries_) {
        bool const rounded = is_rounded(entry.vowel),
                   plain = entry.vowel.raised == 0 && entry.vowel.advanced == 0;
        candidates_.push_back({entry.vowel, entry.spoken, 0, rounded});
        if (!plain) continue;
        for (auto const& [shade, place] : shades_of(entry.vowel, entry.spoken, slopes))
            candidates_.push_back({shade, place, mark_penalty, rounded});
    }
    for (char32_t symbol : common_symbols) {
        Vowel const vowel{.base = symbol};
        bool const own = std::any_of(entries_.begin(), entries_.end(),
                                     [&](Entry const& e) { return e.vowel.base == symbol; });
        if (!own)
            candidates_.push_back(
                {vowel, place_among(entries_, vowel, slopes), foreign_penalty, is_rounded(vowel)});
    }
}

Vowel VowelSpace::name(HeardPlace const& place, std::size_t intended) const {
    auto const& own = entries_[intended];
    if (distance(place, own.spoken).value < unnoticed) return own.vowel;
    bool const rounded = is_rounded(own.vowel);
    auto named = own.vowel;
    double least = std::numeric_limits<double>::infinity();
    for (auto const& candidate : candidates_) {
        double const cost = distance(place, candidate.place).value + candidate.penalty +
                            (candidate.rounded != rounded ? rounding_penalty : 0);
        if (cost < least) {
            least = cost;
            named = candidate.vowel;
        }
    }
    named.nasal = own.vowel.nasal;
    named.rhotic = named.rhotic || own.vowel.rhotic;
    named.length = own.vowel.length;
    return named;
}

double VowelSpace::recognised(HeardPlace const& place, std::size_t intended) const {
    double const own = distance_from(place, intended).value;
    double sum = 0;
    for (auto const& entry : entries_) {
        double const d = distance(place, entry.spoken).value;
        sum += std::exp((own * own - d * d) / (2 * judgement_sd * judgement_sd));
    }
    return 1 / sum;
}

HeardVowel VowelSpace::hear(HeardPlace const& place, std::size_t intended) const {
    return {name(place, intended), distance_from(place, intended), recognised(place, intended)};
}

} // namespace vowelway::acoustics
