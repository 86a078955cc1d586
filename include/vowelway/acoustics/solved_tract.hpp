// SPDX-License-Identifier: MIT
// A tract and all that is told of it.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/tract.hpp"

#include <string>
#include <vector>

namespace vowelway::acoustics {

struct SolvedTract {
    std::string name; ///< the vowel as its table writes it; may be empty
    Length length;
    std::vector<TractResonance> resonances; ///< up to the limit asked for
    std::vector<Band> compliant;            ///< where the load on the folds is compliant, up to the limit
};

/// Errors as of resonances() and compliant_bands().
SolvedTract solve(std::string name, AreaFunction const& tract, TractLoss loss, Frequency up_to);

} // namespace vowelway::acoustics
