// SPDX-License-Identifier: MIT
// Welsh of the north, where u and the clear y are ɨ (in the south they are i). Sources: G. Awbery, "Welsh",
// in M. J. Ball and J. Fife, The Celtic Languages (1993); S. Hannahs, The Phonology of Welsh (2013); J.
// Morris Jones, A Welsh Grammar (1913), for the clear and the obscure y; from memory.
#include "diction/syllables/grouping.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

struct WelshPair {
    char32_t first, second;
    std::string_view held, glide;
};
constexpr WelshPair welsh_pairs[] = {{U'a', U'e', "a", "ɨ"}, {U'a', U'i', "a", "i"}, {U'a', U'u', "a", "ɨ"},
                                     {U'a', U'w', "a", "u"}, {U'a', U'y', "a", "ɨ"}, {U'e', U'i', "e", "i"},
                                     {U'e', U'u', "e", "ɨ"}, {U'e', U'y', "e", "ɨ"}, {U'e', U'w', "ɛ", "u"},
                                     {U'i', U'w', "ɪ", "u"}, {U'o', U'e', "ɔ", "ɨ"}, {U'o', U'i', "ɔ", "i"},
                                     {U'o', U'u', "ɔ", "ɨ"}, {U'o', U'w', "ɔ", "u"}, {U'u', U'w', "ɨ", "u"},
                                     {U'w', U'y', "ʊ", "ɨ"}, {U'y', U'w', "ə", "u"}};

/// Little words whose y is obscure though they have one syllable.
constexpr std::string_view welsh_weak = " y yr yn fy dy ym yng myn ys syr ";

class WelshReader {
  public:
    explicit WelshReader(Word const& word) : word_(word), size_(word.size()), spelled_(in_ascii(word)) {
        while (size_ > 0 && !is_letter(word[size_ - 1].base)) --size_;
    }

    std::vector<Nucleus> read() {
        find_nuclei();
        for (std::size_t k = 0; k < found_.size(); ++k) add(k);
        if (!nuclei_.empty()) nuclei_[stressed()].stressed = nuclei_.size() > 1;
        return std::move(nuclei_);
    }

  private:
    struct Place {
        std::size_t letter;
        bool pair;
        std::size_t led_by; ///< letter of the glide before it, or none
    };
    static constexpr std::size_t none = ~std::size_t(0);

    char32_t at(std::size_t i) const { return i < size_ ? word_[i].base : U'\0'; }
    char32_t mark_at(std::size_t i) const { return i < size_ ? word_[i].mark : U'\0'; }
    static bool full(char32_t c) {
        return c && std::u32string_view(U"aeiouy").find(c) != std::u32string_view::npos;
    }
    bool letter_vowel(std::size_t i) const { return full(at(i)) || at(i) == U'w'; }

    // w before a vowel is a consonant, but for the diphthong wy; after g also before l, n, r: "gwlad".
    bool w_leads(std::size_t i) const {
        if (at(i) != U'w' || mark_at(i)) return false;
        char32_t const before = i > 0 ? at(i - 1) : U'\0', next = at(i + 1);
        bool const after_gw = before == U'g' || (before == U'h' && i > 1 && at(i - 2) == U'c');
        if (next == U'y') return i == 0 || wy_is_w(i, after_gw) || full(before);
        if (full(next)) return true;
        bool const liquid = (next == U'l' || next == U'n' || next == U'r') && full(at(i + 2));
        return liquid && (i == 0 || (i == 1 && before == U'g')); // "gwlad", "ei wlad"
    }
    // "gwyn", "cychwyn", "crynwyr", "tywydd" against "mwyn", "swydd".
    bool wy_is_w(std::size_t i, bool after_gw) const {
        auto const rest = std::string_view(spelled_).substr(i);
        if (rest.starts_with("wyb") && !after_gw)
            return i > 0 && at(i - 1) == U'n'; // "gwybod" is a diphthong
        if (after_gw && i == 1) return !rest.starts_with("wydd") && !rest.starts_with("wyl");
        if (after_gw) return true;
        bool const first = std::none_of(word_.begin(), word_.begin() + static_cast<std::ptrdiff_t>(i),
                                        [](Letter const& l) { return full(l.base); });
        return !first && (rest == "wyr" || rest == "wydd");
    }
    // i before a vowel; "iw" in an ending: "gweithiwr".
    bool i_leads(std::size_t i) const {
        if (at(i) != U'i' || mark_at(i)) return false;
        if (i > 0 && full(at(i - 1)) && !full(at(i + 1))) return false;
        if (at(i + 1) == U'w') return !found_.empty() && i + 2 < size_ && !letter_vowel(i + 2);
        return full(at(i + 1)) && at(i + 1) != U'i';
    }
    bool pairs(std::size_t i) const {
        if (i + 1 >= size_ || mark_at(i + 1) || mark_at(i) == mark::diaeresis) return false;
        if (at(i + 1) == U'w' && full(at(i + 2)) && at(i + 2) != U'y') return at(i) == U'e'; // "cne-wy-"
        return pair_of(i) != nullptr;
    }
    WelshPair const* pair_of(std::size_t i) const {
        for (auto const& pair : welsh_pairs)
            if (pair.first == at(i) && pair.second == at(i + 1)) return &pair;
        return nullptr;
    }

