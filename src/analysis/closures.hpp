// SPDX-License-Identifier: MIT
// When the folds of a voice close: which way up its prediction error is. Private to the analysis layer.
#pragma once

#include "vowelway/core/units.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace vowelway::analysis {

struct Closures {
    std::vector<std::size_t> moments;  ///< in samples at `rate`
    std::vector<std::size_t> opposite; ///< those of the error upside down, where it may be that; else none
    Frequency rate;

    /// The moments in samples at another rate.
    std::vector<std::size_t> moments_at(Frequency other) const;
};

/// Of a voice at `fo`, or without it a creak's pulses. A closure is a short peak of the prediction error; the
/// slope of the open phase before it is a longer, lower one the other way. Where the peaks of neither side
/// are clearly higher, the closures are those after which prediction of this order errs less.
Closures find_closures(std::span<double const> sound, Frequency rate, std::optional<Frequency> fo, int order);

/// Weights for what rings after these closures, until shortly before the folds open.
std::vector<double> after_closures(std::span<double const> sound, Frequency rate,
                                   std::vector<std::size_t> const& moments);

} // namespace vowelway::analysis
