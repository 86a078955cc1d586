// SPDX-License-Identifier: MIT
// The whole line, sung by the model.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/plan/plan.hpp"
#include "vowelway/sound/programme.hpp"
#include "vowelway/sound/timing.hpp"
#include "vowelway/sound/voice.hpp"

namespace vowelway::sound {

struct LineAsked {
    bool kept = false;  ///< every vowel in its own shape, whatever the plan says
    bool guide = false; ///< a soft tone on each note
    bool click = false; ///< on each beat; those of a count-in always sound
    Vibrato vibrato;
};

/// Vowels as planned, legato within a breath, consonants left out: between syllables the voice only
/// gives way for a moment. A breath is heard at rests. Notes without a vowel are hummed.
Programme line_sounds(plan::Plan const& plan, Timing const& timing, Voice const& voice,
                      LineAsked const& asked);

} // namespace vowelway::sound
