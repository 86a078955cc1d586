// SPDX-License-Identifier: MIT
// Finds room for labels: asking and taking are one call, and what finds none is dropped and counted.
#pragma once

#include "vowelway/chart/canvas.hpp"

#include <optional>
#include <vector>

namespace vowelway::chart {

class LabelPlacer {
  public:
    /// Labels stay inside `area`.
    explicit LabelPlacer(Box area) : area_(area) {}

    /// Keeps a place free of labels.
    void block(Box box) { taken_.push_back(box); }

    /// The free place nearest to the wished one, moved up or down by no more than `most`; it is then taken.
    std::optional<Box> find(Box wished, double most);

    int dropped() const { return dropped_; }

  private:
    bool free(Box const& box) const;

    Box area_;
    std::vector<Box> taken_;
    int dropped_ = 0;
};

} // namespace vowelway::chart
