// SPDX-License-Identifier: MIT
#include "diction/syllables/grouping.hpp"

#include "core/utf8.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

std::optional<Vowel> consonant_glide(Phone const& phone) {
    if (phone.vowel) return std::nullopt;
    if (phone.text == "j") return glide_of("i");
    if (phone.text == "w") return glide_of("u");
    if (phone.text == "ɥ") return glide_of("y");
    return std::nullopt;
}

} // namespace

std::vector<Nucleus> gather(std::vector<Phone> const& phones, std::span<std::string_view const> falling) {
    std::vector<Nucleus> out;
    std::vector<Sound> before;
    bool after_vowel = false, meets = false; // nothing, or no more than a glide, since the last vowel
    for (std::size_t i = 0; i < phones.size(); ++i) {
        auto const& phone = phones[i];
        bool const vowel_next = i + 1 < phones.size() && phones[i + 1].vowel && !phones[i + 1].vowel->glide;
        if (!phone.vowel) {
            if (phone.syllabic) out.push_back({{}, {vowel_of("ə"), 0}, {}});
            auto const glide = consonant_glide(phone);
            if (glide && vowel_next)
                before.push_back({*glide, 0});
            else if (glide && after_vowel && out.back().after.empty())
                out.back().after.push_back({*glide, 0});
            after_vowel = false;
            meets = meets && glide;
            continue;
        }
        auto vowel = *phone.vowel;
        if (after_vowel && !phone.boundary_before && out.back().after.empty() && phone.stress == 0) {
            auto const pair = utf8::encode(out.back().held.vowel.base) + utf8::encode(vowel.base);
            if (vowel.glide || std::find(falling.begin(), falling.end(), pair) != falling.end()) {
                vowel.glide = true;
                vowel.length = VowelLength::normal;
                out.back().after.push_back({vowel, 0});
                continue;
            }
        }
        if (vowel.glide && vowel_next) {
            before.push_back({vowel, 0});
            continue;
        }
        vowel.glide = false;
        out.push_back(
            {std::move(before), {vowel, 0}, {}, false, phone.stress == 2, phone.stress == 1, meets});
        before.clear();
        after_vowel = meets = true;
    }
    return out;
}

bool is_vowel_letter(char32_t c) {
    return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u' || c == U'y' || c == U'æ' ||
           c == U'œ' || c == U'ø' || c == U'ı' ||
           std::u32string_view(U"аеёиоуыэюяіїє").find(c) != std::u32string_view::npos;
}

} // namespace vowelway::diction
