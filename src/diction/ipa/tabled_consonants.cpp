// SPDX-License-Identifier: MIT
// Consonants of languages that a short table of letters tells: Latin in German use, Danish (whose r, v and g
// the synthesiser swallows, as speech does and song does not), Hebrew and Church Slavonic in Latin letters.
// Sources, from memory: T. Siebs, Deutsche Aussprache (1969); H. Basbøll, The Phonology of Danish (2005); A.
// Laufer, "Hebrew", Handbook of the IPA (1999); the tables of transliteration of the Library of Congress
// (ALA-LC).
#include "diction/ipa/consonants.hpp"
#include "diction/ipa/letters_between.hpp"

#include <span>

namespace vowelway::diction {

namespace {

struct LettersAndSounds {
    std::string_view letters, first, second = {};
};

// Longer ones before those they begin with.
constexpr LettersAndSounds hebrew_letters[] = {
    {"tch", "t", "x"}, {"tsh", "tʃ"}, {"sh", "ʃ"}, {"ch", "x"},     {"kh", "x"}, {"tz", "ts"}, {"ts", "ts"},
    {"zh", "ʒ"},       {"th", "t"},   {"ph", "f"}, {"bh", "v"},     {"dh", "d"}, {"gh", "ɡ"},  {"b", "b"},
    {"c", "k"},        {"d", "d"},    {"f", "f"},  {"g", "ɡ"},      {"h", "h"},  {"j", "j"},   {"k", "k"},
    {"l", "l"},        {"m", "m"},    {"n", "n"},  {"p", "p"},      {"q", "k"},  {"r", "r"},   {"s", "s"},
    {"t", "t"},        {"v", "v"},    {"w", "v"},  {"x", "k", "s"}, {"y", "j"},  {"z", "z"}};
constexpr LettersAndSounds slavonic_letters[] = {
    {"shch", "ʃ", "tʃ"}, {"sch", "ʃ", "tʃ"}, {"zh", "ʒ"}, {"kh", "x"}, {"ch", "tʃ"}, {"sh", "ʃ"},
    {"ts", "ts"},        {"b", "b"},         {"c", "ts"}, {"d", "d"},  {"f", "f"},   {"g", "ɡ"},
    {"h", "x"},          {"j", "j"},         {"k", "k"},  {"l", "l"},  {"m", "m"},   {"n", "n"},
    {"p", "p"},          {"q", "k"},         {"r", "r"},  {"s", "s"},  {"t", "t"},   {"v", "v"},
    {"w", "v"},          {"x", "x"},         {"y", "j"},  {"z", "z"}};
constexpr LettersAndSounds german_latin_letters[] = {
    {"ph", "f"}, {"th", "t"}, {"rh", "r"}, {"qu", "k", "v"}, {"b", "b"}, {"d", "d"},      {"f", "f"},
    {"g", "ɡ"},  {"h", "h"},  {"j", "j"},  {"k", "k"},       {"l", "l"}, {"m", "m"},      {"n", "n"},
    {"p", "p"},  {"q", "k"},  {"r", "r"},  {"v", "v"},       {"w", "v"}, {"x", "k", "s"}, {"z", "ts"}};

constexpr LettersAndSounds danish_letters[] = {
    {"ch", "k"}, {"ph", "f"}, {"sj", "ʃ"}, {"th", "t"}, {"b", "b"}, {"d", "d"},      {"f", "f"}, {"g", "ɡ"},
    {"h", "h"},  {"j", "j"},  {"k", "k"},  {"l", "l"},  {"m", "m"}, {"n", "n"},      {"p", "p"}, {"q", "k"},
    {"r", "r"},  {"s", "s"},  {"t", "t"},  {"v", "v"},  {"w", "v"}, {"x", "k", "s"}, {"z", "s"}};

std::span<LettersAndSounds const> table_of(Language language) {
    switch (language) {
    case Language::hebrew:
        return hebrew_letters;
    case Language::church_slavonic:
        return slavonic_letters;
    case Language::danish:
        return danish_letters;
    default:
        return german_latin_letters;
    }
}

class Tabled : private LettersBetween {
  public:
    Tabled(Reading const& reading, Language language) : LettersBetween(reading), language_(language) {}

    Clusters read() {
        return read_with([this](std::size_t i) { return step(i); });
    }

