// SPDX-License-Identifier: MIT
// Portuguese as it is sung in Brazil: syllables, stress and nasal vowels by the spelling; weak final e, o, a
// are i, u, a; stressed e and o are open or closed by the accent, else by a list of words common in songs,
// else as the synthesiser has them. Sources: P. Barbosa and E. Albano, "Brazilian Portuguese", J. IPA 34
// (2004); Normas para a boa pronuncia da lingua nacional no canto erudito (1938; revised in 2005 by singers
// and teachers of several universities); C. Cunha and L. Cintra, Nova gramatica do portugues contemporaneo
// (1985), for stress; from memory.
#include "diction/portuguese/open_words.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

class Brazilian {
  public:
    explicit Brazilian(Word const& word) : word_(word), size_(word.size()) {
        while (size_ > 0 && !is_letter(word[size_ - 1].base)) --size_;
    }

    /// `said` is what the synthesiser says, where it had to be asked.
    std::vector<Nucleus> read(std::vector<Phone>& said) {
        find_stress();
        for (std::size_t i = 0; i < size_; ++i)
            if (vowel(i)) i = step(i);
        join_last();
        if (nuclei_.size() > 1)
            for (auto& nucleus : nuclei_) nucleus.stressed = nucleus.held.letter == stress_;
        for (std::size_t k = 0; k < nuclei_.size(); ++k) set_quality(k, said);
        return std::move(nuclei_);
    }

  private:
    static constexpr std::size_t none = ~std::size_t(0);

    char32_t at(std::size_t i) const { return i < size_ ? word_[i].base : U'\0'; }
    char32_t mark_at(std::size_t i) const { return i < size_ ? word_[i].mark : U'\0'; }
    bool vowel(std::size_t i) const {
        char32_t const c = at(i);
        return c == U'a' || c == U'e' || c == U'i' || c == U'o' || c == U'u' || c == U'y';
    }
    bool close(std::size_t i) const {
        return (at(i) == U'i' || at(i) == U'u' || at(i) == U'y') && !mark_at(i);
    }
    /// q or g with u before e, i (silent) or a, o (a glide).
    bool led_u(std::size_t i) const {
        bool const leads = vowel(i + 1) || at(i + 1) == U'\''; // "qu'esta" in poems
        return at(i) == U'u' && i > 0 && (at(i - 1) == U'q' || at(i - 1) == U'g') && leads && !mark_at(i);
    }
    bool silent_u(std::size_t i) const {
        return led_u(i) && (at(i + 1) == U'e' || at(i + 1) == U'i' || at(i + 1) == U'\'');
    }

    // ai, ei, oi, ui, au, eu, iu, ou; ão, ãe, õe. Not before nh, nor before l, r, z, n, m that end the
    // syllable
    // ("ra-iz", "ru-im", "a-in-da").
    bool falls(std::size_t i) const {
        if (!vowel(i) || i + 1 >= size_) return false;
        if (mark_at(i) == mark::tilde)
            return (at(i + 1) == U'o' || at(i + 1) == U'e' || at(i + 1) == U'i') && !mark_at(i + 1);
        if (!close(i + 1) || at(i) == at(i + 1)) return false;
        if (i == 3 && at(0) == U'a' && at(1) == U'n' && at(2) == U't') return false; // "anti-urbano"
        if (at(i) == U'y' || (at(i) == U'i' && at(i + 1) != U'u') || (at(i) == U'u' && at(i + 1) != U'i'))
            return false;
        char32_t const next = at(i + 2);
        if (next == U'n' || next == U'm')
            return at(i + 1) != U'i' && vowel(i + 3)
                       ? at(i + 3) != U'h'
                       : (vowel(i + 3) && next == U'm') || (vowel(i + 3) && next == U'n' && at(i) != U'a');
        bool const ends = (next == U'l' || next == U'r' || next == U'z') && !vowel(i + 3);
        return !ends;
    }

    void find_stress() {
        std::vector<std::size_t> vowels;
        for (std::size_t i = 0; i < size_; ++i) {
            if (!vowel(i) || led_u(i)) continue;
            vowels.push_back(i);
            if (mark_at(i) == mark::acute || mark_at(i) == mark::circumflex) stress_ = i;
            if (falls(i)) ++i;
        }
        if (stress_ != none || vowels.empty()) return;
        // Little words lean on the next: their o is u, their e i.
        constexpr std::string_view leaning = " o os a as do dos ao aos no nos de me te se lhe lhes que e ";
        if (vowels.size() == 1 && leaning.find(" " + lower(word_) + " ") != std::string_view::npos) return;
        for (std::size_t const i : vowels)
            if (mark_at(i) == mark::tilde) stress_ = i;
        if (stress_ != none) return;
        std::size_t end = size_;
        if (at(end - 1) == U's') --end;
        bool const plural = end < size_;
        std::size_t const last = vowels.back();
        bool const weak_ending =
            (last + 1 == end && (at(last) == U'a' || at(last) == U'e' || at(last) == U'o')) ||
            (!plural && last + 2 == end && at(last + 1) == U'm' && (at(last) == U'a' || at(last) == U'e')) ||
            (plural && last + 2 == end && at(last + 1) == U'n' && at(last) == U'e');
        stress_ = weak_ending && vowels.size() > 1 ? vowels[vowels.size() - 2] : last;
    }

