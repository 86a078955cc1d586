// SPDX-License-Identifier: MIT
#include "vowelway/plan/crossings.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

std::string Crossing::str() const { return harmonic.str() + " = " + resonance.str(); }

Crossing crossing(Harmonic n, ResonanceNumber k, Resonance const& resonance) {
    return {n, k, Pitch(resonance.centre / static_cast<double>(n.number)), resonance.sd_cents()};
}

std::vector<Crossing> crossings(VowelResonances const& vowel, Pitch low, Pitch high) {
    std::vector<Crossing> found;
    for (int k = 1; k <= 4; ++k) {
        auto const resonance = vowel.get({k});
        if (!resonance) continue;
        int const first =
            std::max(1, static_cast<int>(std::ceil(resonance->centre / high.frequency() - 1e-9)));
        int const last = static_cast<int>(std::floor(resonance->centre / low.frequency() + 1e-9));
        for (int n = first; n <= last; ++n) found.push_back(crossing({n}, {k}, *resonance));
    }
    std::stable_sort(found.begin(), found.end(),
                     [](auto const& a, auto const& b) { return a.pitch < b.pitch; });
    return found;
}

} // namespace vowelway::plan
