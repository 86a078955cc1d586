// SPDX-License-Identifier: MIT
// A singer, or a voice type taken as one: resonances per vowel, range, and how they are known.
#pragma once

#include "vowelway/core/pitch.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/vibrato.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace vowelway {

enum class VoiceType { bass, baritone, tenor, countertenor, alto, mezzo, soprano, treble, other };
std::string_view to_string(VoiceType voice);
std::optional<VoiceType> parse_voice_type(std::string_view name);
inline constexpr std::array all_voice_types{VoiceType::bass,         VoiceType::baritone, VoiceType::tenor,
                                            VoiceType::countertenor, VoiceType::alto,     VoiceType::mezzo,
                                            VoiceType::soprano,      VoiceType::treble};

/// How and when the resonances became known.
struct Provenance {
    Method method = Method::typed;
    std::string date; ///< ISO 8601 day, or empty
    std::string note;
};

struct Singer {
    std::string name;
    VoiceType voice = VoiceType::other;
    std::optional<PitchRange> range; ///< comfortable range
    Tuning tuning;
    std::optional<Length> tract_length; ///< glottis to lips; estimated from the resonances when absent
    std::optional<Vibrato> vibrato;     ///< in place of the technique's
    Provenance provenance;
    bool average = false; ///< an average of many speakers, no single singer: every output says so
    std::vector<VowelResonances> vowels;

    /// The entry of a vowel: the same quality (symbol, shades, nasality), length ignored; null if absent.
    VowelResonances const* find(Vowel const& vowel) const;
};

/// The sentence every output made from an average carries.
inline constexpr std::string_view average_voice_notice = "average voice: measure your own";

} // namespace vowelway
