// SPDX-License-Identifier: MIT
// Whether the sounds come in the order of the list. Private to the analysis layer.
#pragma once

#include "analysis/looks.hpp"
#include "vowelway/analysis/measure.hpp"

#include <array>
#include <optional>
#include <vector>

namespace vowelway::analysis {

/// How well a sound shows one vowel.
struct VowelFit {
    double cost = 0; ///< median over the looks of the price of the best match (match_poles), its spreads
                     ///< weighed, without what `away` says
    std::array<std::optional<double>, 2> away; ///< ln(F / where it is due), median over the looks
    std::array<double, 2> spread{};            ///< of the expectation
};
VowelFit fit_of(Looks const& looks, Expectation const& expectation, ProbeKind kind);

/// The vowels that the takes are listed as, each once.
std::vector<Vowel> labels_of(std::vector<Take> const& takes);

/// Tries all orders of the labels, each with the shift common to the recordings that suits it best. Where
/// another order fits much better the takes whose labels differ are refused; where it may, it is a remark.
/// `fits`: of each take with each label; empty for a take not read.
void settle_order(Measurements& measurements, std::vector<Recording> const& recordings,
                  std::vector<Vowel> const& labels, std::vector<std::vector<VowelFit>> const& fits);

} // namespace vowelway::analysis
