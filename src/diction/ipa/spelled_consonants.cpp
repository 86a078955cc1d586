// SPDX-License-Identifier: MIT
// Consonants that spelling tells. Sources, from memory: Italian: M. Rogers and L. d'Arcangeli (J. IPA 34,
// 2004); Latin: Liber Usualis (1934), rules of pronunciation; Spanish: Real Academia Espanola, Ortografia
// (2010), in the Castilian standard (θ, ʎ).
#include "diction/ipa/consonants.hpp"
#include "diction/ipa/letters_between.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

bool in(char32_t c, std::u32string_view set) { return c && set.find(c) != std::u32string_view::npos; }

/// Italian words with a voiced z, by a part of them (Dizionario d'ortografia e di pronunzia, from memory).
constexpr std::string_view voiced_z[] = {"zeffir",   "zefir",   "zel",    "zero",    "mezz",  "azzurr",
                                         "orizzont", "bizzarr", "rozz",   "zanzar",  "gazz",  "brezz",
                                         "lezz",     "zaffir",  "romanz", "donzell", "pranz", "orzo",
                                         "dozzin",   "olezz",   "gazel"};

class Spelling : private LettersBetween {
  public:
    Spelling(Reading const& reading, Language language) : LettersBetween(reading), language_(language) {}

    Clusters read() {
        return read_with([this](std::size_t i) {
            if (is_vowel_letter(at(i)) || !is_letter(at(i))) return i + 1;
            return language_ == Language::latin     ? latin(i)
                   : language_ == Language::spanish ? spanish(i)
                                                    : italian(i);
        });
    }

  private:
    bool front(std::size_t i) const { return in(at(i), U"eiyæœ"); }
    bool between(std::size_t i) const { return i > 0 && vowel(i - 1) && vowel(i + 1); }
    std::size_t twice(std::string_view first, std::string_view second, std::size_t next) {
        say(first, next);
        return say(second, next);
    }

    // ɲ, ʎ and ʃ are long between vowels.
    std::size_t long_between(std::size_t i, std::string_view ipa, std::size_t next) {
        return i > 0 && vowel(i - 1) ? twice(ipa, ipa, next) : say(ipa, next);
    }

    std::size_t plain(std::size_t i) {
        char32_t const c = at(i);
        static constexpr std::string_view same = "bdfklmnprstv";
        if (c < 0x80 && same.find(static_cast<char>(c)) != std::string_view::npos)
            return say(std::string(1, static_cast<char>(c)), i + 1);
        if (c == U'g') return say("ɡ", i + 1);
        if (c == U'c' || c == U'q') return say("k", i + 1);
        if (c == U'j') return say("j", i + 1);
        if (c == U'w') return say("v", i + 1);
        if (c == U'x') return twice("k", "s", i + 1);
        if (c == U'z') return say("dz", i + 1);
        return i + 1; // h and letters of other languages
    }

    std::size_t nasal(std::size_t i) {
        return say(in(at(i + 1), U"cgqkx") && !soft(i + 1) ? "ŋ" : "n", i + 1);
    }
    bool soft(std::size_t i) const {
        return (at(i) == U'c' || at(i) == U'g') && (front(i + 1) || at(i + 1) == U'n');
    }

    std::size_t italian(std::size_t i) {
        char32_t const c = at(i), next = at(i + 1);
        bool const twin = next == c;
        if (c == U'c') {
            if (twin && front(i + 2)) return twice("t", "tʃ", i + 2);
            if (next == U'q') return twice("k", "k", i + 2);
            if (next == U'h') return say("k", i + 2);
            return front(i + 1) ? say("tʃ", i + 1) : say("k", i + 1);
        }
        if (c == U'g') return italian_g(i);
        if (c == U's') {
            if (next == U'c' && front(i + 2)) return long_between(i, "ʃ", i + 2);
            bool const voiced = (between(i) && i > 0) || in(next, U"bdgmnrlv");
            return say(voiced ? "z" : "s", i + 1);
        }
        if (c == U'z') {
            bool const soft = std::any_of(std::begin(voiced_z), std::end(voiced_z), [&](auto const part) {
                return spelled_.find(part) != std::string::npos;
            });
            if (twin) return soft ? twice("d", "dz", i + 2) : twice("t", "ts", i + 2);
            return say(soft ? "dz" : "ts", i + 1);
        }
        return c == U'n' ? nasal(i) : plain(i);
    }