    // m or n that makes the vowel before it nasal: no vowel and no h behind it.
    bool nasal(std::size_t n) const {
        if (at(n) != U'm' && at(n) != U'n') return false;
        return !vowel(n + 1) && at(n + 1) != U'h';
    }
    // Stressed a before m, n, nh is nasal too, as in "ano", "banho".
    bool coloured(std::size_t i) const {
        return at(i) == U'a' && i == stress_ && (at(i + 1) == U'm' || at(i + 1) == U'n');
    }

    std::size_t step(std::size_t i) {
        if (led_u(i)) {
            if (!silent_u(i)) before_.push_back({glide_of("u"), i});
            return i;
        }
        std::string ipa(value(i));
        bool const pair = falls(i);
        std::size_t const behind = pair ? i + 2 : i + 1;
        bool const through_nose =
            mark_at(i) == mark::tilde || nasal(i + 1) || (!pair && coloured(i)) || muito(i);
        bool const end_m = nasal(behind) && behind + 1 >= size_;
        bool const end_ns = at(i + 1) == U'n' && at(i + 2) == U's' && i + 3 == size_;
        if (through_nose) ipa += "\u0303";
        nuclei_.push_back({std::move(before_), {vowel_of(ipa), i}, {}});
        before_.clear();
        auto& after = nuclei_.back().after;
        if (pair) {
            bool const to_u = at(i + 1) == U'u' || at(i + 1) == U'o';
            after.push_back({glide_of(to_u ? "u" : "i"), i + 1});
            return i + 1;
        }
        if (at(i + 1) == U'l' && !vowel(i + 2) && at(i + 2) != U'h' && at(i + 2) != U'l') {
            after.push_back({glide_of("u"), i + 1}); // "Brasil": l that ends the syllable
        } else if (end_m && at(i) == U'a' && i != stress_) {
            after.push_back({glide_of("u"), i + 1}); // "falam"
        } else if ((end_m || end_ns) && at(i) == U'e') {
            after.push_back({glide_of("i"), i + 1}); // "bem", "homens"
        }
        return i;
    }
    bool muito(std::size_t i) const {
        return at(i) == U'u' && i == 1 && at(0) == U'm' && at(2) == U'i' && at(3) == U't';
    }

    std::string_view value(std::size_t i) const {
        std::size_t end = size_;
        if (at(end - 1) == U's') --end;
        bool const weak_last = i + 1 == end && i != stress_;
        switch (at(i)) {
        case U'a':
            return "a";
        case U'e':
            return mark_at(i) == mark::acute ? "ɛ" : weak_last ? "i" : "e";
        case U'o':
            return mark_at(i) == mark::acute ? "ɔ" : weak_last ? "u" : "o";
        case U'u':
            return "u";
        default:
            return "i";
        }
    }

    // i, u (and e, o so written) before the last weak vowel share its syllable: "his-tó-ria", "á-gua".
    void join_last() {
        if (nuclei_.size() < 3) return;
        auto& left = nuclei_[nuclei_.size() - 2];
        auto& last = nuclei_.back();
        bool const weak = left.held.letter != stress_ && last.held.letter != stress_;
        bool const side_by_side = left.held.letter + 1 == last.held.letter && left.after.empty();
        char32_t const c = at(left.held.letter);
        if (!weak || !side_by_side || !(c == U'i' || c == U'u') || left.held.letter < stress_) return;
        last.before.insert(last.before.begin(), {glide_of(c == U'i' ? "i" : "u"), left.held.letter});
        nuclei_.erase(nuclei_.end() - 2);
    }

    void set_quality(std::size_t k, std::vector<Phone>& said) {
        auto& nucleus = nuclei_[k];
        std::size_t const i = nucleus.held.letter;
        auto& v = nucleus.held.vowel;
        if (i != stress_ || v.nasal || mark_at(i) || (v.base != U'e' && v.base != U'o')) return;
        bool const glide_i = !nucleus.after.empty() && at(i + 1) != U'l';
        if (glide_i || at(i + 1) == U'm' || at(i + 1) == U'n') return; // closed before a glide, m and n
        auto const spelled = " " + lower(word_) + " ";
        if (portuguese_closed.find(spelled) != std::string_view::npos) return;
        if (portuguese_open.find(spelled) != std::string_view::npos || as_said(said))
            v.base = v.base == U'e' ? U'ɛ' : U'ɔ';
    }
    /// The synthesiser has the stressed vowel open.
    bool as_said(std::vector<Phone>& said) const {
        if (said.empty()) said = phones(Synthesiser::instance().ipa(spoken(word_), Language::portuguese));
        for (auto const& phone : said)
            if (phone.vowel && phone.stress == 2)
                return phone.vowel->base == U'ɛ' || phone.vowel->base == U'ɔ';
        return false;
    }

    Word const& word_;
    std::size_t size_;
    std::size_t stress_ = none;
    std::vector<Nucleus> nuclei_;
    std::vector<Sound> before_;
};

} // namespace

Sounds portuguese(Word const& word) {
    Sounds out;
    out.nuclei = Brazilian(word).read(out.said);
    return out;
}

} // namespace vowelway::diction
