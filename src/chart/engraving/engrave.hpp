// SPDX-License-Identifier: MIT
// Last pass of the score: the staff, drawn. The top line is at y = 0, the system begins at x = 0.
#pragma once

#include "chart/engraving/curves.hpp"
#include "chart/engraving/score_layout.hpp"

namespace vowelway::chart {

/// Draws systems in order; remembers the ties and slurs that run over a break.
class Engraver {
  public:
    explicit Engraver(Staff const& staff) : staff_(&staff) {}
    void draw(System const& system, Canvas& canvas);

  private:
    Staff const* staff_;
    OpenTies ties_;
    OpenSlurs slurs_;
};

} // namespace vowelway::chart
