// SPDX-License-Identifier: MIT
// Last pass of the score: the staff, drawn. The top line is at y = 0, the system begins at x = 0.
#pragma once

#include "chart/engraving/score_layout.hpp"
#include "vowelway/chart/drawing.hpp"

#include <map>
#include <vector>

namespace vowelway::chart {

/// Draws systems in order; remembers the ties, slurs and tuplets that run over a break.
class Engraver {
  public:
    explicit Engraver(Staff const& staff) : staff_(&staff) {}
    void draw(System const& system, Canvas& canvas);

  private:
    struct Stem {
        double x = 0, from = 0, to = 0;
        bool up = true;
    };
    struct Set { ///< an event, with where its parts went
        Atom const* atom = nullptr;
        StaffEvent const* event = nullptr;
        double scale = 1;
        std::vector<int> steps = {}; ///< of the heads, low to high
        Stem stem = {};
        bool has_stem = false;
    };
    struct Anchor {
        Point at;
        bool stem_up = true;
    };

    std::vector<Set> set_events(System const& system) const;
    void choose_beams(std::vector<Set>& sets, Canvas& canvas) const;
    void staff_lines(System const& system, Canvas& canvas) const;
    void signs(System const& system, Canvas& canvas) const;
    void barline(Atom const& atom, Canvas& canvas) const;
    void heads(Set const& set, Canvas& canvas) const;
    void rest(Set const& set, Canvas& canvas) const;
    void flags(Set const& set, Canvas& canvas) const;
    void articulations(Set const& set, Canvas& canvas) const;
    void ties(std::vector<Set> const& sets, System const& system, Canvas& canvas);
    void slurs(std::vector<Set> const& sets, System const& system, Canvas& canvas);
    void tuplets(std::vector<Set> const& sets, Canvas& canvas) const;

    Staff const* staff_;
    std::map<int, Anchor> open_ties_; ///< by step
    std::vector<Anchor> open_slurs_;
};

/// y of a staff step.
constexpr double y_of_step(int step) { return 4 * space - step * space / 2; }

} // namespace vowelway::chart
