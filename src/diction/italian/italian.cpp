// SPDX-License-Identifier: MIT
// Italian. Sources: M. Rogers and L. d'Arcangeli, "Italian" (Journal of the IPA 34, 2004, 117-121) for the
// vowels; B. Migliorini, C. Tagliavini, P. Fiorelli, Dizionario d'ortografia e di pronunzia (DOP), for
// spelling and syllables; both from memory. i and u without stress beside another vowel are glides; i after
// c, g, sc, gl before a vowel only spells; stressed i and u, and two of a, e, o, stay apart.
#include "diction/italian/italian.hpp"

#include "diction/syllables/grouping.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::diction {

namespace {

Vowel plain(char32_t c) {
    switch (c) {
    case U'a':
        return vowel_of("a");
    case U'e':
        return vowel_of("e");
    case U'o':
        return vowel_of("o");
    case U'u':
        return vowel_of("u");
    default:
        return vowel_of("i");
    }
}

struct Walk {
    Word const& word;
    std::optional<std::size_t> stressed;
    std::string spelled; // one byte for each letter, accents apart

    char32_t at(std::size_t i) const { return i < word.size() ? word[i].base : U'\0'; }
    bool vowel(std::size_t i) const {
        char32_t const c = at(i);
        return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u' || c == U'y';
    }
    bool liquid(char32_t c) const { return c == U'l' || c == U'r'; }
    bool stop(char32_t c) const {
        return std::u32string_view(U"bcdfgptv").find(c) != std::u32string_view::npos && c;
    }

    // The i of cia, gio, scie, glia: a sign for the consonant before it.
    bool spells(std::size_t i) const {
        if (at(i) != U'i' || i == 0 || !vowel(i + 1) || stressed == i) return false;
        char32_t const c = at(i - 1);
        if (c == U'c' || c == U'g') return true;
        return c == U'l' && i >= 2 && at(i - 2) == U'g';
    }

    std::string_view before(std::size_t i) const { return std::string_view(spelled).substr(0, i); }
    std::string_view from(std::size_t i) const { return std::string_view(spelled).substr(i); }
    bool first_vowel(std::size_t i) const {
        return before(i).find_first_of("aeiou") == std::string_view::npos;
    }

    bool final_pair(std::size_t i) const { return i + 2 >= word.size(); }

    // i that keeps its syllable before another vowel though it has no stress: after a consonant and l or r
    // (tri-on-fo), in prefixes (ri-, anti-, semi-, poli-), in the learned roots bio-, dia-, mio-, and in via,
    // viola.
    bool stays_i(std::size_t i) const {
        if (final_pair(i)) return false;
        auto const left = before(i);
        auto const right = from(i);
        auto const one_of = [](std::string_view s, std::initializer_list<std::string_view> set) {
            for (auto const x : set)
                if (s == x) return true;
            return false;
        };
        if (i >= 2 && liquid(at(i - 1)) && stop(at(i - 2))) return true;
        if (one_of(left, {"r", "ant", "arch", "avant", "mult", "plur", "pol", "per"})) return true;
        if (one_of(left, {"sem", "un", "b", "l", "t", "d"}) && right.starts_with("ia"))
            return left != "b" ? !(right.starts_with("iavol") || right.starts_with("ianc") ||
                                   right.starts_with("iacc") || right.starts_with("iagg") ||
                                   right.starts_with("iano"))
                               : right.starts_with("iass");
        if (left.ends_with("b") && !left.ends_with("bb") && right.starts_with("io") &&
            !right.starts_with("ion") && !right.starts_with("iosc"))
            return true;
        if (right.starts_with("ia") &&
            one_of(left, {"v", "inv", "rinv", "avv", "ravv", "dev", "trav", "fuorv", "sv"}))
            return true;
        if (right.starts_with("iol") && left.ends_with("v")) return true;
        if (!first_vowel(i)) return false;
        if (right.starts_with("io") && one_of(left, {"d", "m", "s", "t", "st"})) return true;
        return right.starts_with("iu") && one_of(left, {"d", "l"});
    }

    // u that keeps its syllable: everywhere but after q and g and in the diphthong uo (buono, cuore).
    bool stays_u(std::size_t i) const {
        if (i == 0) return false;
        char32_t const left = at(i - 1);
        if (left == U'q' || left == U'g') return false;
        if (at(i + 1) != U'o') return !(from(i).starts_with("uad") && left == U's'); // per-sua-de
        if (final_pair(i)) return true;                                              // con-ti-nu-o
        if (first_vowel(i) || stressed == i + 1) return from(i).starts_with("uos");
        return from(i).starts_with("uos") || left == U't' || left == U'd' || before(i).ends_with("ss") ||
               before(i).ends_with("vac");
    }

    // i or u that leads into the vowel after it.
    bool leads(std::size_t i) const {
        char32_t const c = at(i);
        if ((c != U'i' && c != U'u') || stressed == i || word[i].mark || !vowel(i + 1)) return false;
        if (at(i + 1) == c) return false;
        return c == U'i' ? !stays_i(i) : !stays_u(i);
    }

    // i or u that closes the vowel before it.
    bool follows(std::size_t i) const {
        char32_t const c = at(i), left = at(i - 1);
        if ((c != U'i' && c != U'u') || word[i].mark) return false;
        if (c == U'u') return left == U'e' || ((left == U'a' || left == U'o') && stressed != i);
        if (stressed == i) return false;
        bool const last = i + 1 == word.size();
        if (last) {
            bool const only =
                first_vowel(i - 1) || (i >= 2 && vowel(i - 2) && first_vowel(i - 2)); // mai, tuoi
            if (left == U'a' || only) return true;
            if (left == U'u') return false;
            if (left == U'e') return before(i).ends_with("re") || before(i).ends_with("se");
            return stressed != i - 1;
        }
        return left != U'e' && stressed == i - 1;
    }
};

} // namespace

Sounds italian(Word const& word) {
    Sounds out;
    auto const stress = italian_stress(word);
    auto const spelled = in_ascii(word);
    Walk const walk{word, stress.letter, spelled};
    std::vector<Sound> before;
    for (std::size_t i = 0; i < word.size(); ++i) {
        if (!walk.vowel(i)) {
            char32_t const c = word[i].base;
            if (is_letter(c) && (c > U'z' || c == U'k' || c == U'w' || c == U'x'))
                out.doubt = worded("a letter that is not Italian");
            continue;
        }
        if (walk.spells(i)) continue;
        if (walk.leads(i)) {
            before.push_back({glide_of(word[i].base == U'u' ? "u" : "i"), i});
            continue;
        }
        Nucleus nucleus{std::move(before), {plain(word[i].base), i}, {}, false, stress.letter == i, false};
        before.clear();
        if (nucleus.stressed && stress.open == true && word[i].base == U'e')
            nucleus.held.vowel = vowel_of("ɛ");
        if (nucleus.stressed && stress.open == true && word[i].base == U'o')
            nucleus.held.vowel = vowel_of("ɔ");
        if (walk.vowel(i + 1) && walk.follows(i + 1) && word[i + 1].base != word[i].base &&
            !walk.vowel(i + 2)) {
            nucleus.after.push_back({glide_of(word[i + 1].base == U'u' ? "u" : "i"), i + 1});
            ++i;
        }
        out.nuclei.push_back(std::move(nucleus));
    }
    return out;
}

} // namespace vowelway::diction
