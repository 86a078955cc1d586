// SPDX-License-Identifier: MIT
// Source: P. Fouche, Traite de prononciation francaise (1956), and N. Catach, L'orthographe francaise (1980),
// for the values of the letters; from memory.
#include "diction/french/french.hpp"
#include "diction/syllables/grouping.hpp"

namespace vowelway::diction {

namespace {

class Reader {
  public:
    explicit Reader(Word const& word) : word_(word), size_(word.size()) {
        while (size_ > 0 && !is_letter(word[size_ - 1].base)) --size_;
    }

    std::vector<Nucleus> read() {
        for (std::size_t i = 0; i < size_;) i = vowel(i) ? step(i) : i + 1;
        return std::move(nuclei_);
    }

  private:
    char32_t at(std::size_t i) const { return i < size_ ? word_[i].base : U'\0'; }
    char32_t mark(std::size_t i) const { return i < size_ ? word_[i].mark : U'\0'; }
    bool vowel(std::size_t i) const { return i < size_ && is_vowel_letter(at(i)); }
    bool consonant(std::size_t i) const { return i < size_ && is_letter(at(i)) && !vowel(i); }
    bool starts(std::size_t i, std::u32string_view letters) const {
        for (std::size_t k = 0; k < letters.size(); ++k)
            if (at(i + k) != letters[k] || mark(i + k) == mark::diaeresis) return false;
        return true;
    }
    // n or m that makes the vowel before it nasal: no vowel, n, m or h + vowel behind it.
    bool nasal(std::size_t n) const {
        if (at(n) != U'n' && at(n) != U'm') return false;
        char32_t const next = at(n + 1);
        return !vowel(n + 1) && next != U'n' && next != U'm' && !(next == U'h' && vowel(n + 2));
    }
    bool cluster_before(std::size_t i) const {
        return i >= 2 && (at(i - 1) == U'l' || at(i - 1) == U'r') && consonant(i - 2) &&
               at(i - 2) != at(i - 1);
    }

    std::size_t add(std::string_view ipa, std::size_t letter, std::size_t next) {
        nuclei_.push_back({std::move(before_), {vowel_of(ipa), letter}, {}});
        before_.clear();
        return next;
    }
    void lead(std::string_view ipa, std::size_t letter) { before_.push_back({glide_of(ipa), letter}); }

    std::size_t step(std::size_t i) {
        if (mark(i) == mark::diaeresis) return single(i);
        if (starts(i, U"eau")) return add("o", i + 1, i + 3);
        if (starts(i, U"oeu") || starts(i, U"œu")) return round(i, at(i) == U'œ' ? i + 2 : i + 3);
        if (starts(i, U"eu")) return round(i, i + 2);
        if (starts(i, U"oin") && nasal(i + 2)) {
            lead("u", i);
            return add("ɛ̃", i + 1, i + 3);
        }
        if (starts(i, U"oi") || starts(i, U"oy")) {
            lead("u", i);
            return add("a", i + 1, i + 2);
        }
        if (starts(i, U"ou")) {
            if (vowel(i + 2) && at(i + 2) != U'e' && !cluster_before(i)) {
                lead("u", i);
                return i + 2;
            }
            return add("u", i + 1, i + 2);
        }
        if (starts(i, U"au")) return add("o", i, i + 2);
        bool const ai = starts(i, U"ai") || starts(i, U"ei") || starts(i, U"ay") || starts(i, U"ey");
        if (ai && nasal(i + 2)) return add("ɛ̃", i, i + 3);
        if (ai) return add("ɛ", i, i + 2);
        return single(i);
    }

    // eu, œu: closed at the end and before s, z, t, x; else open.
    std::size_t round(std::size_t i, std::size_t next) {
        char32_t const c = at(next);
        bool const closed = !c || (next + 1 >= size_) ? c != U'r' && c != U'f' && c != U'l'
                                                      : (c == U's' || c == U'z' || c == U't' || c == U'x');
        return add(closed ? "ø" : "œ", i, next);
    }

    std::size_t single(std::size_t i) {
        char32_t const c = at(i), m = mark(i);
        switch (c) {
        case U'a':
            return !m && nasal(i + 1) ? add("ɑ̃", i, i + 2) : add("a", i, i + 1);
        case U'o':
            return !m && nasal(i + 1) ? add("ɔ̃", i, i + 2) : add("o", i, i + 1);
        case U'œ':
        case U'æ':
            return add("e", i, i + 1);
        case U'u':
            return u(i);
        case U'i':
        case U'y':
        case U'ı':
            return close_front(i);
        default:
            return e(i);
        }
    }

