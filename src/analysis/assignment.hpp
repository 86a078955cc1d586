// SPDX-License-Identifier: MIT
// The cheapest way to give each row a column of its own. Private to the analysis layer.
#pragma once

#include <cstddef>
#include <vector>

namespace vowelway::analysis {

/// Column of each row, the sum of cost[row][column] least. Square. H. W. Kuhn, Naval Research Logistics
/// Quarterly 2 (1955) 83, with potentials and shortest augmenting paths (from memory).
std::vector<std::size_t> cheapest_assignment(std::vector<std::vector<double>> const& cost);

} // namespace vowelway::analysis
