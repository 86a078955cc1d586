// SPDX-License-Identifier: MIT
// The bars as a singer names them. Private to the library.
#pragma once

#include "io/score/part_events.hpp"

#include <algorithm>
#include <string>

namespace vowelway::io {

/// Takes the bars in order.
class BarNames {
  public:
    void enter(PartMeasure const& bar, double length, bool first) {
        bool const numbered =
            !bar.number.empty() && std::all_of(bar.number.begin(), bar.number.end(),
                                               [](unsigned char c) { return c >= '0' && c <= '9'; });
        if (bar.implicit && !first && (!numbered || bar.number == printed_ || bar.number == "0") &&
            bar.nominal > 0 && into_bar_ + length < bar.nominal + time_tolerance) {
            offset_ = into_bar_; // the second half of a split bar
        } else {
            // A pick-up counts from where its bar would begin. The score says that it is one (MusicXML 4.0,
            // "implicit"; number 0 in older files): a short bar 1 may just be incomplete.
            bool const pickup = first && (bar.implicit || bar.number == "0") && bar.nominal > 0 &&
                                length < bar.nominal - time_tolerance;
            offset_ = pickup ? bar.nominal - length : 0;
            if (!bar.number.empty()) printed_ = bar.number;
        }
        into_bar_ = offset_ + length;
    }

    std::string const& printed() const { return printed_; } ///< the number
    double offset() const { return offset_; } ///< how far into it the bar entered begins, quarters

  private:
    std::string printed_;
    double offset_ = 0, into_bar_ = 0;
};

} // namespace vowelway::io
