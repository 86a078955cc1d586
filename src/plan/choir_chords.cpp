// SPDX-License-Identifier: MIT
#include "plan/shared_words.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

constexpr Decibels strong{10};              // below a section's strongest partial: our choice
constexpr Cents near_resonance{200};        // within two semitones: as near as a target is met
constexpr Cents farthest_rub{150};          // beyond, two partials are heard as an interval
constexpr Frequency too_high = hertz(3000); // there fo no longer decides which partial lies where

struct Partial {
    SharedPartial::Of of;
    Frequency frequency;
    double cents = 0; ///< above 1 Hz
};

double cents_of(Frequency f) { return 1200 * std::log2(in_hertz(f)); }

std::vector<Partial> strong_partials(SharedWord const& word, std::vector<ChoirPart> const& parts) {
    std::vector<Partial> out;
    for (std::size_t s = 0; s < word.sections.size(); ++s) {
        auto const& section = word.sections[s];
        auto const& plan = parts[section.part].plan;
        auto const& d = *plan.notes[section.note].decision;
        auto const fo = plan.passage.notes[plan.notes[section.note].note].pitch.frequency();
        auto const& levels = d.levels_planned;
        if (levels.empty()) continue;
        auto const top = *std::max_element(levels.begin(), levels.end());
        for (std::size_t n = 1; n <= levels.size(); ++n) {
            auto const f = fo * static_cast<double>(n);
            if (f > too_high || levels[n - 1] < top - strong) continue;
            auto const beside = [&](Resonance const& r) {
                return std::abs(cents_of(f) - cents_of(r.centre)) <= near_resonance.value;
            };
            int const resonance = beside(d.target.r1) ? 1 : beside(d.target.r2) ? 2 : 0;
            out.push_back({{s, static_cast<int>(n), resonance}, f, cents_of(f)});
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](Partial const& a, Partial const& b) { return a.cents < b.cents; });
    return out;
}

/// Runs of partials of different sections, each within `same_partial` of the first.
void find_together(std::vector<Partial> const& partials, Chord& out) {
    for (std::size_t i = 0; i < partials.size();) {
        auto end = i + 1;
        while (end < partials.size() && partials[end].cents - partials[i].cents <= same_partial.value) ++end;
        SharedPartial shared;
        for (auto k = i; k < end; ++k) shared.of.push_back(partials[k].of);
        shared.frequency = partials[i].frequency;
        shared.spread = Cents{partials[end - 1].cents - partials[i].cents};
        if (shared.of.size() > 1) out.together.push_back(std::move(shared));
        i = end;
    }
    std::stable_sort(out.together.begin(), out.together.end(),
                     [](SharedPartial const& a, SharedPartial const& b) {
                         if (a.on_resonance() != b.on_resonance()) return a.on_resonance();
                         return a.of.size() > b.of.size();
                     });
}

void find_rubs(std::vector<Partial> const& partials, Chord& out) {
    for (std::size_t i = 0; i < partials.size(); ++i)
        for (auto k = i + 1; k < partials.size(); ++k) {
            double const between = partials[k].cents - partials[i].cents;
            if (between > farthest_rub.value) break;
            if (between <= same_partial.value || partials[i].of.section == partials[k].of.section) continue;
            out.rubs.push_back({{partials[i].of, partials[k].of}, partials[i].frequency, Cents{between}});
        }
}

} // namespace

bool SharedPartial::on_resonance() const {
    return std::any_of(of.begin(), of.end(), [](Of const& one) { return one.resonance > 0; });
}

Chord chord_of(SharedWord const& word, std::size_t index, std::vector<ChoirPart> const& parts) {
    Chord out;
    out.word = index;
    auto const partials = strong_partials(word, parts);
    find_together(partials, out);
    find_rubs(partials, out);
    for (std::size_t s = 0; s < word.sections.size(); ++s) {
        auto const& section = word.sections[s];
        auto const zone = parts[section.part].plan.notes[section.note].decision->zone.zone;
        if (zone == Zone::turning || zone == Zone::meeting) out.unsettled.push_back(s);
    }
    return out;
}

} // namespace vowelway::plan
