// SPDX-License-Identifier: MIT
#include "diction/german/mending.hpp"

#include "diction/german/stems.hpp"
#include "diction/words/rules.hpp"

#include <algorithm>
#include <initializer_list>

namespace vowelway::diction {

namespace {

struct German {
    std::vector<Nucleus>& nuclei;
    std::string spelled; // one byte for each letter; ä ö ü ß as A O U S

    std::string_view from(std::size_t i) const {
        return std::string_view(spelled).substr(std::min(i, spelled.size()));
    }
    std::string_view before(std::size_t i) const { return std::string_view(spelled).substr(0, i); }
    char at(std::size_t i) const { return i < spelled.size() ? spelled[i] : '\0'; }
    bool vowel(std::size_t i) const {
        return std::string_view("aeiouyAOU").find(at(i)) != std::string_view::npos && at(i);
    }
    bool consonant(std::size_t i) const { return at(i) && !vowel(i); }
    bool vowels_follow(std::size_t i) const {
        return from(i).find_first_of("aeiouyAOU") != std::string_view::npos;
    }

    static bool any(std::string_view s, std::initializer_list<std::string_view> starts) {
        return std::any_of(starts.begin(), starts.end(), [&](auto x) { return s.starts_with(x); });
    }

    // One consonant and then a vowel: the syllable is open.
    bool open_syllable(std::size_t i) const {
        return consonant(i + 1) && at(i + 1) != 'x' &&
               (vowel(i + 2) || (at(i + 2) == 'h' && at(i + 1) != 'c' && vowel(i + 3)));
    }

    bool foreign() const {
        return spelled.find("th") != std::string::npos || spelled.find("ph") != std::string::npos ||
               spelled.find('y') != std::string::npos;
    }

    static bool one_of(char c, std::string_view set) { return c && set.find(c) != std::string_view::npos; }

    // A known stem around the vowel of a nucleus.
    bool mend_stem(std::size_t k) {
        auto& nucleus = nuclei[k];
        std::size_t const i = nucleus.held.letter;
        if (!nucleus.after.empty()) return false;
        for (auto const& stem : german_stems) {
            std::size_t const offset = stem.letters.find_first_of("aeiouyAOU");
            if (i < offset || !from(i - offset).starts_with(stem.letters)) continue;
            if (stem.letters == "test" && i != offset) continue; // "sag-test"
            if (one_of(at(i - offset + stem.letters.size()), stem.unless_followed_by)) continue;
            // A stem that begins with its vowel must not be the tail of a cluster of vowels.
            if (offset == 0 && i > 0 && (vowel(i - 1) || at(i - 1) == 'v')) continue;
            auto vowel = vowel_of(stem.vowel);
            if (std::string_view("ueoiyø").find(stem.vowel) != std::string_view::npos)
                vowel.length = VowelLength::long_;
            if (stem.letters[offset] != at(i)) continue;
            nucleus.held.vowel = vowel;
            return true;
        }
        return false;
    }

    bool doubled_before(std::size_t i) const {
        return i >= 2 && consonant(i - 1) &&
               (at(i - 1) == at(i - 2) || (at(i - 1) == 'k' && at(i - 2) == 'c') ||
                (at(i - 1) == 'z' && at(i - 2) == 't'));
    }

    // e of an ending or a prefix is weak, whatever the synthesiser makes of it.
    void mend_e(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t const i = nuclei[k].held.letter;
        if (at(i) != 'e' || vowel(i + 1) || (i > 0 && vowel(i - 1) && at(i - 1) != 'u')) return;
        if (v.base == U'ɐ' || v.base == U'ə') {
            restore_e(k);
            return;
        }
        if (open_e(v)) weaken_in_known_places(k);
        bool const weak = !nuclei[k].stressed && !nuclei[k].secondary;
        if (weak && open_e(v)) weaken(k);
    }

    static bool open_e(Vowel const& v) { return v.base == U'e' || v.base == U'ɛ'; }

