// SPDX-License-Identifier: MIT
// Ties and slurs. Both remember what runs over the break of a system.
#pragma once

#include "chart/engraving/set_event.hpp"

#include <map>
#include <vector>

namespace vowelway::chart {

class OpenTies {
  public:
    void draw(std::vector<SetEvent> const& sets, System const& system, Canvas& canvas);

  private:
    struct Begun {
        Point at;
        bool stem_up = true;
    };
    static void curve(Begun const& from, double to, Canvas& canvas);

    std::map<int, Begun> begun_; ///< by step
};

class OpenSlurs {
  public:
    void draw(std::vector<SetEvent> const& sets, System const& system, Canvas& canvas);

  private:
    std::vector<double> begun_; ///< x
};

} // namespace vowelway::chart
