// SPDX-License-Identifier: MIT
#include "vowelway/core/tessitura.hpp"

namespace vowelway {

std::optional<PitchRange> tessitura_of(VoiceType voice, std::optional<PitchRange> const& range) {
    switch (voice) {
    case VoiceType::bass:
        return parse_pitch_range("G2..C4");
    case VoiceType::baritone:
        return parse_pitch_range("B2..D#4");
    case VoiceType::tenor:
        return parse_pitch_range("D3..F#4");
    case VoiceType::countertenor:
        return parse_pitch_range("G3..B4");
    case VoiceType::alto:
        return parse_pitch_range("G3..B4");
    case VoiceType::mezzo:
        return parse_pitch_range("B3..D#5");
    case VoiceType::soprano:
        return parse_pitch_range("D4..F#5");
    case VoiceType::treble:
        return parse_pitch_range("D4..E5");
    case VoiceType::other:
        break;
    }
    if (!range || range->high.key_number() - range->low.key_number() < 12) return std::nullopt;
    return PitchRange{transposed(range->low, 4), transposed(range->high, -4)};
}

bool is_mans_voice(VoiceType voice) {
    return voice == VoiceType::bass || voice == VoiceType::baritone || voice == VoiceType::tenor;
}

bool sounds_below_treble_clef(VoiceType voice) { return is_mans_voice(voice); }

} // namespace vowelway