    std::size_t u(std::size_t i) {
        char32_t const before = i > 0 ? at(i - 1) : U'\0';
        if (before == U'q' && vowel(i + 1)) return i + 1;
        if (before == U'g' && (at(i + 1) == U'e' || at(i + 1) == U'i' || at(i + 1) == U'y') &&
            mark(i + 1) != mark::diaeresis)
            return i + 1;
        if (!mark(i) && nasal(i + 1)) return add(i + 2 >= size_ && at(i + 1) == U'm' ? "ɔ" : "œ̃", i, i + 2);
        if (vowel(i + 1) && (at(i + 1) == U'i' || !cluster_before(i)) &&
            !(at(i + 1) == U'e' && i + 2 >= size_)) {
            lead("y", i);
            return i + 1;
        }
        return add("y", i, i + 1);
    }

    std::size_t close_front(std::size_t i) {
        if (mark(i) != mark::diaeresis && nasal(i + 1)) return add("ɛ̃", i, i + 2);
        // il, ill after a vowel: soleil, feuille; a y or i between vowels
        bool const after_vowel = !nuclei_.empty() && i > 0 && vowel(i - 1) && before_.empty();
        if (after_vowel && at(i + 1) == U'l' && (i + 2 >= size_ || at(i + 2) == U'l'))
            return i + (at(i + 2) == U'l' ? 3 : 2);
        bool const leads =
            vowel(i + 1) && !cluster_before(i) &&
            !(at(i + 1) == U'e' && !mark(i + 1) && (i + 2 >= size_ || (at(i + 2) == U's' && i + 3 >= size_)));
        if (leads) {
            lead("i", i);
            return i + 1;
        }
        return add("i", i, i + 1);
    }

    std::size_t e(std::size_t i) {
        if (mark(i) == mark::acute) return add("e", i, i + 1);
        if (mark(i) && mark(i) != mark::diaeresis) return add("ɛ", i, i + 1);
        if (mark(i)) return add("ɛ", i, i + 1);
        if (i + 1 >= size_ || (at(i + 1) == U's' && i + 2 >= size_))
            return nuclei_.empty() ? add("ə", i, size_) : size_; // mute
        bool const last_letters = i + 2 == size_;
        if (last_letters && (at(i + 1) == U'r' || at(i + 1) == U'z')) return add("e", i, size_);
        if (last_letters &&
            (at(i + 1) == U't' || at(i + 1) == U'l' || at(i + 1) == U'c' || at(i + 1) == U'f'))
            return add("ɛ", i, size_);
        bool const ent = i + 3 == size_ && at(i + 1) == U'n' && at(i + 2) == U't';
        if (ent && !nuclei_.empty() && !(i > 0 && (at(i - 1) == U'm' || at(i - 1) == U'i'))) return size_;
        if (nasal(i + 1)) {
            bool const after_i = i > 0 && (at(i - 1) == U'i' || at(i - 1) == U'y' ||
                                           (at(i - 1) == U'e' && mark(i - 1) == mark::acute));
            return add(after_i && at(i + 2) != U't' ? "ɛ̃" : "ɑ̃", i, i + 2);
        }
        if (vowel(i + 1)) return i + 1; // "geai", "paye-": written only
        if (at(i + 1) == U'm' && at(i + 2) == U'm' && i > 0) return add("a", i, i + 1); // femme, -emment
        if (at(i + 1) == U'x') return add("ɛ", i, i + 1);
        if (at(i + 1) == at(i + 2)) return add(at(i + 1) == U's' || at(i + 1) == U'f' ? "e" : "ɛ", i, i + 1);
        bool const digraph =
            (at(i + 2) == U'h' && (at(i + 1) == U'c' || at(i + 1) == U't' || at(i + 1) == U'p')) ||
            (at(i + 1) == U'g' && at(i + 2) == U'n');
        bool const onset = (at(i + 2) == U'l' || at(i + 2) == U'r') && at(i + 1) != U'l' && at(i + 1) != U'r';
        if (consonant(i + 1) && consonant(i + 2) && !digraph && !onset) return add("ɛ", i, i + 1);
        return add("ə", i, i + 1);
    }

    Word const& word_;
    std::size_t size_;
    std::vector<Nucleus> nuclei_;
    std::vector<Sound> before_;
};

} // namespace

Sounds french_by_spelling(Word const& word) {
    Sounds out;
    out.nuclei = Reader(word).read();
    return out;
}

} // namespace vowelway::diction
