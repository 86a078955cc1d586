// SPDX-License-Identifier: MIT
#include "diction/sheet/liaison.hpp"

#include "diction/words/letters.hpp"
#include "vowelway/core/vowel.hpp"

#include <algorithm>

namespace vowelway::diction {

namespace {

// The h that keeps words apart, and words that count as if they had one. P. Fouche (1956), from memory.
constexpr std::string_view apart[] = {
    "hach",    "hagard", "haie",   "haillon", "hain",  "haïr", "haïs",  "hait",   "hâl",   "hall",
    "halet",   "halt",   "hameau", "hanch",   "hant",  "happ", "harc",  "hard",   "harem", "haricot",
    "harnais", "harp",   "hasard", "hât",     "hauss", "haut", "havre", "hennir", "hér",   "hêtr",
    "heurt",   "hibou",  "hideu",  "hiss",    "hoch",  "holl", "hors",  "hont",   "houl",  "housse",
    "houx",    "huit",   "hurl",   "huss",    "hutt",  "onz",  "oui",   "ouat",   "yeuse"};

constexpr std::string_view joins =
    " les des ces mes tes ses nos vos leurs aux un mon ton son en on nous vous ils elles deux trois six dix "
    "dans sans "
    "sous chez dès très plus moins bien rien tout quand dont est sont ont font vont étaient fut petit grand "
    "petits grands bon bons beaux doux mauvais premier dernier ancien cet quels quelles plusieurs certains "
    "autres "
    "mêmes vingt cent aucun suis es as avons avez êtes sommes vieux nouveaux belles bonnes petites grandes "
    "chers "
    "chères jolis tous toutes divins ";

/// Verbs by their endings; "front", "lait" and the like are nouns.
bool verb(std::string_view word) {
    for (auto const noun :
         {"front", "pont", "mont", "lait", "trait", "souhait", "attrait", "portrait", "fait"})
        if (word == noun) return false;
    return word.ends_with("aient") || word.ends_with("ait") || word.ends_with("ont");
}

} // namespace

bool parted(std::string_view written) {
    return written.find_first_of(".,;:!?()\"") != std::string_view::npos ||
           written.find("…") != std::string_view::npos || written.find("»") != std::string_view::npos ||
           written.find("—") != std::string_view::npos;
}

bool takes_liaison(std::string_view written, std::string_view ipa) {
    auto const word = lower(without_punctuation(written));
    bool const stays = std::any_of(std::begin(apart), std::end(apart),
                                   [&](std::string_view stem) { return word.starts_with(stem); });
    // h is mute in héroïne, héroïque, hérédité: only the hero himself and what is like him keep apart.
    bool const heroine = word.starts_with("héroï") || word.starts_with("héri") || word.starts_with("héré");
    if (word.empty() || (stays && (!heroine || word.starts_with("hériss")))) return false;
    if (ipa.starts_with("ˈ")) ipa.remove_prefix(std::string_view("ˈ").size());
    bool const written_so =
        letters(word).front().base == U'h' || vowel_prefix(word) ||
        std::u32string_view(U"aeiouyœæ").find(letters(word).front().base) != std::u32string_view::npos;
    return written_so &&
           (vowel_prefix(ipa) || ipa.starts_with("w") || ipa.starts_with("ɥ") || ipa.starts_with("j"));
}

void join_french(TextWord& word, TextWord const& next) {
    if (word.ipa.empty() || parted(word.written) || !takes_liaison(next.written, next.ipa)) return;
    auto const spelled = lower(without_punctuation(word.written));
    auto const cut = spelled.rfind('\'');
    auto const bare = cut == std::string::npos ? spelled : spelled.substr(cut + 1);
    if (bare.empty()) return;
    bool const ties = joins.find(" " + bare + " ") != std::string_view::npos || verb(bare);
    if (!ties) return;
    char const last = bare.back();
    std::string_view const sound = last == 's' || last == 'x' || last == 'z' ? "z"
                                   : last == 'd' || last == 't'              ? "t"
                                   : last == 'n'                             ? "n"
                                   : last == 'r'                             ? "r"
                                                                             : "";
    if (sound.empty()) return;
    if (!word.ipa.ends_with(sound)) word.ipa += sound;
    word.joined = true;
}

} // namespace vowelway::diction
