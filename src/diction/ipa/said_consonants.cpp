// SPDX-License-Identifier: MIT
// Consonants from a transcription whose vowels are not quite those that are sung: its vowels are matched to
// the nuclei in order, at the least cost, and what stands between them stays between them.
#include "diction/ipa/consonants.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/synthesis/synthesiser.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

constexpr std::size_t none = ~std::size_t(0);
constexpr auto joint = ""; ///< in a cluster, for a while: two words meet here

/// A vowel of a nucleus: the one held, or the glide out of it.
struct Part {
    std::size_t nucleus;
    char32_t base;
    bool optional = false;
    bool glide = false;
};

std::vector<Part> parts_of(std::vector<Nucleus> const& nuclei) {
    std::vector<Part> out;
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        out.push_back({k, nuclei[k].held.vowel.base, nuclei[k].optional});
        for (auto const& glide : nuclei[k].after) out.push_back({k, glide.vowel.base, false, true});
    }
    return out;
}

double unlike(Phone const& phone, Part const& part) {
    char32_t const said = phone.vowel ? phone.vowel->base : U'ə';
    if (said == part.base) return part.glide ? 0.05 : 0; // a glide may be said as a consonant
    if (part.base == U'ə' && part.optional) return 1;    // only song has it
    return 0.2 + 0.1 * std::min(6.0, chart_distance(Vowel{.base = said}, Vowel{.base = part.base}));
}

/// Of each phone the part it is matched to.
std::vector<std::size_t> matched(std::vector<Phone> const& said, std::vector<Part> const& parts) {
    std::vector<std::size_t> vowels;
    for (std::size_t i = 0; i < said.size(); ++i)
        if (said[i].vowel || said[i].syllabic) vowels.push_back(i);
    std::size_t const m = vowels.size(), n = parts.size();
    constexpr double skip = 0.65;
    std::vector<std::vector<double>> cost(m + 1, std::vector<double>(n + 1, 0));
    for (std::size_t i = 0; i <= m; ++i)
        for (std::size_t j = 0; j <= n; ++j) {
            if (i == 0 || j == 0) {
                cost[i][j] = skip * static_cast<double>(i + j);
                continue;
            }
            cost[i][j] = std::min({cost[i - 1][j - 1] + unlike(said[vowels[i - 1]], parts[j - 1]),
                                   cost[i - 1][j] + skip, cost[i][j - 1] + skip});
        }
    std::vector<std::size_t> out(said.size(), none);
    for (std::size_t i = m, j = n; i > 0 && j > 0;) {
        if (cost[i][j] == cost[i - 1][j - 1] + unlike(said[vowels[i - 1]], parts[j - 1])) {
            out[vowels[--i]] = --j;
        } else if (cost[i][j] == cost[i - 1][j] + skip) {
            --i;
        } else {
            --j;
        }
    }
    return out;
}

/// What a consonant takes from its neighbours: "Dunkel" has ŋ, "Rätsel" a voiceless s.
void assimilate(std::vector<std::string>& cluster, bool prefix) {
    for (std::size_t i = 0; i + 1 < cluster.size(); ++i) {
        if (cluster[i] == "n" && (cluster[i + 1] == "k" || cluster[i + 1] == "ɡ") && !prefix)
            cluster[i] = "ŋ";
        if (cluster[i] == "t" && cluster[i + 1] == "z") cluster[i + 1] = "s";
        if (cluster[i] == "d" && cluster[i + 1] == "ç") cluster[i] = "t"; // "Mädchen"
    }
}

/// "kiss'd", "express'd": the d of a contracted ending is t after a voiceless consonant.
void devoice_d(std::vector<std::string>& cluster, Word const& word) {
    bool const contracted =
        word.size() > 2 && word.back().base == U'd' && word[word.size() - 2].base == U'\'';
    if (!contracted || cluster.size() < 2 || cluster.back() != "d") return;
    auto const& before = cluster[cluster.size() - 2];
    for (auto const* voiceless : {"p", "k", "f", "s", "ʃ", "tʃ", "θ"})
        if (before == voiceless) cluster.back() = "t";
}

