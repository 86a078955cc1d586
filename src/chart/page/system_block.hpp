// SPDX-License-Identifier: MIT
// One system of the passage sheet: staff, words and vowels, resonance lane, advice; drawn as one block.
#pragma once

#include "chart/engraving/engrave.hpp"
#include "chart/page/lane.hpp"
#include "chart/page/words_under.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/plan/plan.hpp"

#include <map>
#include <vector>

namespace vowelway::chart {

struct Block {
    Drawing upper;   ///< staff's top line at y = 0, staff's beginning at x = 0
    double top = 0;  ///< of the upper part
    double lane = 0; ///< where the lane's top goes
    std::vector<Sounding> soundings;
    double width = 0;
    Drawing lower; ///< from the lane's bottom, y = 0
    double lower_height = 0;

    double height(double lane_height) const { return lane - top + lane_height + lower_height; }
    /// The block's highest ink comes to `at`.y, its staff begins at `at`.x.
    void draw(Canvas& canvas, plan::Plan const& plan, LaneScale const& scale, Point at) const;
};

class BlockMaker {
  public:
    /// `watched` numbers the notes listed on the front, from 1.
    BlockMaker(plan::Plan const& plan, Staff const& staff, std::map<std::size_t, int> const& watched,
               TextMeasurer const& measurer);
    Block make(System const& system);

  private:
    plan::Plan const* plan_;
    Staff const* staff_;
    std::map<std::size_t, int> const* watched_;
    TextMeasurer const* measurer_;
    Engraver engraver_;
    WordsUnder words_;
};

} // namespace vowelway::chart
