// SPDX-License-Identifier: MIT
#include "vowelway/report/recording_card.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

namespace vowelway::report {

std::string recording_card(std::vector<Vowel> const& vowels, int repeat) {
    std::string list;
    for (auto const& v : vowels) list += (list.empty() ? "" : "  ") + v.ipa();
    return worded("Recording your vowels") + "\n\n" +
           worded("The vowels, in this order, {0} times:   {1}", repeat > 0 ? repeat : 2, list) + "\n\n" +
           worded("Before\n"
                  "- A quiet room with carpets and curtains; fans and music off.\n"
                  "- In the recording program switch off voice enhancement and noise suppression.\n"
                  "- Hold the phone a hand's width beside the mouth, away from table and wall.") +
           "\n\n" +
           worded("Whisper\n"
                  "- Start, and be silent for a second.\n"
                  "- Shape the vowel as for singing, then let the breath sound in it for a second.\n"
                  "- As quiet as is comfortable: the lowest noise that comes without effort.\n"
                  "- The mouth moves no more than the vowel needs. The tongue is not drawn back.\n"
                  "- Be silent for half a second, then the next vowel.\n"
                  "- A few seconds, then rest. Whispering all in one way, no voice between.") +
           "\n\n" +
           worded("Afterwards\n"
                  "- Listen: does each vowel stay the same from beginning to end? If not, again.\n"
                  "- Stop if it tires you. Hoarse for more than four weeks: have your larynx\n"
                  "  examined. This is not medical advice.") +
           "\n";
}

} // namespace vowelway::report
