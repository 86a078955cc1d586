// SPDX-License-Identifier: MIT
// One vowel for all sections of a word, at the least cost.
#include "plan/shared_words.hpp"

#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace vowelway::plan {

namespace {

/// Places where a common vowel is looked for, in Bark from the spoken one.
constexpr double lowest_openness = -1.5, lowest_front = -3, place_step = 0.25;
constexpr int openness_places = 25, front_places = 25; // to +4.5 and +3 Bark

/// A section's cheapest way to each place.
struct Ways {
    std::vector<double> extra;
    std::vector<std::size_t> option;
};

HeardOffset place_at(int open, int front) {
    return {Bark{lowest_openness + place_step * open}, Bark{lowest_front + place_step * front}};
}

constexpr double nowhere = 1e9;

/// What one section is asked for at most beyond its own plan, in the planner's cost: twice a clear loss of
/// its vowel (our choice). Beyond it the low voices would leave their words for the sake of the high ones.
constexpr double most_asked = 2;

/// Two who are both this near to a place are heard as one.
Ways ways_of(std::vector<Option> const& options) {
    double const near = heard_as_one.value / 2;
    Ways out{std::vector<double>(openness_places * front_places, nowhere),
             std::vector<std::size_t>(openness_places * front_places, 0)};
    auto const around = [](double value, double lowest, double reach, int places) {
        int const from = static_cast<int>(std::ceil((value - reach - lowest) / place_step)),
                  to = static_cast<int>(std::floor((value + reach - lowest) / place_step));
        return std::array{std::max(from, 0), std::min(to, places - 1)};
    };
    for (std::size_t o = 0; o < options.size(); ++o) {
        if (options[o].extra > most_asked) continue;
        auto const& heard = options[o].heard;
        auto const open = around(heard.openness.value, lowest_openness, near, openness_places);
        auto const front =
            around(heard.front.value, lowest_front, near / acoustics::front_weight, front_places);
        for (int i = open[0]; i <= open[1]; ++i)
            for (int j = front[0]; j <= front[1]; ++j) {
                auto const at = static_cast<std::size_t>(i * front_places + j);
                if (options[o].extra >= out.extra[at] || apart(heard, place_at(i, j)).value > near) continue;
                out.extra[at] = options[o].extra;
                out.option[at] = o;
            }
    }
    return out;
}

Bark widest(SharedWord const& word, HeardOffset SungTogether::*which) {
    Bark out{0};
    for (auto const& a : word.sections)
        for (auto const& b : word.sections) out = std::max(out, apart(a.*which, b.*which));
    return out;
}

/// Those that lie beyond hearing from most of the others; of two the one that is farther from its own vowel.
void find_who_leaves(SharedWord& word) {
    auto& all = word.sections;
    if (all.size() == 2) {
        auto const far = [](SungTogether const& s) { return apart(s.heard, {}); };
        all[far(all[0]) > far(all[1]) ? 0 : 1].leaves = true;
        return;
    }
    for (auto& section : all) {
        std::size_t beyond = 0;
        for (auto const& other : all) beyond += apart(section.heard, other.heard) > heard_as_one ? 1 : 0;
        section.leaves = 2 * beyond >= all.size();
    }
}

void find_common_vowel(SharedWord& word, std::vector<SectionVoice> const& voices) {
    std::vector<std::vector<Option>> options;
    std::vector<Ways> ways;
    for (auto const& s : word.sections) {
        options.push_back(voices[s.part].options(s.note));
        ways.push_back(ways_of(options.back()));
    }
    std::size_t best = 0;
    double least = nowhere;
    for (std::size_t at = 0; at < ways.front().extra.size(); ++at) {
        double cost = 0;
        for (auto const& way : ways) cost += way.extra[at];
        if (cost >= least) continue;
        least = cost;
        best = at;
    }
    word.has_common = least < nowhere;
    for (std::size_t i = 0; i < word.sections.size(); ++i) {
        auto& section = word.sections[i];
        auto const& voice = voices[section.part];
        section.common = section.heard;
        section.shade = voice.shade_of(section.note, voice.planned(section.note));
        if (!word.has_common) continue;
        auto const& option = options[i][ways[i].option[best]];
        section.common = option.heard;
        section.extra = option.extra;
        if (option.shape == voice.planned(section.note)) continue;
        section.shade = voice.shade_of(section.note, option.shape);
        section.ask = voice.way_to(section.note, option.shape);
        if (section.ask.empty()) // too small for a gesture to be felt
            section.ask = voice.is_own(option.shape) ? worded("keep the plain vowel") : worded("lean to");
    }
}

} // namespace

void listen(SharedWord& word, std::vector<SectionVoice> const& voices) {
    for (auto& section : word.sections) {
        section.heard = voices[section.part].heard(section.note);
        section.common = section.heard;
        section.shade =
            voices[section.part].shade_of(section.note, voices[section.part].planned(section.note));
    }
    word.apart = widest(word, &SungTogether::heard);
    word.common_apart = word.apart;
    word.weight = word.apart.value * std::sqrt(in_seconds(word.length)) * (word.homophonic ? 2 : 1);
    if (!word.parts_company()) return;
    find_who_leaves(word);
    find_common_vowel(word, voices);
    word.common_apart = widest(word, &SungTogether::common);
}

} // namespace vowelway::plan