    // A weak vowel that is none.
    void restore_e(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t const i = nuclei[k].held.letter;
        // er-, ver-, zer-: the synthesiser takes them for the ending -er inside compounds.
        bool const prefix =
            at(i + 1) == 'r' && i > 0 && at(i - 1) == 'v' && consonant(i + 2) && vowels_follow(i + 2);
        if (prefix) v = vowel_of("ɛ");
        bool const before_stress = std::any_of(nuclei.begin() + static_cast<std::ptrdiff_t>(k), nuclei.end(),
                                               [](auto const& n) { return n.stressed; });
        if (v.base == U'ə' && k > 0 && before_stress && open_syllable(i) && at(i + 1) != 'r' &&
            !(i > 0 && one_of(at(i - 1), "gb")))
            v = vowel_of("e");
    }

    // Endings, prefixes and joints of compounds that are known by their letters.
    void weaken_in_known_places(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t const i = nuclei[k].held.letter;
        bool const stressed = nuclei[k].stressed;
        if (k > 0 && at(i + 1) == 'r' && !stressed &&
            (from(i + 2) == "n" || from(i + 2) == "nd" || from(i + 2) == "ns" ||
             from(i + 2).starts_with("nde")))
            v = vowel_of("ɐ");
        if (k == 1 && (before(i) == "Ub" || before(i) == "unt" || before(i) == "wied") && at(i + 1) == 'r')
            v = vowel_of("ɐ");
        if (k > 0 && i > 1 &&
            any(from(i - 1), {"gehOr", "gedank", "gedenk", "gefAhr", "gefUhr", "gebAud", "gekomm", "gebrach",
                              "gestreb", "gesell", "gesetz", "gericht"}))
            v = vowel_of("ə");
        if (k > 0 && !stressed && i > 1 && at(i - 1) == 'g' && at(i - 2) == 's' && consonant(i + 1) &&
            at(i + 1) != 'n' && vowels_follow(i + 1))
            v = vowel_of("ə");
        bool const plain_joint = (at(i + 1) == 'n' && one_of(at(i + 2), "bhlmprwvfj")) ||
                                 (at(i + 1) == 'l' && one_of(at(i + 2), "hp"));
        if (k > 0 && plain_joint && v.base == U'ɛ' && !stressed && !foreign())
            v = vowel_of("ə"); // Ziegen-böcke, Angel-haken
    }

    // An unstressed e by where it stands: prefix, ending, joint, after the stress.
    void weaken(std::size_t k) {
        auto& v = nuclei[k].held.vowel;
        std::size_t const i = nuclei[k].held.letter;
        if (k > 0 && any(from(i + 1), {"rei", "rat", "rar", "rin", "risch"}))
            v = vowel_of("ə"); // Ma-le-rei, Li-te-ra-tur
        if (weak_prefix(i))
            v = vowel_of("ə");
        else if (after_stress(k) && at(i + 1) == 'r' && consonant(i + 2) && at(i + 2) != 'r' &&
                 !(i > 0 && at(i - 1) == 'v'))
            v = vowel_of("ɐ");
        else if (ending(k) || (k > 0 && joint(i) && !foreign()) || (after_stress(k) && closes_softly(i)))
            v = vowel_of("ə");
    }

    // be-, ge-.
    bool weak_prefix(std::size_t i) const {
        bool const prefix = i > 0 && one_of(at(i - 1), "gb") &&
                            (i == 1 || consonant(i - 2) || before(i - 1).ends_with("e")) &&
                            vowels_follow(i + 1);
        if (!prefix) return false;
        return (at(i + 1) != 'r' && !any(from(i - 1), {"gen", "best", "geo", "ges"})) ||
               any(from(i - 1), {"gesch", "gesi", "gesa", "gesp"});
    }

    bool after_stress(std::size_t k) const {
        return k > 0 && (nuclei[k - 1].stressed || nuclei[k - 1].secondary) && !foreign();
    }

