// SPDX-License-Identifier: MIT
#include "diction/words/typed_ipa.hpp"

#include "diction/words/sounds.hpp"

namespace vowelway::diction {

std::optional<SungVowel> read_typed(std::string_view text) {
    SungVowel out;
    out.origin = VowelOrigin::typed;
    bool held = false;
    std::vector<Phone> all = phones(text);
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto const& phone = all[i];
        std::optional<Vowel> vowel = phone.vowel;
        bool const last = i + 1 == all.size();
        if (!vowel && (phone.text == "j" || phone.text == "w" || phone.text == "ɥ")) {
            bool const before = !held && !last && all[i + 1].vowel;
            bool const after = held && i > 0 && all[i - 1].vowel;
            if (before || after) vowel = glide_of(phone.text == "j" ? "i" : phone.text == "w" ? "u" : "y");
        }
        if (!vowel) continue;
        if (held) {
            vowel->glide = true;
            out.after.push_back(*vowel);
        } else if (vowel->glide) {
            out.before.push_back(*vowel);
        } else {
            out.held = *vowel;
            held = true;
        }
    }
    if (held) return out;
    if (out.before.empty()) return std::nullopt;
    out.held = out.before.front(); // a glide alone is meant as the vowel
    out.held.glide = false;
    out.before.clear();
    return out;
}

} // namespace vowelway::diction
