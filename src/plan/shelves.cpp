// SPDX-License-Identifier: MIT
#include "plan/shelves.hpp"

namespace vowelway::plan {

Landscape const& PlanCache::Shelves::landscape(Pitch fo, Decibels loudness, acoustics::Source const& s,
                                               Frequency quarter) {
    auto const& [slope, upper_slope, upper_begins, upper_complete, slope_per_loudness] = s; // all of a source
    std::array const key{fo.frequency().value(),   loudness.value,       slope.value,
                         upper_slope.value,        upper_begins.value(), upper_complete.value(),
                         slope_per_loudness.value, quarter.value()};
    return *landscapes.get(key, [&] { return std::make_shared<Landscape const>(fo, loudness, s, quarter); });
}

PlanCache::PlanCache() : shelves_(std::make_unique<Shelves>()) {}
PlanCache::~PlanCache() = default;
std::size_t PlanCache::reachable_sets() const { return shelves_->reach.size(); }
std::size_t PlanCache::landscapes() const { return shelves_->landscapes.size(); }

} // namespace vowelway::plan