    std::size_t italian_g(std::size_t i) {
        char32_t const next = at(i + 1);
        if (next == U'g' && front(i + 2)) return twice("d", "dʒ", i + 2);
        if (next == U'h') return say("ɡ", i + 2);
        if (next == U'n') return long_between(i, "ɲ", i + 2);
        bool const hard_gl = spelled_.find("negli") == 0 && spelled_.size() > 5;
        if (next == U'l' && at(i + 2) == U'\'') return say("ʎ", i + 2);
        if (next == U'l' && at(i + 2) == U'i' && !hard_gl && !spelled_.starts_with("glicin") &&
            !spelled_.starts_with("angli") && !spelled_.starts_with("glori"))
            return long_between(i, "ʎ", i + 2);
        return front(i + 1) ? say("dʒ", i + 1) : say("ɡ", i + 1);
    }

    bool latin_front(std::size_t i) const {
        return front(i) || ((at(i) == U'a' || at(i) == U'o') && at(i + 1) == U'e');
    }

    std::size_t latin(std::size_t i) {
        char32_t const c = at(i), next = at(i + 1);
        if (c == U'c') {
            if (next == U'c' && latin_front(i + 2)) return twice("t", "tʃ", i + 2);
            if (next == U'h') return say("k", i + 2);
            return say(latin_front(i + 1) ? "tʃ" : "k", i + 1);
        }
        if (c == U'g') return next == U'n' ? say("ɲ", i + 2) : say(latin_front(i + 1) ? "dʒ" : "ɡ", i + 1);
        if (c == U's') {
            if (next == U'c' && latin_front(i + 2)) return say("ʃ", i + 2);
            return say(between(i) ? "z" : "s", i + 1);
        }
        if (c == U't') {
            if (next == U'h') return say("t", i + 2);
            bool const hard = i == 0 || in(at(i - 1), U"stx");
            return say(!hard && next == U'i' && vowel(i + 2) ? "ts" : "t", i + 1);
        }
        if (c == U'p' && next == U'h') return say("f", i + 2);
        if (c == U'r' && next == U'h') return say("r", i + 2);
        if (c == U'x' && i == 1 && at(0) == U'e') {
            if (vowel(i + 1)) return twice("ɡ", "z", i + 1);
            if (next == U'c' && latin_front(i + 2)) return twice("k", "ʃ", i + 2);
            if (next == U's') return twice("k", "s", i + 2);
        }
        bool const mihi = c == U'h' && (spelled_ == "mihi" || spelled_.starts_with("nihil"));
        if (mihi) return say("k", i + 1);
        return c == U'n' ? nasal(i) : plain(i);
    }

    std::size_t spanish(std::size_t i) {
        char32_t const c = at(i), next = at(i + 1);
        if (c == U'c') {
            if (next == U'h') return say("tʃ", i + 2);
            return say(front(i + 1) ? "θ" : "k", i + 1);
        }
        if (c == U'z') return say("θ", i + 1);
        if (c == U'q') return say("k", i + 1);
        if (c == U'j' || (c == U'g' && front(i + 1))) return say("x", i + 1);
        if (c == U'g') return say(i > 0 && (vowel(i - 1) || in(at(i - 1), U"lrs")) ? "ɣ" : "ɡ", i + 1);
        if (c == U'b' || c == U'v') return say(i > 0 && !in(at(i - 1), U"mn") ? "β" : "b", i + 1);
        if (c == U'd') return say(i > 0 && !in(at(i - 1), U"nl") ? "ð" : "d", i + 1);
        if (c == U'l' && next == U'l') return say("ʎ", i + 2);
        if (c == U'n' && word_[i].mark == mark::tilde) return say("ɲ", i + 1);
        if (c == U'n') return say(in(next, U"cgqjk") && !(next == U'c' && front(i + 2)) ? "ŋ" : "n", i + 1);
        if (c == U'r') {
            if (next == U'r') return say("r", i + 2);
            return say(i == 0 || in(at(i - 1), U"nls") ? "r" : "ɾ", i + 1);
        }
        if (c == U'y') return say("j", i + 1);
        return plain(i);
    }

    Language language_;
};

} // namespace

Clusters spelled_consonants(Reading const& reading, Language language) {
    return Spelling(reading, language).read();
}

} // namespace vowelway::diction
