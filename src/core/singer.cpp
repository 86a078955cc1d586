// SPDX-License-Identifier: MIT
#include "vowelway/core/singer.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway {

std::string_view to_string(VoiceType voice) {
    switch (voice) {
    case VoiceType::bass:
        return to_word("bass");
    case VoiceType::baritone:
        return to_word("baritone");
    case VoiceType::tenor:
        return to_word("tenor");
    case VoiceType::countertenor:
        return to_word("countertenor");
    case VoiceType::alto:
        return to_word("alto");
    case VoiceType::mezzo:
        return to_word("mezzo");
    case VoiceType::soprano:
        return to_word("soprano");
    case VoiceType::treble:
        return to_word("treble");
    case VoiceType::other:
        return to_word("other");
    }
    return "";
}

std::optional<VoiceType> parse_voice_type(std::string_view name) {
    std::string small(name); // in any case: "Tenor", "TENOR"
    for (char& c : small)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    for (auto voice : all_voice_types)
        if (small == to_string(voice)) return voice;
    if (small == "other") return VoiceType::other;
    return std::nullopt;
}

VowelResonances const* Singer::find(Vowel const& vowel) const {
    auto const wanted = vowel.quality();
    auto const found = std::find_if(vowels.begin(), vowels.end(),
                                    [&](VowelResonances const& v) { return v.vowel.quality() == wanted; });
    return found == vowels.end() ? nullptr : &*found;
}

} // namespace vowelway
