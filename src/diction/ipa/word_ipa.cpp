// SPDX-License-Identifier: MIT
#include "diction/ipa/word_ipa.hpp"

#include "core/utf8.hpp"
#include "diction/ipa/consonants.hpp"
#include "diction/syllables/grouping.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

bool one_of(std::string_view sound, std::initializer_list<std::string_view> list) {
    return std::find(list.begin(), list.end(), sound) != list.end();
}

/// How many of the consonants between two vowels begin the syllable of the second: one, a stop or f and v
/// with l or r, anything with a glide, a sibilant with a stop.
std::size_t onset(std::vector<std::string> const& cluster, Language language) {
    std::size_t const n = cluster.size();
    if (n < 2) return n;
    auto const& last = cluster[n - 1];
    auto const& before = cluster[n - 2];
    bool const liquid = one_of(last, {"l", "r", "ɹ", "ɾ"}) &&
                        one_of(before, {"p", "b", "t", "d", "k", "ɡ", "f", "v", "θ", "β", "ð", "ɣ"});
    bool const glide = one_of(last, {"j", "w", "ɥ"}) && !one_of(before, {"j", "w", "ɥ"});
    bool const sibilant =
        (before == "ʃ" || (before == "s" && language != Language::german && language != Language::french &&
                           language != Language::spanish)) &&
        one_of(last, {"p", "t", "k", "m", "n", "l", "v", "r"});
    bool const affricate = (before == "p" && last == "f") ||
                           (before == "t" && (last == "s" || last == "ʃ")) || (before == "d" && last == "ʒ");
    std::size_t take = liquid || glide || sibilant || affricate ? 2 : 1;
    if (take == 2 && n >= 3 && (liquid || glide) &&
        (cluster[n - 3] == "ʃ" || (cluster[n - 3] == "s" && language == Language::italian)))
        take = 3;
    return take;
}

std::string glide_sign(Vowel const& vowel) {
    switch (vowel.base) {
    case U'i':
    case U'ɪ':
        return "j";
    case U'u':
    case U'ʊ':
        return "w";
    case U'y':
    case U'ʏ':
        return "ɥ";
    default: {
        auto short_one = vowel;
        short_one.glide = true;
        return short_one.ipa();
    }
    }
}

/// A nucleus between its consonants; `behind` are those after it.
std::string nucleus_ipa(SungVowel const& vowel, std::vector<std::string> const& before,
                        std::vector<std::string> const& behind, bool glides_marked) {
    std::string out;
    for (auto const& glide : vowel.before) {
        auto const sign = glide_sign(glide);
        if (before.empty() || before.back() != sign) out += sign;
    }
    out += vowel.held.ipa();
    for (auto glide : vowel.after) {
        if (!behind.empty() && behind.front() == glide_sign(glide)) continue; // "soleil": said as a consonant
        glide.glide = glides_marked;
        out += glide.ipa();
    }
    return out;
}

/// Slavic words of one consonant, "v", "k", "s": they lean on the next word.
std::string lone_consonant(Word const& word, Language language) {
    bool const slavic = language == Language::czech || language == Language::polish ||
                        language == Language::russian || language == Language::church_slavonic;
    if (word.size() != 1 || !slavic) return {};
    switch (word.front().base) {
    case U'v':
    case U'w':
    case U'в':
        return "v";
    case U'k':
    case U'к':
        return "k";
    case U's':
    case U'с':
        return "s";
    case U'z':
        return "z";
    default:
        return {};
    }
}

/// "heav'n": the weak vowel that a singer may give the n is not written; "flow'r" keeps its own.
void drop_vowel_of_contraction(SungVowel& vowel, Nucleus const& nucleus, Word const& word) {
    if (nucleus.after.empty() || vowel.after.empty()) return;
    std::size_t const apostrophe = nucleus.after.back().letter;
    if (apostrophe < 2 || apostrophe >= word.size() || word[apostrophe].base != U'\'') return;
    char32_t const before = word[apostrophe - 1].base;
    if (before != U'w' && before != U'y' && !is_vowel_letter(before)) vowel.after.pop_back();
}

} // namespace

WordIpa word_ipa(Reading const& reading, Language language, DictionOptions const& options, bool last_e) {
    auto nuclei = reading.sounds.nuclei;
    WordIpa out;
    if (nuclei.empty()) {
        out.plain = out.listed = lone_consonant(reading.letters, language);
        return out;
    }
    auto clusters = consonants(reading, language);
    if (nuclei.back().optional && !last_e) {
        auto& left = clusters[nuclei.size() - 1];
        left.insert(left.end(), clusters.back().begin(), clusters.back().end());
        clusters.pop_back();
        nuclei.pop_back();
    }
    if (nuclei.empty()) return out;
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        auto const& cluster = clusters[k];
        std::size_t const begins = k == 0 ? 0 : cluster.size() - onset(cluster, language);
        auto const add = [&](std::string const& piece) {
            out.plain += piece;
            out.listed += piece;
        };
        for (std::size_t i = 0; i < begins; ++i) add(cluster[i]);
        if (k > 0) out.listed += '.';
        bool const marks = language != Language::french; // it has no stress of the word
        if (marks && nuclei.size() > 1 && nuclei[k].stressed) add("ˈ");
        for (std::size_t i = begins; i < cluster.size(); ++i) add(cluster[i]);
        auto vowel = sung(nuclei[k], language, options, reading.origin);
        drop_vowel_of_contraction(vowel, nuclei[k], reading.letters);
        if (language == Language::french && nuclei[k].held.vowel.base == U'ə')
            vowel.held = nuclei[k].held.vowel;
        out.plain += nucleus_ipa(vowel, cluster, clusters[k + 1], false);
        out.listed += nucleus_ipa(vowel, cluster, clusters[k + 1], true);
    }
    for (auto const& sound : clusters[nuclei.size()]) {
        out.plain += sound;
        out.listed += sound;
    }
    return out;
}

} // namespace vowelway::diction
