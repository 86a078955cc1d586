// SPDX-License-Identifier: MIT
#include "chart/page/soundings.hpp"

#include <algorithm>

namespace vowelway::chart {

std::vector<Sounding> soundings_of(System const& system) {
    std::vector<Sounding> result;
    for (std::size_t i = 0; i < system.atoms.size(); ++i) {
        auto const& a = system.atoms[i];
        if (!a.note) continue;
        double to = system.width;
        for (std::size_t j = i + 1; j < system.atoms.size(); ++j) {
            auto const& next = system.atoms[j];
            bool const stops = next.kind == Atom::Kind::event || next.kind == Atom::Kind::multi_rest;
            if (!stops) continue;
            to = next.x - head_half - 1;
            break;
        }
        double const from = a.x - head_half - 1;
        result.push_back({*a.note, from, std::max(to, from + 2), a.x, a.begins_note});
    }
    return result;
}

} // namespace vowelway::chart
