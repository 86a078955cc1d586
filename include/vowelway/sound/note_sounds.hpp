// SPDX-License-Identifier: MIT
// One note with its shape kept and changed; one vowel on a slide through the pitches where it turns and
// meets.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/technique.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/plan.hpp"
#include "vowelway/sound/programme.hpp"
#include "vowelway/sound/voice.hpp"

#include <optional>

namespace vowelway::sound {

/// The voice that the planner takes this singer's to be.
Voice voice_of(Singer const& singer, Technique const& technique,
               std::span<VowelResonances const> planned = {});

enum class NoteSound { kept, changed };

struct NoteSoundsAsked {
    std::optional<NoteSound> only; ///< nothing: both
    Duration each = seconds(3);
    Vibrato vibrato;
};

/// Kept, then changed, with the levels of the model; then again, each as loud (A-weighted) as the kept one.
/// Where nothing is to be changed the kept one alone, and a remark; InputError when the changed one alone is
/// asked for.
Programme note_sounds(plan::NoteExplanation const& note, Voice const& voice, NoteSoundsAsked const& asked);

struct GlideAsked {
    Duration each = seconds(8); ///< of one slide
    Tuning tuning;
};

/// Slides from low to high, all of one loudness: through the turning point with the shape kept; through the
/// meeting with the shape kept, and again as the plan changes it, from semitone to semitone. Seven semitones
/// below to five above, as far as the plan's range goes. What lies outside it is left out, with a remark;
/// InputError when nothing is left.
Programme glide_sounds(plan::VowelPlan const& vowel, Voice const& voice, GlideAsked const& asked);

} // namespace vowelway::sound
