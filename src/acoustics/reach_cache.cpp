// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/reach_cache.hpp"

#include "core/once_map.hpp"

#include <vector>

namespace vowelway::acoustics {

namespace {

using Key = std::vector<double>;

// All that a set depends on.
Key key_of(VowelResonances const& v, Length tract, ReachOptions const& o) {
    auto const& q = v.vowel;
    Key key{static_cast<double>(q.base),
            static_cast<double>(q.raised),
            static_cast<double>(q.advanced),
            static_cast<double>(q.rounding),
            static_cast<double>(q.centralised),
            static_cast<double>(q.tongue_root),
            static_cast<double>(q.nasal),
            static_cast<double>(q.rhotic),
            static_cast<double>(q.glide),
            static_cast<double>(q.length),
            tract.value(),
            o.step.value,
            o.farthest_up.value,
            o.farthest_down.value,
            o.farthest_r2.value,
            o.length_sd};
    key.insert(key.end(), o.cost.begin(), o.cost.end());
    for (int k = 1; k <= 4; ++k) {
        auto const resonance = v.get({k}); // what is not known becomes 0, which no resonance is
        key.push_back(resonance ? resonance->centre.value() : 0);
        key.push_back(resonance && resonance->bandwidth ? resonance->bandwidth->value() : 0);
    }
    return key;
}

} // namespace

struct ReachCache::Shelf {
    OnceMap<Key, ReachableSet> sets;
};

ReachCache::ReachCache() : shelf_(std::make_unique<Shelf>()) {}
ReachCache::~ReachCache() = default;

std::shared_ptr<ReachableSet const> ReachCache::get(VowelResonances const& vowel, Length tract,
                                                    ReachOptions const& options) {
    return shelf_->sets.get(key_of(vowel, tract, options),
                            [&] { return std::make_shared<ReachableSet const>(vowel, tract, options); });
}

std::size_t ReachCache::size() const { return shelf_->sets.size(); }

} // namespace vowelway::acoustics
