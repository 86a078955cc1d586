// SPDX-License-Identifier: MIT
#include "diction/words/sounds.hpp"

#include "core/utf8.hpp"

namespace vowelway::diction {

std::string Nucleus::ipa() const {
    std::string out = held.vowel.ipa();
    for (auto const& sound : after) out += sound.vowel.ipa();
    return out;
}

Vowel vowel_of(std::string_view ipa) { return parse_ipa(ipa); }

Vowel glide_of(std::string_view ipa) {
    auto vowel = parse_ipa(ipa);
    vowel.glide = true;
    return vowel;
}

namespace {

/// The synthesiser's Danish voice (version 1.51) writes the Greek letter for ɛ.
std::string with_epsilon(std::string_view ipa) {
    std::string out(ipa);
    for (std::size_t at = 0; (at = out.find("ε", at)) != std::string::npos; at += 2) out.replace(at, 2, "ɛ");
    return out;
}

} // namespace

std::vector<Phone> phones(std::string_view ipa) {
    auto const mended = with_epsilon(ipa);
    ipa = mended;
    std::vector<Phone> out;
    int stress = 0;
    bool boundary = false, in_mark = false, tied = false;
    while (!ipa.empty()) {
        if (ipa.front() == '(') in_mark = true;
        if (!in_mark) {
            if (auto const prefix = vowel_prefix(ipa)) {
                out.push_back(
                    {std::string(ipa.substr(0, prefix->bytes)), prefix->vowel, stress, false, boundary});
                ipa.remove_prefix(prefix->bytes);
                stress = 0;
                boundary = tied = false;
                continue;
            }
        }
        auto const c = utf8::eat(ipa);
        if (!c) {
            ipa.remove_prefix(1);
            continue;
        }
        if (*c == U')')
            in_mark = false;
        else if (in_mark)
            continue;
        else if (*c == U'ˈ')
            stress = 2;
        else if (*c == U'ˌ')
            stress = 1;
        else if (*c == U'.' || *c == U' ' || *c == U'-' || *c == U'_' || *c == U'\n')
            boundary = true;
        else if (*c == U'ᵻ') { // reduced close vowel of English: lies between ɪ and ə
            out.push_back({"ɪ", Vowel{.base = U'ɪ'}, stress, false, boundary});
            stress = 0;
            boundary = false;
        } else if (*c == 0x329 || *c == 0x30D) { // syllabic
            if (!out.empty()) out.back().syllabic = true;
        } else if (*c == 0x361 || *c == 0x35C) { // tie bar: the next letter belongs to this consonant
            tied = true;
        } else if ((*c == U'ʲ' || *c == U'ː') && !out.empty() && !out.back().vowel) {
            (*c == U'ʲ' ? out.back().soft : out.back().lengthened) = true;
        } else if ((*c >= 0x300 && *c <= 0x36F) || *c == U'ː' || *c == U'ˑ' || *c == U'ʰ' || *c == U'ʲ' ||
                   *c == U'‿' || *c == U'˞') {
            continue;
        } else if (tied && !out.empty() && !out.back().vowel) {
            out.back().text += utf8::encode(*c);
            tied = false;
        } else {
            out.push_back({utf8::encode(*c), std::nullopt, 0, false, boundary});
            boundary = false;
        }
    }
    return out;
}

} // namespace vowelway::diction
