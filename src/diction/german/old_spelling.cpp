// SPDX-License-Identifier: MIT
#include "diction/german/old_spelling.hpp"

#include <initializer_list>
#include <string_view>
#include <utility>

namespace vowelway::diction {

namespace {

/// Stems with ß after a short vowel, which is ss today.
constexpr std::string_view short_before_ss[] = {
    "muß",  "müß",  "laß",  "läß",   "daß",   "kuß",  "küß",   "gewiß", "roß",     "schloß", "blaß",
    "bläß", "naß",  "näß",  "haß",   "häß",   "faß",  "mißt",  "giß",   "bißchen", "wißt",   "wußt",
    "wüßt", "nuß",  "nüß",  "schuß", "schüß", "fluß", "flüß",  "genoß", "verdroß", "goß",    "eßt",
    "ißt",  "friß", "preß", "gräß",  "riß",   "biß",  "ermeß", "guß",   "mißver",  "mißge",  "unermeß"};

/// With th where t is written today; "th" of two words ("Rathaus") is not among them.
constexpr std::string_view with_th[] = {
    "athem", "muth",  "noth",  "roth",  "werth", "wirth",   "thum",   "thüm",  "thür",   "thrän", "thal",
    "thäl",  "thor",  "thau",  "thun",  "thut",  "that",    "thät",   "theil", "theuer", "thier", "thurm",
    "thürm", "blüth", "gluth", "fluth", "ruthe", "heimath", "miethe", "thöri", "loth"};

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
        text.replace(at, from.size(), to);
}

bool holds(std::string const& word, std::string_view part) { return word.find(part) != std::string::npos; }

} // namespace

std::string modern_spelling(std::string word) {
    for (auto const stem : with_th)
        if (auto const at = word.find(stem); at != std::string::npos) word.erase(word.find("th", at) + 1, 1);
    for (auto const stem : short_before_ss)
        if (holds(word, stem) && !holds(word, "ieß") && !holds(word, "groß")) {
            replace_all(word, "ß", "ss");
            break;
        }
    replace_all(word, "todt", "tot");
    replace_all(word, "ey", "ei");
    replace_all(word, "gieng", "ging");
    replace_all(word, "fieng", "fing");
    constexpr std::pair<std::string_view, std::string_view> whole[] = {
        {"in's", "ins"}, {"an's", "ans"},       {"auf's", "aufs"}, {"für's", "fürs"},
        {"um's", "ums"}, {"durch's", "durchs"}, {"wol", "wohl"}};
    for (auto const& [old, now] : whole)
        if (word == old) return std::string(now);
    return word;
}

} // namespace vowelway::diction
