// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/hearing.hpp"

#include "vowelway/acoustics/scales.hpp"
#include "vowelway/core/wording.hpp"

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
constexpr double foreign_penalty = 0.2, rounding_penalty = 0.4;
// How much nearer another vowel must be before a listener who expects this one gives it up, and before a name
// that was just given is changed. Choices: without them names flicker from note to note.
constexpr double expected = 0.5, continued = 0.3;
// From this distance on it is worth saying which way a vowel leans.
constexpr double leans = 0.5;

// The signs of lyric diction that every singer reads.
constexpr char32_t lyric_signs[] = {U'i', U'ɪ', U'e', U'ɛ', U'a', U'ɑ', U'ɔ', U'o',
                                    U'ʊ', U'u', U'y', U'ʏ', U'ø', U'œ', U'ə'};

// With the marks that the way of singing does not change.
Vowel marked_as(Vowel vowel, Vowel const& intended) {
    vowel.nasal = intended.nasal;
    vowel.rhotic = vowel.rhotic || intended.rhotic;
    vowel.length = intended.length;
    return vowel;
}

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
                       std::span<char32_t const> signs, std::size_t always)
    : quarter_(quarter) {
    if (vowels.empty()) throw std::invalid_argument("VowelSpace: no vowels");
    auto const middle = low_voice(quarter);
    for (double step = -5; step <= 5; step += 2)
        speech_.emplace_back(middle + semitones(step), quarter, Source{}, Decibels{}, Blur{});
    for (auto const& [vowel, shape] : vowels) entries_.push_back({vowel, shape, spoken_place(shape)});
    find_candidates(signs.empty() ? std::span<char32_t const>(lyric_signs) : signs, always);
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

void VowelSpace::find_candidates(std::span<char32_t const> signs, std::size_t always) {
    auto const slopes = slopes_of(entries_);
    for (std::size_t k = 0; k < entries_.size(); ++k) {
        auto const& entry = entries_[k];
        bool const plain = entry.vowel == Vowel{.base = entry.vowel.base};
        bool const sign = plain && std::find(signs.begin(), signs.end(), entry.vowel.base) != signs.end();
        if (k < always || sign) candidates_.push_back({entry.vowel, entry.spoken, 0});
    }
    for (char32_t symbol : signs) {
        Vowel const vowel{.base = symbol};
        if (std::none_of(entries_.begin(), entries_.end(),
                         [&](Entry const& e) { return e.vowel.base == symbol; }))
            candidates_.push_back({vowel, place_among(entries_, vowel, slopes), foreign_penalty});
    }
}

double VowelSpace::reluctance(Candidate const& candidate, Vowel const& intended) const {
    if (candidate.vowel.nasal && !intended.nasal) return std::numeric_limits<double>::infinity();
    return candidate.penalty +
           (has_round_lips(candidate.vowel) != has_round_lips(intended) ? rounding_penalty : 0);
}

VowelSpace::Candidate const* VowelSpace::leaning(HeardPlace const& place, HeardPlace const& from,
                                                 Vowel const& from_vowel, Vowel const& intended) const {
    Candidate const* found = nullptr;
    double least = std::numeric_limits<double>::infinity();
    for (auto const& candidate : candidates_) {
        if (marked_as(candidate.vowel, intended) == from_vowel) continue;
        double const off = distance(place, candidate.place).value;
        double const cost = off + reluctance(candidate, intended);
        if (off < distance(from, candidate.place).value - 0.1 && cost < least) {
            least = cost;
            found = &candidate;
        }
    }
    return found;
}

Vowel VowelSpace::shade_of(ResonanceSet const& target, std::size_t intended) const {
    auto const& own = entries_[intended];
    auto const place = spoken_place(target);
    if (distance(place, own.spoken).value < unnoticed) return own.vowel;
    auto const* found = leaning(place, own.spoken, own.vowel, own.vowel);
    return found ? marked_as(found->vowel, own.vowel) : own.vowel;
}

// The border between two letters is the hyperbola of places that the ear finds equally fit; here its tangent
// where it crosses the straight way from one to the other.
std::array<VowelSpace::Border, 4> VowelSpace::borders(std::size_t intended) const {
    auto const& own = entries_[intended];
    std::vector<std::pair<double, Border>> found;
    for (auto const& candidate : candidates_) {
        if (marked_as(candidate.vowel, own.vowel) == own.vowel) continue;
        double const apart = distance(own.spoken, candidate.place).value,
                     extra = reluctance(candidate, own.vowel) + expected;
        if (!(apart > 0.05) || !(extra < apart)) continue; // never taken for it on the straight way
        Border border{(candidate.place.openness - own.spoken.openness).value / apart,
                      front_weight * front_weight * (candidate.place.front - own.spoken.front).value / apart,
                      0};
        border.from = border.open * own.spoken.openness.value + border.front * own.spoken.front.value +
                      (apart + extra) / 2;
        found.emplace_back(apart + extra, border);
    }
    std::stable_sort(found.begin(), found.end(),
                     [](auto const& a, auto const& b) { return a.first < b.first; });
    std::array<Border, 4> out;
    for (std::size_t i = 0; i < std::min(out.size(), found.size()); ++i) out[i] = found[i].second;
    return out;
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

HeardVowel VowelSpace::hear(HeardPlace const& place, std::size_t intended, Vowel const* before) const {
    auto const& own = entries_[intended];
    HeardVowel out{own.vowel, distance_from(place, intended), recognised(place, intended)};
    auto from = own.spoken;
    double least = out.distance.value - expected - (before && *before == own.vowel ? continued : 0);
    for (auto const& candidate : candidates_) {
        auto const named = marked_as(candidate.vowel, own.vowel);
        if (named == own.vowel) continue;
        double const cost = distance(place, candidate.place).value + reluctance(candidate, own.vowel) -
                            (before && *before == named ? continued : 0);
        if (cost >= least) continue;
        least = cost;
        out.vowel = named;
        from = candidate.place;
    }
    if (distance(place, from).value > leans)
        if (auto const* way = leaning(place, from, out.vowel, own.vowel))
            out.toward = marked_as(way->vowel, own.vowel);
    return out;
}

std::string HeardVowel::words() const {
    return toward ? worded("{0}, a little toward {1}", vowel.ipa(), toward->ipa()) : vowel.ipa();
}

} // namespace vowelway::acoustics
