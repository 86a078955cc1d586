// SPDX-License-Identifier: MIT
#include "io/score/voice_names.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace vowelway::io {

namespace {

struct Beginning {
    std::string_view word;
    VoiceType voice;
};

/// Beginnings of words, the longer first where one begins another.
constexpr std::array<Beginning, 18> beginnings{{{"mezzo", VoiceType::mezzo},
                                                {"countert", VoiceType::countertenor},
                                                {"kontert", VoiceType::countertenor},
                                                {"haute", VoiceType::countertenor},
                                                {"contralt", VoiceType::alto},
                                                {"sopran", VoiceType::soprano},
                                                {"canto", VoiceType::soprano},
                                                {"cantus", VoiceType::soprano},
                                                {"superius", VoiceType::soprano},
                                                {"dessus", VoiceType::soprano},
                                                {"treble", VoiceType::treble},
                                                {"alt", VoiceType::alto},
                                                {"tenor", VoiceType::tenor},
                                                {"ténor", VoiceType::tenor},
                                                {"taille", VoiceType::tenor},
                                                {"bariton", VoiceType::baritone},
                                                {"baryton", VoiceType::baritone},
                                                {"bass", VoiceType::bass}}};

/// Initials, alone or run together as the trade writes them.
constexpr std::array<std::string_view, 14> initials{"s",  "a",   "t",   "b",   "sa",   "tb",   "st",
                                                    "ab", "sab", "ssa", "ttb", "satb", "ssaa", "ttbb"};

template <class Use> void each_word(std::string_view name, Use const& use) {
    std::string word;
    for (std::size_t i = 0; i <= name.size(); ++i) {
        auto const c = i < name.size() ? static_cast<unsigned char>(name[i]) : ' ';
        if (c >= 0x80 || std::isalpha(c) != 0) {
            word += static_cast<char>(std::tolower(c));
            continue;
        }
        if (!word.empty()) use(word);
        word.clear();
    }
}

VoiceType of_initial(char c) {
    return c == 's'   ? VoiceType::soprano
           : c == 'a' ? VoiceType::alto
           : c == 't' ? VoiceType::tenor
                      : VoiceType::bass;
}

} // namespace

std::vector<VoiceType> voices_named(std::string_view name) {
    std::vector<VoiceType> out;
    auto const add = [&out](VoiceType voice) {
        // "Mezzo-soprano", "bass-baritone" are one voice.
        bool const joined =
            !out.empty() && ((out.back() == VoiceType::mezzo && voice == VoiceType::soprano) ||
                             (out.back() == VoiceType::bass && voice == VoiceType::baritone));
        if (!joined && std::find(out.begin(), out.end(), voice) == out.end()) out.push_back(voice);
    };
    each_word(name, [&](std::string const& word) {
        for (auto const& [beginning, voice] : beginnings)
            if (word.rfind(beginning, 0) == 0) return add(voice);
        if (std::find(initials.begin(), initials.end(), word) != initials.end())
            for (char const c : word) add(of_initial(c));
    });
    return out;
}

bool names_men(std::string_view name) {
    constexpr std::array<std::string_view, 6> words{"men", "male", "männer", "herren", "hommes", "uomini"};
    bool found = false;
    each_word(name, [&](std::string const& word) {
        found |= std::find(words.begin(), words.end(), word) != words.end();
    });
    return found;
}

VoiceType voice_at(double key, bool men) {
    if (men) return (key >= 62 ? key - 12 : key) >= 54.5 ? VoiceType::tenor : VoiceType::bass;
    return key >= 67.5   ? VoiceType::soprano
           : key >= 61.5 ? VoiceType::alto
           : key >= 54.5 ? VoiceType::tenor
                         : VoiceType::bass;
}

} // namespace vowelway::io