  private:
    bool front(std::size_t i) const {
        char32_t const c = at(i);
        return c == U'e' || c == U'i' || c == U'y' || c == U'æ' || c == U'œ' ||
               ((c == U'a' || c == U'o') && at(i + 1) == U'e');
    }

    std::size_t step(std::size_t i) {
        if (word_[i].mark == mark::caron) { // č š ž
            char32_t const c = at(i);
            return say(c == U'c' ? "tʃ" : c == U's' ? "ʃ" : c == U'z' ? "ʒ" : "", i + 1);
        }
        if (language_ == Language::german_latin)
            if (auto const next = german_latin(i)) return next;
        if (language_ == Language::hebrew && at(i) == U'h' && i + 1 == word_.size()) return i + 1; // "Torah"
        if (language_ == Language::danish)
            if (auto const next = danish(i)) return next;
        for (auto const& row : table_of(language_)) {
            if (spelled_.compare(i, row.letters.size(), row.letters) != 0) continue;
            bool const glide = row.first == "j" && !vowel(i + 1); // written with a vowel's glide or silent
            if (glide) return i + row.letters.size();
            say(row.first, i);
            if (!row.second.empty()) say(row.second, i);
            return i + row.letters.size();
        }
        return i + 1;
    }

    // What depends on the letters around; 0: the table knows.
    std::size_t danish(std::size_t i) {
        char32_t const c = at(i), next = at(i + 1), before = i > 0 ? at(i - 1) : U'\0';
        bool const behind_vowel = i > 0 && vowel(i - 1), last = i + 1 >= word_.size() || !is_letter(next);
        bool const little = spelled_ == "og" || spelled_ == "det" || spelled_ == "jeg";
        if (little && last) return i + 1;
        if (c == next && c != U'd' && c != U'g') return i + 1; // "lille": said once
        if (c == U'h' && (next == U'v' || next == U'j')) return i + 1;
        if (c == U'n' && next == U'g' && !(vowel(i + 2) && at(i + 2) != U'e')) return say("ŋ", i + 2);
        if (c == U'n' && next == U'k') return say("ŋ", i + 1);
        if (c == U'd') {
            if (next == U'd') return say("ð", i + 2);
            if (next == U't' || next == U's') return i + 1;
            bool const silent =
                (before == U'n' || before == U'l' || before == U'r') && (last || next == U'e');
            if (silent) return i + 1; // "land", "kende"
            return say(behind_vowel ? "ð" : "d", i + 1);
        }
        if (c == U'g') {
            if (next == U'g') return say("ɡ", i + 2);
            if (before == U'i' && (last || next == U't')) return i + 1; // "dejlig"
            return say(behind_vowel ? "ɣ" : "ɡ", i + 1);
        }
        if (c == U'c') return say(front(i + 1) ? "s" : "k", i + 1);
        bool const weak_et = c == U't' && last && before == U'e' && !one_nucleus_at_most(); // "landet"
        return weak_et ? say("ð", i + 1) : 0;
    }

    std::size_t german_latin(std::size_t i) {
        char32_t const c = at(i), next = at(i + 1);
        bool const behind_vowel = i > 0 && vowel(i - 1);
        if (c == U'c') {
            if (next == U'h')
                return say(i == 0 || next == U'r' || at(i + 2) == U'r'              ? "k"
                           : behind_vowel && at(i - 1) != U'e' && at(i - 1) != U'i' ? "x"
                                                                                    : "ç",
                           i + 2);
            return say(front(i + 1) ? "ts" : "k", i + 1);
        }
        if (c == U's') return say(vowel(i + 1) && (i == 0 || behind_vowel) ? "z" : "s", i + 1);
        if (c == U't' && next != U'h') {
            bool const hard = i == 0 || at(i - 1) == U's' || at(i - 1) == U't' || at(i - 1) == U'x';
            return say(!hard && next == U'i' && vowel(i + 2) ? "ts" : "t", i + 1);
        }
        if (c == U'n' && (next == U'k' || next == U'q' || next == U'x' || (next == U'c' && !front(i + 2)) ||
                          (next == U'g' && vowel(i + 2))))
            return say("ŋ", i + 1);
        if (c == U'u' && vowel(i + 1) && i > 0 && (at(i - 1) == U'g' || at(i - 1) == U's'))
            return say("v", i + 1); // "sanguis"
        return 0;
    }

    Language language_;
};

} // namespace

Clusters tabled_consonants(Reading const& reading, Language language) {
    return Tabled(reading, language).read();
}

} // namespace vowelway::diction
