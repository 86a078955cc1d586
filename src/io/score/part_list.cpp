// SPDX-License-Identifier: MIT
#include "core/text.hpp"
#include "io/score/part_events.hpp"
#include "io/score/voice_names.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <unordered_map>

namespace vowelway::io {

namespace {

std::string one_line(std::string_view text) {
    std::string out;
    for (char c : text::trim(text)) {
        bool const blank = c == ' ' || c == '\n' || c == '\r' || c == '\t';
        if (!blank)
            out += c;
        else if (!out.ends_with(' '))
            out += ' ';
    }
    return out;
}

/// Names of voices in the languages of song, as printed before the staff; whole words.
/// Common practice, no source.
constexpr std::array<std::string_view, 31> voice_names{
    "voice",  "vocal",        "vocals",   "singer",  "soprano", "mezzo",      "alto",   "contralto",
    "tenor",  "tenore",       "baritone", "bariton", "baryton", "baritono",   "bass",   "basso",
    "canto",  "voce",         "chant",    "voix",    "gesang",  "singstimme", "stimme", "sopran",
    "tenors", "countertenor", "choir",    "chorus",  "coro",    "chor",       "alt"};

bool names_a_voice(std::string_view name) {
    // "S.", "SATB"; but not "Clarinet in B"
    if (name.size() <= 4 && name.find(' ') == std::string_view::npos && !voices_named(name).empty())
        return true;
    std::string word;
    for (std::size_t i = 0; i <= name.size(); ++i) {
        auto const c = i < name.size() ? static_cast<unsigned char>(name[i]) : ' ';
        if (c >= 0x80 || std::isalpha(c) != 0) {
            word += static_cast<char>(std::tolower(c));
            continue;
        }
        if (std::find(voice_names.begin(), voice_names.end(), word) != voice_names.end()) return true;
        word.clear();
    }
    return false;
}

} // namespace

std::vector<PartInfo> list_parts(XmlSource const& source) {
    std::vector<PartInfo> out;
    std::unordered_map<std::string, std::size_t> index;
    auto const add = [&](PartInfo info) -> PartInfo& {
        auto const [at, fresh] = index.emplace(info.id, out.size());
        if (fresh && out.size() >= static_cast<std::size_t>(most_score_parts))
            throw InputError(worded("the score has more than {0} parts", most_score_parts),
                             worded("export only the voice part"), {source.file(), 0, 0, {}});
        if (fresh) out.push_back(std::move(info));
        return out[at->second];
    };
    for (auto const& entry : source.root().child("part-list").children("score-part")) {
        PartInfo info{entry.attribute("id").value(), one_line(entry.child_value("part-name")), false, {}};
        bool played = false; // "Bass" may be one that is bowed or plucked
        for (auto const& instrument : entry.children("score-instrument")) {
            auto const sound = trimmed(instrument.child("instrument-sound"));
            if (sound.starts_with("voice.")) info.vocal = true;
            for (auto const* family : {"strings.", "pluck.", "brass."}) played |= sound.starts_with(family);
        }
        if (!played && names_a_voice(info.name)) info.vocal = true;
        add(std::move(info));
    }
    auto const part = [&](pugi::xml_node node) -> PartInfo& {
        return add({node.attribute("id").value(), {}, false, {}});
    };
    if (source.root().name() == std::string_view("score-timewise")) {
        for (auto const& measure : source.root().children("measure"))
            for (auto const& own : measure.children("part")) part(own).measures.push_back({own, measure});
        return out;
    }
    for (auto const& own : source.root().children("part")) {
        auto& info = part(own);
        if (!info.measures.empty())
            continue; // a second part of the same id is an error of the score; the first counts
        for (auto const& measure : own.children("measure")) info.measures.push_back({measure, measure});
    }
    return out;
}

} // namespace vowelway::io
