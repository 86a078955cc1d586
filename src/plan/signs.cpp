// SPDX-License-Identifier: MIT
#include "plan/signs.hpp"

#include <iterator>

namespace vowelway::plan {

std::span<char32_t const> signs_of(std::string_view language) {
    static constexpr char32_t italian[] = {U'i', U'e', U'ɛ', U'a', U'ɔ', U'o', U'u'};
    static constexpr char32_t spanish[] = {U'i', U'e', U'ɛ', U'a', U'o', U'u'};
    static constexpr char32_t french[] = {U'i', U'e', U'ɛ', U'a', U'ɑ', U'ɔ',
                                          U'o', U'u', U'y', U'ø', U'œ', U'ə'};
    static constexpr char32_t english[] = {U'i', U'ɪ', U'e', U'ɛ', U'æ', U'a', U'ɑ',
                                           U'ʌ', U'ə', U'ɔ', U'o', U'ʊ', U'u'};
    static constexpr char32_t german[] = {U'i', U'ɪ', U'e', U'ɛ', U'a', U'ɑ', U'ɔ', U'o',
                                          U'ʊ', U'u', U'y', U'ʏ', U'ø', U'œ', U'ə'};
    auto const code = language.substr(0, 2);
    if (code == "it" || code == "la") return italian;
    if (code == "es") return spanish;
    if (code == "fr") return french;
    if (code == "en") return english;
    return german;
}

} // namespace vowelway::plan
