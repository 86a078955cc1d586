// SPDX-License-Identifier: MIT
// A vowel as it should be whispered, and the two faults of a probe. Private to the layer.
#pragma once

#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/sound/whisper.hpp"

namespace vowelway::sound {

class WhisperedShapes {
  public:
    WhisperedShapes(VowelResonances const& sung, Length tract);

    /// Of the whisper as it should be.
    VowelResonances const& resonances() const { return resonances_; }
    Whispered as_it_should_be() const;
    /// Larynx raised, lips spread, tongue forward, noise at the teeth: a hiss.
    Whispered too_high() const;
    /// Tongue drawn back, larynx low, noise without brightness.
    Whispered drawn_back() const;

  private:
    VowelResonances resonances_;
    acoustics::ReachableSet reach_;
};

} // namespace vowelway::sound
