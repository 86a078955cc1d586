// SPDX-License-Identifier: MIT
#include "diction/german/compounds.hpp"

#include "diction/german/german.hpp"

#include <algorithm>
#include <iterator>
#include <set>

namespace vowelway::diction {

std::string german_letters(Word const& word) {
    std::string out;
    for (auto const& letter : word) {
        char c = letter.base < 0x80 ? static_cast<char>(letter.base) : letter.base == U'ß' ? 'S' : '?';
        if (letter.mark == mark::diaeresis) c = c == 'a' ? 'A' : c == 'o' ? 'O' : c == 'u' ? 'U' : c;
        out += c;
    }
    return out;
}

std::size_t german_joint(std::string const& letters) {
    static std::set<std::string_view> const elements = [] {
        std::set<std::string_view> out;
        auto rest = german_elements;
        while (!rest.empty()) {
            auto const end = rest.find(' ');
            if (end > 0) out.insert(rest.substr(0, end));
            if (end == std::string_view::npos) break;
            rest.remove_prefix(end + 1);
        }
        return out;
    }();
    constexpr std::string_view endings[] = {"",      "e",    "en",   "er",    "es",   "s",   "n",    "in",
                                            "innen", "ern",  "ens",  "em",    "t",    "et",  "te",   "end",
                                            "ig",    "lich", "chen", "chens", "lein", "ung", "ungen"};
    std::string_view const all = letters;
    auto const has_vowel = [](std::string_view s) {
        return s.find_first_of("aeiouyAOU") != std::string_view::npos;
    };
    auto const known = [&](std::string_view stem) { return elements.contains(stem); };
    auto const inflected = [&](std::string_view part) {
        return std::any_of(std::begin(endings), std::end(endings), [&](auto const ending) {
            if (part.size() < ending.size() + 3 || !part.ends_with(ending)) return false;
            auto const stem = part.substr(0, part.size() - ending.size());
            return known(stem) || (ending.starts_with('e') && known(std::string(stem) + "e"));
        });
    };
    std::size_t found = 0;
    for (std::size_t cut = 3; cut + 3 <= all.size(); ++cut) {
        auto const left = all.substr(0, cut), right = all.substr(cut);
        if (!has_vowel(left) || left == "ver" || left == "zer" || left.ends_with("ver") ||
            left.ends_with('c') || right.starts_with("ck"))
            continue;
        char const last = left.back(), before_last = left[cut - 2];
        bool const vowels_meet = has_vowel(left.substr(cut - 1)) &&
                                 has_vowel(right.substr(0, 1)); // "Läufer" does not end in "Ufer"
        bool const odd_end = (last == 'i' && before_last != 'e') ||
                             (last == 'u' && before_last != 'a' && before_last != 'e') || last == 'A' ||
                             last == 'O' || last == 'U';
        if (vowels_meet || odd_end || !inflected(right)) continue;
        if (inflected(left)) return cut; // both parts are known
        // "kosmetisch" does not end in "Tisch".
        if (!found && !right.starts_with("tisch")) found = cut;
    }
    return found;
}

} // namespace vowelway::diction
