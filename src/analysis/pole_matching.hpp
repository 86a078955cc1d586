// SPDX-License-Identifier: MIT
// Which pole is which formant. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/formants.hpp"
#include "vowelway/analysis/linear_prediction.hpp"

#include <array>
#include <optional>
#include <vector>

namespace vowelway::analysis {

struct Match {
    std::array<std::optional<Pole>, 3> formants;
    double cost = 0;
};

/// The assignment of three rising poles to F1..F3 that fits the expectation best. A pole wider than
/// `widest` is no candidate; a formant may stay unassigned at a price, and so may a narrow pole between two
/// chosen ones.
Match match_poles(std::vector<Pole> const& poles, Expectation const& expectation, Frequency widest);

/// Hz^2: what the best match leaves open about formant `k`, since it may be another pole or none of them. The
/// odds of the best match without that pole are exp(-half of what it costs more); a formant without a pole
/// lies where it is due.
double variance_of_choice(Match const& best, std::size_t k, std::vector<Pole> const& poles,
                          Expectation const& expectation, Frequency widest);

} // namespace vowelway::analysis
