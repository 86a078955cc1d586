// SPDX-License-Identifier: MIT
// Ecclesiastical Latin as sung in the Italian manner. Source: Liber Usualis, "Rules for interpretation: the
// pronunciation of liturgical Latin" (Solesmes, 1934), from memory: ae and oe are one vowel, e; au, eu and ay
// are syllables of one chord with the first vowel held; other vowels that meet stay apart; i between vowels
// or before a vowel at the beginning of a word is j; u after q, and after ng before a vowel, is w; y is i.
#include "diction/syllables/grouping.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::diction {

namespace {

// Open e and o throughout is the choir-school custom; the quality is written e, o here and left to the
// singer's own vowel: lexica and handbooks disagree.
std::optional<Vowel> plain_in_latin(char32_t c) {
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

// Names and loans in which the a or o and the e are two syllables: Is-ra-el, No-e, a-er, po-e-ta. Spelled as
// in the Vulgate (Clementine edition), from memory. All words in -ael, -oel and -oe are such names.
bool parts_ae_oe(std::string_view word) {
    for (auto const ending : {"ael", "oel", "oe"})
        if (word.ends_with(ending)) return true;
    for (auto const name : {"israel", "michael", "raphael", "ismael", "nathanael", "misael", "noem", "poet",
                            "poem", "poes", "coerc", "coeg", "coeun", "aere", "aeri"})
        if (word.starts_with(name)) return true;
    return word == "aer" || word == "aera";
}

// A word while it is read from left to right.
struct Latin {
    Word const& word;
    std::string spelled;            // as in_ascii
    std::vector<Sound> before = {}; // glides that wait for their vowel

    explicit Latin(Word const& letters) : word(letters), spelled(in_ascii(letters)) {}

    char32_t base(std::size_t i) const { return i < word.size() ? word[i].base : U'\0'; }
    bool vowel(std::size_t i) const { return i < word.size() && plain_in_latin(word[i].base).has_value(); }
    bool apart(std::size_t i) const { return i < word.size() && word[i].mark == mark::diaeresis; }
    std::string_view from(std::size_t i) const { return std::string_view(spelled).substr(i); }

    // u after q, after ng, and in some stems after s.
    bool u_glide(std::size_t i) const {
        if (base(i) != U'u' || !vowel(i + 1) || i == 0) return false;
        if (word[i].mark == mark::diaeresis || word[i].mark == mark::macron) return false;
        char32_t const previous = base(i - 1);
        return previous == U'q' || (previous == U'g' && i >= 2 && base(i - 2) == U'n') ||
               (previous == U's' && soft_u(from(i - 1)));
    }

    // i at the beginning, between vowels, and in some stems after a prefix.
    bool i_glide(std::size_t i) const {
        bool const between = i > 0 && vowel(i - 1) && before.empty();
        return base(i) == U'i' && vowel(i + 1) && !word[i].mark && base(i + 1) != U'i' &&
               (i == 0 || between ||
                (prefix(std::string_view(spelled).substr(0, i)) && stem_after_prefix(from(i))));
    }

    // ae and oe.
    bool digraph(std::size_t i) const {
        return (base(i) == U'a' || base(i) == U'o') && base(i + 1) == U'e' && !apart(i + 1) &&
               !parts_ae_oe(spelled) && word[i + 1].mark != mark::macron && word[i + 1].mark != mark::breve &&
               word[i].mark != mark::macron;
    }

    // au and eu, but not the eu of De-us, me-us, me-um.
    bool falls(std::size_t i) const {
        bool const written = base(i + 1) == U'u' && (base(i) == U'a' || base(i) == U'e') && !apart(i + 1) &&
                             !word[i + 1].mark && word[i].mark != mark::macron;
        if (!written || base(i) == U'a') return written;
        bool const ending = i + 3 == word.size() && (base(i + 2) == U's' || base(i + 2) == U'm');
        return i + 2 < word.size() && !ending;
    }

    // The nucleus of the vowel at i, which moves to the last letter it takes.
    Nucleus nucleus_at(std::size_t& i) {
        Nucleus nucleus{std::move(before), {*plain_in_latin(base(i)), i}, {}};
        before.clear();
        if (digraph(i)) {
            nucleus.held = {vowel_of("e"), i};
            ++i;
        } else if (falls(i)) {
            nucleus.after.push_back({glide_of("u"), i + 1});
            ++i;
        }
        return nucleus;
    }
};

} // namespace

Sounds latin(Word const& word) {
    Sounds out;
    Latin reader(word);
    if (reader.spelled == "cui" || reader.spelled == "huic") { // one syllable, u held
        std::size_t const u = reader.spelled.find('u');
        out.nuclei.push_back({{}, {vowel_of("u"), u}, {{glide_of("i"), u + 1}}, false, true, false});
        return out;
    }
    for (std::size_t i = 0; i < word.size(); ++i) {
        char32_t const letter = word[i].base;
        if (!reader.vowel(i)) {
            if (is_letter(letter) && !(letter >= U'a' && letter <= U'z'))
                out.doubt = worded("a letter that is not Latin");
        } else if (reader.u_glide(i) || reader.i_glide(i)) {
            reader.before.push_back({glide_of(letter == U'u' ? "u" : "i"), i});
        } else {
            out.nuclei.push_back(reader.nucleus_at(i));
        }
    }
    if (out.nuclei.empty() && !reader.before.empty()) { // "i" alone
        reader.before.front().vowel.glide = false;
        out.nuclei.push_back({{}, reader.before.front(), {}});
    }
    return out;
}

} // namespace vowelway::diction