    void find_nuclei() {
        std::size_t led_by = none;
        for (std::size_t i = 0; i < size_; ++i) {
            if (!letter_vowel(i)) continue;
            if (w_leads(i) || i_leads(i)) {
                led_by = letter_vowel(i + 1) ? i : none; // "gwlad": an l stands between
                continue;
            }
            bool const pair = pairs(i);
            found_.push_back({i, pair, led_by});
            led_by = none;
            if (pair) ++i;
        }
    }

    std::size_t stressed() const {
        std::size_t const n = found_.size();
        auto const& last = found_.back();
        bool const on_last = n == 1 || mark_at(last.letter) == mark::circumflex ||
                             mark_at(last.letter) == mark::acute ||
                             (last.pair && spelled_.ends_with("hau") && n > 1);
        return on_last ? n - 1 : n - 2;
    }

    // The vowel of a word of one syllable is long before one soft consonant or none, and before s with b, t,
    // d, g.
    bool long_in_one(std::size_t letter) const {
        if (mark_at(letter) == mark::circumflex) return true;
        if (spelled_ == "hen" || spelled_ == "dyn") return true;
        auto const rest = std::string_view(spelled_).substr(letter + 1, size_ - letter - 1);
        if (rest.empty()) return true;
        for (auto const coda : {"b", "ch", "d", "dd", "f", "ff", "g", "s", "th", "st", "sb", "sg"})
            if (rest == coda) return true;
        bool const close = at(letter) == U'i' || at(letter) == U'u';
        return close && (rest == "l" || rest == "n" || rest == "r");
    }

    std::string_view plain(std::size_t k, bool lengthened) const {
        std::size_t const i = found_[k].letter;
        bool const last = k + 1 == found_.size();
        switch (at(i)) {
        case U'a':
            return lengthened ? "aː" : "a";
        case U'e':
            return lengthened ? "eː" : "ɛ";
        case U'i':
            return lengthened ? "iː" : "ɪ";
        case U'o':
            return lengthened ? "oː" : "ɔ";
        case U'w':
            return lengthened ? "uː" : "ʊ";
        case U'u':
            return lengthened ? "ɨː" : "ɨ";
        default: // y
            if (welsh_weak.find(" " + spelled_ + " ") != std::string_view::npos) return "ə";
            if (lengthened) return "ɨː";
            return last || (k == 0 && spelled_.starts_with("cyd") && i + 2 < size_ && !full(at(i + 2)) &&
                            at(i + 2) != U'd')
                       ? "ɨ"
                       : "ə";
        }
    }

    void add(std::size_t k) {
        auto const& place = found_[k];
        bool const one = found_.size() == 1;
        Nucleus nucleus{{}, {vowel_of("a"), place.letter}, {}};
        if (place.led_by != none)
            nucleus.before.push_back({glide_of(at(place.led_by) == U'i' ? "i" : "u"), place.led_by});
        if (place.pair) {
            auto const& pair = *pair_of(place.letter);
            auto held = pair.held;
            if (one && held == "ɔ" && pair.second == U'e') held = "oː"; // "coed"
            if (one && held == "ʊ" && place.letter + 2 < size_ && place.letter + 3 >= size_)
                held = "uː";                                       // "clwyd"
            if (held == "ə" && k + 1 == found_.size()) held = "ɨ"; // "clyw"
            nucleus.held.vowel = vowel_of(held);
            nucleus.after.push_back({glide_of(pair.glide), place.letter + 1});
        } else {
            bool const marked = mark_at(place.letter) == mark::circumflex;
            nucleus.held.vowel = vowel_of(plain(k, marked || (one && long_in_one(place.letter))));
        }
        nuclei_.push_back(std::move(nucleus));
    }

    Word const& word_;
    std::size_t size_;
    std::string spelled_;
    std::vector<Place> found_;
    std::vector<Nucleus> nuclei_;
};

} // namespace

Sounds welsh(Word const& word) {
    Sounds out;
    out.nuclei = WelshReader(word).read();
    return out;
}

} // namespace vowelway::diction
