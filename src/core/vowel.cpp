// SPDX-License-Identifier: MIT
#include "vowelway/core/vowel.hpp"

#include "core/text.hpp"
#include "core/utf8.hpp"
#include "core/vowel_symbols.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <iterator>
#include <optional>

namespace vowelway {

namespace {

// One diacritic of the chart: how it is written in both systems, and what it does.
struct Mark {
    char32_t ipa;      // combining or modifier character
    char32_t ipa_also; // another form of it, or 0
    std::string_view x_sampa;
    std::string_view x_sampa_also;
    void (*apply)(Vowel&);
    bool (*set)(Vowel const&);
};

// In the order in which they are written behind a symbol. Longer X-SAMPA forms stand before their prefixes.
constexpr Mark marks[] = {
    {U'\u031D', U'\u02D4', "_r", "", [](Vowel& v) { v.raised = 1; },
     [](Vowel const& v) { return v.raised > 0; }},
    {U'\u031E', U'\u02D5', "_o", "", [](Vowel& v) { v.raised = -1; },
     [](Vowel const& v) { return v.raised < 0; }},
    {U'\u031F', U'\u02D6', "_+", "", [](Vowel& v) { v.advanced = 1; },
     [](Vowel const& v) { return v.advanced > 0; }},
    {U'\u0320', U'\u02D7', "_-", "", [](Vowel& v) { v.advanced = -1; },
     [](Vowel const& v) { return v.advanced < 0; }},
    {U'\u0339', U'\u02D2', "_O", "", [](Vowel& v) { v.rounding = 1; },
     [](Vowel const& v) { return v.rounding > 0; }},
    {U'\u031C', U'\u02D3', "_c", "", [](Vowel& v) { v.rounding = -1; },
     [](Vowel const& v) { return v.rounding < 0; }},
    {U'\u0308', 0, "_\"", "", [](Vowel& v) { v.centralised = 1; },
     [](Vowel const& v) { return v.centralised == 1; }},
    {U'\u033D', 0, "_x", "", [](Vowel& v) { v.centralised = 2; },
     [](Vowel const& v) { return v.centralised == 2; }},
    {U'\u0318', 0, "_A", "", [](Vowel& v) { v.tongue_root = 1; },
     [](Vowel const& v) { return v.tongue_root > 0; }},
    {U'\u0319', 0, "_q", "", [](Vowel& v) { v.tongue_root = -1; },
     [](Vowel const& v) { return v.tongue_root < 0; }},
    {U'\u032F', U'\u0311', "_^", "", [](Vowel& v) { v.glide = true; },
     [](Vowel const& v) { return v.glide; }},
    {U'\u0303', 0, "_~", "~", [](Vowel& v) { v.nasal = true; }, [](Vowel const& v) { return v.nasal; }},
    {U'\u02DE', 0, "`", "", [](Vowel& v) { v.rhotic = true; }, [](Vowel const& v) { return v.rhotic; }},
    {U'\u0306', 0, "_X", "", [](Vowel& v) { v.length = VowelLength::extra_short; },
     [](Vowel const& v) { return v.length == VowelLength::extra_short; }},
    {U'\u02D1', 0, ":\\", "", [](Vowel& v) { v.length = VowelLength::half_long; },
     [](Vowel const& v) { return v.length == VowelLength::half_long; }},
    {U'\u02D0', 0, ":", "", [](Vowel& v) { v.length = VowelLength::long_; },
     [](Vowel const& v) { return v.length == VowelLength::long_; }},
};

// Characters that Unicode also has as one piece, or that stand for a symbol with a diacritic.
struct Composed {
    char32_t whole, base, mark;
};
constexpr Composed composed[] = {
    {U'ã', U'a', 0x303}, {U'ẽ', U'e', 0x303}, {U'ĩ', U'i', 0x303}, {U'õ', U'o', 0x303}, {U'ũ', U'u', 0x303},
    {U'ỹ', U'y', 0x303}, {U'ä', U'a', 0x308}, {U'ë', U'e', 0x308}, {U'ï', U'i', 0x308}, {U'ö', U'o', 0x308},
    {U'ü', U'u', 0x308}, {U'ÿ', U'y', 0x308}, {U'ă', U'a', 0x306}, {U'ĕ', U'e', 0x306}, {U'ĭ', U'i', 0x306},
    {U'ŏ', U'o', 0x306}, {U'ŭ', U'u', 0x306}, {U'ɚ', U'ə', 0x2DE}, {U'ɝ', U'ɜ', 0x2DE},
};

// Letters that look like IPA and are not: never taken silently, always named.
char32_t look_alike(char32_t c) {
    switch (c) {
    case U'ε':
        return U'ɛ';
    case U'α':
        return U'ɑ';
    case U'ɩ':
        return U'ɪ';
    case U'ɷ':
        return U'ʊ';
    case U'ʚ':
        return U'ɞ';
    case U'ә':
        return U'ə';
    case U'э':
        return U'ɛ';
    case U'а':
        return U'a';
    case U'о':
        return U'o';
    case U'ſ':
        return U'ɪ';
    default:
        return 0;
    }
}

// Applies a diacritic; false where it contradicts one that is there (raised and lowered at once).
bool apply(Mark const& mark, Vowel& vowel) {
    auto changed = vowel;
    mark.apply(changed);
    for (auto const& each : marks)
        if (each.set(vowel) && !each.set(changed)) return false;
    vowel = changed;
    return true;
}

// Applies the diacritics at the start of `s`.
void eat_ipa_marks(std::string_view& s, Vowel& vowel) {
    for (;;) {
        auto rest = s;
        auto const c = utf8::eat(rest);
        auto const found = std::find_if(std::begin(marks), std::end(marks), [&](Mark const& m) {
            return c && (m.ipa == *c || (m.ipa_also && m.ipa_also == *c));
        });
        if (found == std::end(marks) || !apply(*found, vowel)) return;
        s = rest;
    }
}

std::optional<Vowel> eat_ipa(std::string_view& s) {
    auto rest = s;
    auto const c = utf8::eat(rest);
    if (!c) return std::nullopt;
    Vowel vowel;
    if (auto const* plain = vowel_symbol(*c)) {
        vowel.base = plain->ipa;
    } else {
        auto const whole = std::find_if(std::begin(composed), std::end(composed),
                                        [&](Composed const& k) { return k.whole == *c; });
        if (whole == std::end(composed)) return std::nullopt;
        vowel.base = whole->base;
        std::string const mark = utf8::encode(whole->mark);
        std::string_view view = mark;
        eat_ipa_marks(view, vowel);
    }
    eat_ipa_marks(rest, vowel);
    s = rest;
    return vowel;
}

std::optional<Vowel> eat_x_sampa(std::string_view& s) {
    VowelSymbol const* best = nullptr;
    for (auto const& candidate : vowel_table)
        if (s.starts_with(candidate.x_sampa) && (!best || candidate.x_sampa.size() > best->x_sampa.size()))
            best = &candidate;
    if (!best) return std::nullopt;
    s.remove_prefix(best->x_sampa.size());
    Vowel vowel{.base = best->ipa};
    for (bool again = true; again;) {
        again = false;
        for (auto const& mark : marks) {
            auto rest = s;
            if (!text::eat(rest, mark.x_sampa) &&
                (mark.x_sampa_also.empty() || !text::eat(rest, mark.x_sampa_also)))
                continue;
            if (!apply(mark, vowel)) break;
            s = rest;
            again = true;
            break;
        }
    }
    return vowel;
}

std::string_view without_brackets(std::string_view s) {
    s = text::trim(s);
    if (s.size() >= 2 && ((s.front() == '/' && s.back() == '/') || (s.front() == '[' && s.back() == ']')))
        s = text::trim(s.substr(1, s.size() - 2));
    return s;
}

InputError unknown_vowel(std::string_view text, std::string_view rest) {
    auto remedy = worded(
        "write one symbol of the IPA vowel chart with its diacritics (ɛ, a̝, õ) or X-SAMPA (E, a_r, o~)");
    auto view = rest;
    auto const c = utf8::eat(view);
    if (c && look_alike(*c))
        remedy = worded("the letter {0} only looks like an IPA letter; write {1}", utf8::encode(*c),
                        utf8::encode(look_alike(*c)));
    else if (c)
        remedy = worded("\"{0}\" is not known; {1}", utf8::encode(*c), remedy);
    return InputError(worded("\"{0}\" is not a vowel", text), remedy);
}

template <class Eat> Vowel parse_whole(std::string_view text, Eat eat) {
    auto s = without_brackets(text);
    auto const vowel = eat(s);
    if (!vowel || !s.empty()) throw unknown_vowel(text, s);
    return *vowel;
}

} // namespace

std::string Vowel::ipa() const {
    std::string out = utf8::encode(base);
    for (auto const& mark : marks)
        if (mark.set(*this)) out += utf8::encode(mark.ipa);
    return out;
}

std::string Vowel::x_sampa() const {
    std::string out(symbol_of(*this).x_sampa);
    for (auto const& mark : marks)
        if (mark.set(*this)) out += mark.x_sampa;
    return out;
}

Vowel Vowel::quality() const {
    auto out = *this;
    out.length = VowelLength::normal;
    out.glide = false;
    return out;
}

Vowel parse_ipa(std::string_view text) { return parse_whole(text, eat_ipa); }
Vowel parse_x_sampa(std::string_view text) { return parse_whole(text, eat_x_sampa); }

Vowel parse_vowel(std::string_view text) {
    auto s = without_brackets(text);
    if (auto const vowel = eat_ipa(s); vowel && s.empty()) return *vowel;
    auto x = without_brackets(text);
    if (auto const vowel = eat_x_sampa(x); vowel && x.empty()) return *vowel;
    throw unknown_vowel(text, s.size() < x.size() ? s : x);
}

std::vector<Vowel> parse_vowels(std::string_view text) {
    std::vector<Vowel> out;
    while (!(text = text::trim(text)).empty()) {
        auto const end = text.find_first_of(" ,;\t\n");
        auto const word = text.substr(0, end);
        if (!word.empty()) out.push_back(parse_vowel(word));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    return out;
}

std::optional<VowelPrefix> vowel_prefix(std::string_view ipa) {
    auto s = ipa;
    auto const vowel = eat_ipa(s);
    if (!vowel) return std::nullopt;
    return VowelPrefix{*vowel, ipa.size() - s.size()};
}

} // namespace vowelway
