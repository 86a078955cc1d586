// SPDX-License-Identifier: MIT
#include "vowelway/report/recording_card.hpp"

#include <fmt/format.h>

namespace vowelway::report {

std::string recording_card(std::vector<Vowel> const& vowels, int repeat) {
    std::string list;
    for (auto const& v : vowels) list += (list.empty() ? "" : "  ") + v.ipa();
    return fmt::format(R"(Recording your vowels

The vowels, in this order, {} times:   {}

Before
- A quiet room with carpets and curtains; fans and music off.
- In the recording program switch off voice enhancement and noise suppression.
- Hold the phone a hand's width beside the mouth, away from table and wall.

Whisper
- Start, and be silent for a second.
- Shape the vowel as for singing, then let the breath sound in it for a second.
- As quiet as is comfortable: the lowest noise that comes without effort.
- The mouth moves no more than the vowel needs. The tongue is not drawn back.
- Be silent for half a second, then the next vowel.
- A few seconds, then rest. Whispering all in one way, no voice between.

Afterwards
- Listen: does each vowel stay the same from beginning to end? If not, again.
- Stop if it tires you. Hoarse for more than four weeks: have your larynx
  examined. This is not medical advice.
)",
                       repeat > 0 ? repeat : 2, list);
}

} // namespace vowelway::report
