// SPDX-License-Identifier: MIT
#include "diction/words/letters.hpp"

#include "core/utf8.hpp"

#include <algorithm>
#include <iterator>

namespace vowelway::diction {

namespace {

// Lower-case letters of the Latin script that carry a mark (Unicode 15, canonical decompositions).
struct Marked {
    char32_t whole, base, mark;
};
constexpr Marked marked[] = {
    {U'à', U'a', mark::grave},
    {U'á', U'a', mark::acute},
    {U'â', U'a', mark::circumflex},
    {U'ã', U'a', mark::tilde},
    {U'ä', U'a', mark::diaeresis},
    {U'å', U'a', mark::ring},
    {U'ā', U'a', mark::macron},
    {U'ă', U'a', mark::breve},
    {U'ą', U'a', 0x328},
    {U'ç', U'c', mark::cedilla},
    {U'ć', U'c', mark::acute},
    {U'č', U'c', mark::caron},
    {U'ď', U'd', mark::caron},
    {U'è', U'e', mark::grave},
    {U'é', U'e', mark::acute},
    {U'ê', U'e', mark::circumflex},
    {U'ë', U'e', mark::diaeresis},
    {U'ē', U'e', mark::macron},
    {U'ĕ', U'e', mark::breve},
    {U'ę', U'e', 0x328},
    {U'ě', U'e', mark::caron},
    {U'ẽ', U'e', mark::tilde},
    {U'ì', U'i', mark::grave},
    {U'í', U'i', mark::acute},
    {U'î', U'i', mark::circumflex},
    {U'ï', U'i', mark::diaeresis},
    {U'ī', U'i', mark::macron},
    {U'ĭ', U'i', mark::breve},
    {U'ĩ', U'i', mark::tilde},
    {U'ľ', U'l', mark::caron},
    {U'ñ', U'n', mark::tilde},
    {U'ń', U'n', mark::acute},
    {U'ň', U'n', mark::caron},
    {U'ò', U'o', mark::grave},
    {U'ó', U'o', mark::acute},
    {U'ô', U'o', mark::circumflex},
    {U'õ', U'o', mark::tilde},
    {U'ö', U'o', mark::diaeresis},
    {U'ō', U'o', mark::macron},
    {U'ŏ', U'o', mark::breve},
    {U'ő', U'o', 0x30B},
    {U'ř', U'r', mark::caron},
    {U'ś', U's', mark::acute},
    {U'š', U's', mark::caron},
    {U'ş', U's', mark::cedilla},
    {U'ť', U't', mark::caron},
    {U'ù', U'u', mark::grave},
    {U'ú', U'u', mark::acute},
    {U'û', U'u', mark::circumflex},
    {U'ü', U'u', mark::diaeresis},
    {U'ū', U'u', mark::macron},
    {U'ŭ', U'u', mark::breve},
    {U'ũ', U'u', mark::tilde},
    {U'ů', U'u', mark::ring},
    {U'ű', U'u', 0x30B},
    {U'ŵ', U'w', mark::circumflex},
    {U'ẁ', U'w', mark::grave},
    {U'ẃ', U'w', mark::acute},
    {U'ẅ', U'w', mark::diaeresis},
    {U'ý', U'y', mark::acute},
    {U'ÿ', U'y', mark::diaeresis},
    {U'ŷ', U'y', mark::circumflex},
    {U'ȳ', U'y', mark::macron},
    {U'ź', U'z', mark::acute},
    {U'ž', U'z', mark::caron},
    {U'ż', U'z', 0x307},
};

char32_t lower(char32_t c) {
    if (c >= U'A' && c <= U'Z') return c + 32;
    if (c >= 0xC0 && c <= 0xDE && c != 0xD7) return c + 32;
    if (c == 0x178) return 0xFF;
    if ((c >= 0x139 && c <= 0x148) || (c >= 0x179 && c <= 0x17E)) return c % 2 ? c + 1 : c;
    if (c >= 0x100 && c <= 0x177 && c != 0x138 && c != 0x131) return c % 2 ? c : c + 1;
    if (c == 0x232) return 0x233;
    if (c >= 0x391 && c <= 0x3A9) return c + 32;
    if (c >= 0x410 && c <= 0x42F) return c + 32;
    if (c >= 0x400 && c <= 0x40F) return c + 80;
    if (c == 0x1E9E) return 0xDF;
    return c;
}

bool is_mark(char32_t c) { return c >= 0x300 && c <= 0x36F; }

bool is_apostrophe(char32_t c) {
    return c == U'\'' || c == 0x2019 || c == 0x2018 || c == 0x2BC || c == 0x60 || c == 0xB4 || c == 0x2032;
}

} // namespace

std::vector<Letter> letters(std::string_view word) {
    std::vector<Letter> out;
    auto rest = word;
    while (!rest.empty()) {
        std::size_t const from = word.size() - rest.size();
        auto c = utf8::eat(rest);
        if (!c) {
            rest.remove_prefix(1);
            c = 0xFFFD;
        }
        std::size_t const to = word.size() - rest.size();
        char32_t const l = lower(*c);
        if (is_mark(l)) {
            if (!out.empty()) {
                out.back().mark = l;
                out.back().to = to;
            }
            continue;
        }
        if (l == 0xAD || l == 0xFEFF || l == 0x200B) continue;
        if (is_apostrophe(l)) {
            out.push_back({U'\'', 0, from, to});
        } else if (l == 0xFB01 || l == 0xFB02) {
            out.push_back({U'f', 0, from, to});
            out.push_back({l == 0xFB01 ? U'i' : U'l', 0, to, to});
        } else if (l == 0x1FD || l == 0x1FC) {
            out.push_back({U'æ', mark::acute, from, to});
        } else {
            auto const found = std::find_if(std::begin(marked), std::end(marked),
                                            [&](Marked const& m) { return m.whole == l; });
            if (found == std::end(marked))
                out.push_back({l, 0, from, to});
            else
                out.push_back({found->base, found->mark, from, to});
        }
    }
    return out;
}

std::string in_ascii(std::vector<Letter> const& letters) {
    std::string out;
    for (auto const& letter : letters) out += letter.base < 0x80 ? static_cast<char>(letter.base) : '?';
    return out;
}

std::string lower(std::vector<Letter> const& letters) {
    std::string out;
    for (auto const& letter : letters) {
        auto const found = std::find_if(std::begin(marked), std::end(marked), [&](Marked const& m) {
            return letter.mark && m.base == letter.base && m.mark == letter.mark;
        });
        if (found != std::end(marked)) {
            out += utf8::encode(found->whole);
        } else {
            out += utf8::encode(letter.base);
            if (letter.mark) out += utf8::encode(letter.mark);
        }
    }
    return out;
}

std::string lower(std::string_view word) { return lower(letters(word)); }

bool is_letter(char32_t c) {
    if (c < 0x80) return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z');
    if (c == 0xAA || c == 0xBA) return true;
    if (c >= 0xC0 && c <= 0x24F) return c != 0xD7 && c != 0xF7;
    return (c >= 0x370 && c <= 0x52F && c != 0x37E && c != 0x387) || (c >= 0x1E00 && c <= 0x1FFF) ||
           (c >= 0xFB00 && c <= 0xFB06) || is_mark(c);
}

std::string_view without_punctuation(std::string_view word) {
    auto const kept = [](char32_t c) { return is_letter(c) || (c >= U'0' && c <= U'9'); };
    std::size_t first = word.size(), last = 0;
    auto rest = word;
    while (!rest.empty()) {
        std::size_t const from = word.size() - rest.size();
        auto const c = utf8::eat(rest);
        if (!c) {
            rest.remove_prefix(1);
            continue;
        }
        if (!kept(*c)) continue;
        if (first == word.size()) first = from;
        last = word.size() - rest.size();
    }
    if (last <= first) return {};
    // An apostrophe at either end belongs to the word: l', 'tis, amor'.
    auto const apostrophe = [](std::string_view s) {
        auto const c = utf8::eat(s);
        return c && is_apostrophe(*c) && *c != 0x60 && *c != 0xB4;
    };
    if (last < word.size() && apostrophe(word.substr(last)))
        last += word[last] == '\''                                                                ? 1
                : word.substr(last).size() >= 3 && static_cast<unsigned char>(word[last]) >= 0xE0 ? 3
                                                                                                  : 2;
    if (first >= 1 && word[first - 1] == '\'')
        first -= 1;
    else if (first >= 3 && apostrophe(word.substr(first - 3, 3)) &&
             static_cast<unsigned char>(word[first - 3]) >= 0xE0)
        first -= 3;
    return word.substr(first, last - first);
}

} // namespace vowelway::diction