/// The synthesiser doubles consonants that are written twice, and parts the sound of "sköna".
void mend_scandinavian(std::vector<std::string>& cluster) {
    cluster.erase(std::unique(cluster.begin(), cluster.end()), cluster.end());
    for (std::size_t i = 0; i + 1 < cluster.size(); ++i)
        if (cluster[i] == "s" && cluster[i + 1] == "x") {
            cluster[i] = "ɧ";
            cluster.erase(cluster.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        }
}

/// "an-kommen", "un-klar": the n keeps its place.
bool begins_with_prefix(Word const& word) {
    auto const spelled = lower(word);
    for (auto const* prefix :
         {"ank", "ang", "unk", "ung", "eink", "eing", "hink", "hing", "ing", "ink", "cong"})
        if (spelled.starts_with(prefix)) return true;
    return false;
}

/// A consonant as it is sung: r is rolled or tapped in German and French, l is clear, no glottal stop.
std::string sung_consonant(std::string const& said, Language language) {
    if (said == "ʔ" || said == "?" || said == "ˈ" || said == "\"") return "";
    if (said == "ŋ" && language == Language::portuguese) return ""; // the vowel before it is nasal
    if (said == "ɭ" && language == Language::russian) return "l";
    if (said == "ɫ" || (said == "ɬ" && language != Language::welsh)) return "l";
    bool const r = said == "ɾ" || said == "ʁ" || said == "ʀ" || said == "ɹ" || said == "r";
    if (r) return main_language(language) == Language::english ? "ɹ" : "r";
    return said;
}

/// Polish "gęś": the synthesiser says a nasal consonant that is in the vowel.
bool in_nasal_vowel(Phone const& phone, std::size_t cluster, std::vector<std::string> const& before,
                    std::vector<Nucleus> const& nuclei, Language language) {
    if (language != Language::polish || cluster == 0 || !before.empty()) return false;
    bool const nasal = phone.text == "n" || phone.text == "ɲ" || phone.text == "m" || phone.text == "ŋ";
    return nasal && nuclei[cluster - 1].held.vowel.nasal;
}

/// "сердце", "srdce": a stop before ts is mute; of two j that come together one is said.
void mend_slavic(std::vector<std::string>& cluster) {
    auto const at = [&](std::size_t i) {
        return i < cluster.size() ? std::string_view(cluster[i]) : std::string_view();
    };
    for (std::size_t i = 0; i + 1 < cluster.size();) {
        bool const stop = at(i) == "d" || at(i) == "t";
        bool const affricate = at(i + 1) == "ts" || (at(i + 1) == "t" && at(i + 2) == "s");
        if ((stop && affricate) || (at(i) == "j" && at(i + 1) == "j"))
            cluster.erase(cluster.begin() + static_cast<std::ptrdiff_t>(i));
        else
            ++i;
    }
}

/// What consonants do to one another, and what the synthesiser does to them, in each language.
void mend_clusters(Clusters& out, Word const& word, Language language) {
    bool const english = main_language(language) == Language::english;
    bool const germanic = language == Language::german || english;
    bool const prefix = begins_with_prefix(word);
    for (std::size_t k = 0; germanic && k < out.size(); ++k) assimilate(out[k], k == 1 && prefix);
    for (auto& one : out) one.erase(std::remove(one.begin(), one.end(), joint), one.end());
    if (language == Language::swedish || language == Language::norwegian)
        for (auto& one : out) mend_scandinavian(one);
    if (language == Language::russian || language == Language::czech)
        for (auto& one : out) mend_slavic(one);
    if (english && !out.empty()) devoice_d(out.back(), word);
}

} // namespace

Clusters said_consonants(std::vector<Phone> const& said, Reading const& reading, Language language) {
    auto const& nuclei = reading.sounds.nuclei;
    Clusters out(nuclei.size() + 1);
    auto const parts = parts_of(nuclei);
    auto const match = matched(said, parts);
    std::vector<bool> found(nuclei.size(), false);
    std::size_t cluster = 0;
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (match[i] != none) {
            found[parts[match[i]].nucleus] = true;
            cluster = parts[match[i]].nucleus + 1;
        }
        if (said[i].vowel) continue;
        if (said[i].boundary_before) out[cluster].push_back(joint);
        if (in_nasal_vowel(said[i], cluster, out[cluster], nuclei, language)) continue;
        auto sung = sung_consonant(said[i].text, language);
        if (sung.empty()) continue;
        if (said[i].soft && language == Language::russian && sung != "j") sung += "ʲ";
        out[cluster].push_back(sung);
        bool const twice = language == Language::finnish || language == Language::hungarian;
        if (said[i].lengthened && twice && out[cluster].size() == 1) out[cluster].push_back(sung);
    }
    mend_clusters(out, reading.letters, language);
    // A vowel that only song has stands before the last consonant of what was gathered, a last one behind
    // all.
    for (std::size_t k = 0; k < nuclei.size(); ++k) {
        if (found[k] || out[k + 1].size() > 0 || out[k].size() < 2 || k + 1 == nuclei.size()) continue;
        out[k + 1].push_back(out[k].back());
        out[k].pop_back();
    }
    return out;
}

namespace {

/// What the synthesiser says of a word whose vowels the spelling told. Welsh "wlad" begins with a vowel for
/// it.
std::vector<Phone> said_for_consonants(Word const& word, Language language) {
    auto said = phones(Synthesiser::instance().ipa(spoken(word), language));
    bool const mutated = language == Language::welsh && word.size() > 2 && word[0].base == U'w' &&
                         word[0].mark == 0 &&
                         (word[1].base == U'l' || word[1].base == U'n' || word[1].base == U'r') &&
                         is_vowel_letter(word[2].base);
    if (mutated && !said.empty() && said.front().text != "w") {
        if (said.front().vowel) said.erase(said.begin());
        said.insert(said.begin(), Phone{"w", std::nullopt});
    }
    return said;
}

} // namespace

Clusters consonants(Reading const& reading, Language language) {
    auto const has_consonants = [](std::vector<Phone> const& said) {
        return std::any_of(said.begin(), said.end(), [](Phone const& phone) { return !phone.vowel; });
    };
    bool const listed = reading.origin == VowelOrigin::override_;
    if (listed && has_consonants(reading.sounds.said))
        return said_consonants(reading.sounds.said, reading, language);
    if (language == Language::italian || language == Language::latin || language == Language::spanish)
        return spelled_consonants(reading, language);
    if (language == Language::german_latin || language == Language::hebrew ||
        language == Language::church_slavonic || language == Language::danish)
        return tabled_consonants(reading, language);
    auto said = listed ? sounds(reading.letters, language).said : reading.sounds.said;
    if (said.empty()) said = said_for_consonants(reading.letters, language); // its vowels needed nobody
    return said_consonants(said, reading, language);
}

} // namespace vowelway::diction
