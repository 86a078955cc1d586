// SPDX-License-Identifier: MIT
// Ecclesiastical Latin as sung in the Italian manner. Source: Liber Usualis, "Rules for interpretation: the
// pronunciation of liturgical Latin" (Solesmes, 1934), from memory: ae and oe are one vowel, e; au, eu and ay
// are syllables of one chord with the first vowel held; other vowels that meet stay apart; i between vowels
// or before a vowel at the beginning of a word is j; u after q, and after ng before a vowel, is w; y is i.
#include "diction/syllables/grouping.hpp"

namespace vowelway::diction {

namespace {

// Open e and o throughout is the choir-school custom; the quality is written e, o here and left to the
// singer's own vowel: lexica and handbooks disagree.
std::optional<Vowel> plain(char32_t c) {
    switch (c) {
    case U'a':
        return vowel_of("a");
    case U'e':
    case U'æ':
    case U'œ':
        return vowel_of("e");
    case U'i':
    case U'y':
        return vowel_of("i");
    case U'o':
        return vowel_of("o");
    case U'u':
        return vowel_of("u");
    default:
        return std::nullopt;
    }
}

// i is j after a prefix that ends in a consonant, in the verbs iacio, iudico, iungo, iuro, iuvo and their
// kin: "in-iu-ri-a", "ad-iu-to".
bool stem_after_prefix(std::string_view from) {
    for (auto const stem : {"iac", "iect", "iud", "iug", "iun", "iur", "iust", "iut", "iuv"})
        if (from.starts_with(stem)) return true;
    return false;
}

bool prefix(std::string_view before) {
    for (auto const p : {"ab", "ad", "con", "de", "dis", "ex", "in", "inter", "ob", "per", "prae", "pre",
                         "sub", "super", "trans"})
        if (before == p) return true;
    return false;
}

// u is w in the stems of suavis, suadeo, suesco; not in suus.
bool soft_u(std::string_view from) {
    for (auto const stem : {"suad", "suasi", "suaso", "suav", "suesc", "suet", "suev"})
        if (from.starts_with(stem)) return true;
    return false;
}

} // namespace

Sounds latin(Word const& word) {
    Sounds out;
    std::size_t const n = word.size();
    auto const base = [&](std::size_t i) { return i < n ? word[i].base : U'\0'; };
    auto const vowel = [&](std::size_t i) { return i < n && plain(word[i].base).has_value(); };
    auto const apart = [&](std::size_t i) { return i < n && word[i].mark == mark::diaeresis; };
    std::string plain_letters;
    for (auto const& letter : word)
        plain_letters += letter.base < 0x80 ? static_cast<char>(letter.base) : '?';
    std::string_view const spelled = plain_letters;
    if (spelled == "cui" || spelled == "huic") { // one syllable, u held
        std::size_t const u = spelled.find('u');
        out.nuclei.push_back({{}, {vowel_of("u"), u}, {{glide_of("i"), u + 1}}, false, true, false});
        return out;
    }
    std::vector<Sound> before;
    for (std::size_t i = 0; i < n; ++i) {
        auto const v = plain(base(i));
        if (!v) {
            if (is_letter(base(i)) && !(base(i) >= U'a' && base(i) <= U'z'))
                out.doubt = "a letter that is not Latin";
            continue;
        }
        char32_t const previous = i > 0 ? base(i - 1) : U'\0';
        bool const u_glide = base(i) == U'u' && vowel(i + 1) && word[i].mark != mark::diaeresis &&
                             word[i].mark != mark::macron &&
                             (previous == U'q' || (previous == U'g' && i >= 2 && base(i - 2) == U'n') ||
                              (previous == U's' && soft_u(spelled.substr(i - 1))));
        bool const between = i > 0 && vowel(i - 1) && before.empty();
        bool const i_glide =
            base(i) == U'i' && vowel(i + 1) && !word[i].mark && base(i + 1) != U'i' &&
            (i == 0 || between || (prefix(spelled.substr(0, i)) && stem_after_prefix(spelled.substr(i))));
        if (u_glide || i_glide) {
            before.push_back({glide_of(u_glide ? "u" : "i"), i});
            continue;
        }
        Nucleus nucleus{std::move(before), {*v, i}, {}};
        before.clear();
        char32_t const next = base(i + 1);
        bool const digraph = (base(i) == U'a' || base(i) == U'o') && next == U'e' && !apart(i + 1) &&
                             word[i + 1].mark != mark::macron && word[i + 1].mark != mark::breve &&
                             word[i].mark != mark::macron;
        if (digraph) {
            nucleus.held = {vowel_of("e"), i};
            ++i;
        } else if (next == U'u' && (base(i) == U'a' || base(i) == U'e') && !apart(i + 1) &&
                   !word[i + 1].mark && word[i].mark != mark::macron) {
            bool const closes =
                i + 2 < n ? true : base(i) == U'a'; // De-us, me-us: eu before a last s stays apart
            bool const ending =
                base(i) == U'e' && (i + 3 == n && (base(i + 2) == U's' || base(i + 2) == U'm'));
            if (closes && !ending) {
                nucleus.after.push_back({glide_of("u"), i + 1});
                ++i;
            }
        }
        out.nuclei.push_back(std::move(nucleus));
    }
    if (out.nuclei.empty() && !before.empty()) { // "i" alone
        before.front().vowel.glide = false;
        out.nuclei.push_back({{}, before.front(), {}});
    }
    return out;
}

} // namespace vowelway::diction