    bool ending(std::size_t k) const {
        auto const rest = from(nuclei[k].held.letter);
        return k + 1 == nuclei.size() && k > 0 &&
               (rest == "e" || rest == "en" || rest == "em" || rest == "es" || rest == "et" || rest == "el" ||
                rest == "est");
    }

    // -en-, -es-, -el- before the second part of a compound.
    bool joint(std::size_t i) const {
        return (at(i + 1) == 'n' && one_of(at(i + 2), "bcfhjklmpqrswvz")) ||
               (at(i + 1) == 's' && one_of(at(i + 2), "bfghklmnrwvz")) ||
               (at(i + 1) == 'l' && one_of(at(i + 2), "bfghkmnprwzs"));
    }

    // What follows a weak e after the stress: the beginning of another part, or one consonant after several.
    bool closes_softly(std::size_t i) const {
        return any(from(i + 1),
                   {"sta", "stA", "sto", "stO", "str", "sch", "spa", "spi", "tr", "dr", "kr", "fl"}) ||
               (open_syllable(i) && at(i + 1) != 'h' &&
                (doubled_before(i) || (i >= 2 && consonant(i - 1) && consonant(i - 2))));
    }

    void mend_quantity(std::size_t k) {
        auto& nucleus = nuclei[k];
        auto& v = nucleus.held.vowel;
        std::size_t const i = nucleus.held.letter;
        if (!nucleus.after.empty() || vowel(i + 1)) return;
        bool const weak = !nucleus.stressed && !nucleus.secondary;
        if (open_syllable(i)) {
            bool const prefix =
                any(from(i), {"una", "une", "uni", "uno", "unu", "ine", "ino", "ina", "ige", "igu"}) ||
                (i > 0 && any(from(i - 1), {"hin", "mit"}));
            if (prefix) return;
            if (v.base == U'ɔ') v.base = U'o';
            if (v.base == U'ɪ' && at(i) == 'i') v.base = U'i';
            if (v.base == U'ʊ') v.base = U'u';
            if (v.base == U'ʏ' && at(i) == 'U') v.base = U'y';
            if (v.base == U'ɛ' && at(i) == 'e' && weak && k == 0 && !any(from(i), {"er", "en", "em"}))
                v.base = U'e';
        }
        if (any(from(i == 0 ? 0 : i - 1), {"vierz"})) v = vowel_of("ɪ");
    }

    // i before a vowel in a learned word leads into it: Fa-mi-lie, So-zia-list.
    void make_glides() {
        for (std::size_t k = 1; k < nuclei.size();) {
            auto const& left = nuclei[k - 1];
            bool const meets = nuclei[k].held.letter == left.held.letter + 1 && at(left.held.letter) == 'i' &&
                               left.before.empty() && left.after.empty();
            bool const weak = !left.stressed;
            std::size_t const i = left.held.letter;
            bool const cluster = i >= 2 && (at(i - 1) == 'l' || at(i - 1) == 'r') && consonant(i - 2) &&
                                 at(i - 2) != 'r' && at(i - 2) != 'l';
            bool const consonant_before = i > 0 && consonant(i - 1) && !cluster;
            if (meets && weak && consonant_before && k >= 2 && at(nuclei[k].held.letter) != 'u') {
                auto glide = left.held;
                glide.vowel = glide_of("i");
                nuclei[k].before.insert(nuclei[k].before.begin(), glide);
                nuclei.erase(nuclei.begin() + static_cast<std::ptrdiff_t>(k) - 1);
            } else {
                ++k;
            }
        }
    }
};

} // namespace

void mend_german(std::vector<Nucleus>& nuclei, std::string const& spelled) {
    German mender{nuclei, spelled};
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        if (mender.mend_stem(k)) continue;
        mender.mend_e(k);
        mender.mend_quantity(k);
    }
    mender.make_glides();
}

} // namespace vowelway::diction
