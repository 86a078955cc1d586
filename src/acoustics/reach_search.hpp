// SPDX-License-Identifier: MIT
// Finds the shapes of a reachable set, from home outwards. Private to the layer.
#pragma once

#include "acoustics/reach_body.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace vowelway::acoustics {

class ReachableSet::Search {
  public:
    /// Puts the vowel's own shape into the set.
    explicit Search(ReachableSet& set);

    /// Solves every open cell from the solved ones next to it on the way home, or from `all` around it.
    void follow_neighbours(bool all);
    /// A cell left open between two opposite neighbours becomes what lies half way between their gestures, if
    /// that is near it.
    void fill_gaps();

  private:
    struct Found {
        tube::Posture posture;
        Shape shape;
    };
    /// How far a cell lies from home, as factors of fR1 and fR2.
    std::pair<double, double> factors(int i, int j) const;
    bool open(int i, int j) const { return set_.index_[set_.cell(i, j)] < 0; }
    bool worth_trying(int i, int j) const;
    /// The shapes to start from, the two least strained.
    std::vector<int> starts(int i, int j, bool all) const;
    std::optional<Found> solve(int i, int j, std::vector<int> const& from) const;
    std::optional<Found> between(int i, int j, int di, int dj) const;
    void keep(int i, int j, Found found);

    ReachableSet& set_;
    Body const& body_;
    double grid_;                            // octaves a step
    std::vector<std::pair<int, int>> order_; // all cells but home, the nearest first
    std::vector<tube::Posture> postures_;    // of each shape of the set
};

} // namespace vowelway::acoustics
