// SPDX-License-Identifier: MIT
#pragma once

#include "chart/engraving/score_layout.hpp"
#include "vowelway/chart/drawing.hpp"

namespace vowelway::chart {

/// What stands under a staff that is drawn already: words with hyphens and extenders, the vowel sung, the
/// vowel heard. Takes the systems in order, since a hyphen may run over a break.
class WordsUnder {
  public:
    /// Without vowels their rows take no room.
    explicit WordsUnder(Under under = Under::words_and_vowels) : under_(under) {}
    /// Returns how far down it went.
    double draw(System const& system, Drawing& drawing);

  private:
    double draw_lyrics(System const& system, Drawing& drawing, double y);

    Under under_;
    bool hyphen_open_ = false; ///< over the break of a system
};

} // namespace vowelway::chart
