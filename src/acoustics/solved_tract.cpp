// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/solved_tract.hpp"

namespace vowelway::acoustics {

SolvedTract solve(std::string name, AreaFunction const& tract, TractLoss loss, Frequency up_to) {
    return {std::move(name), length_of(tract), resonances(tract, loss, up_to),
            compliant_bands(tract, loss, up_to)};
}

} // namespace vowelway::acoustics
