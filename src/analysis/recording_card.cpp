// SPDX-License-Identifier: MIT
#include "vowelway/analysis/recording_card.hpp"

#include "vowelway/core/wording.hpp"

namespace vowelway::analysis {

RecordingCard recording_card(std::vector<Vowel> const& vowels, int repeat) {
    std::string list;
    for (auto const& v : vowels) list += (list.empty() ? "" : "  ") + v.ipa();
    RecordingCard card;
    card.title = worded("Recording your vowels");
    card.vowels = worded("The vowels, in this order, {0} times:   {1}", repeat > 0 ? repeat : 2, list);
    card.parts = {
        {worded("Before"),
         {worded("A quiet room with carpets and curtains; fans and music off."),
          worded("In the recording program switch off voice enhancement and noise suppression."),
          worded("Hold the phone a hand's width beside the mouth, away from table and wall.")}},
        {worded("Whisper"),
         {worded("Start, and be silent for a second."),
          worded("Shape the vowel as for singing, then let the breath sound in it for a second."),
          worded("As quiet as is comfortable: the lowest noise that comes without effort."),
          worded("The mouth moves no more than the vowel needs. The tongue is not drawn back."),
          worded("Be silent for half a second, then the next vowel."),
          worded("A few seconds, then rest. Whispering all in one way, no voice between.")}},
        {worded("Afterwards"),
         {worded("Listen: does each vowel stay the same from beginning to end? If not, again."),
          worded("Stop if it tires you. Hoarse for more than four weeks: have your larynx examined. This is "
                 "not medical advice.")}}};
    return card;
}

} // namespace vowelway::analysis
