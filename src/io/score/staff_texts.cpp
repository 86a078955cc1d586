// SPDX-License-Identifier: MIT
#include "io/score/staff_texts.hpp"

#include "core/utf8.hpp"
#include "io/score/lyrics.hpp"
#include "io/score/named.hpp"

#include <string>
#include <string_view>

namespace vowelway::io {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> note_glyphs{{{"whole", "𝅝"},
                                                                                    {"half", "𝅗𝅥"},
                                                                                    {"quarter", "♩"},
                                                                                    {"eighth", "♪"},
                                                                                    {"16th", "𝅘𝅥𝅯"},
                                                                                    {"32nd", "𝅘𝅥𝅰"},
                                                                                    {"breve", "𝅜"},
                                                                                    {"long", "𝆷"},
                                                                                    {"64th", "𝅘𝅥𝅱"}}};

/// Words as letters: programs write dynamics among words with signs of a music font (SMuFL 1.4, U+E520 on),
/// which no font of text has. Other signs of such fonts are left out.
std::string plain_words(pugi::xml_node node) {
    constexpr std::string_view letters = "pmfrszn"; // U+E520 ..
    constexpr std::array<std::string_view, 12> more{"pppppp", "ppppp", "pppp", "ppp",  "pp",   "mp", "mf",
                                                    "pf",     "ff",    "fff",  "ffff", "fffff"}; // U+E527 ..
    auto text = trimmed(node);
    std::string out;
    while (auto const c = utf8::eat(text)) {
        if (*c >= 0xE520 && *c < 0xE520 + letters.size())
            out += letters[*c - 0xE520];
        else if (*c >= 0xE527 && *c < 0xE527 + more.size())
            out += more[*c - 0xE527];
        else if (*c < 0xE000 || *c > 0xF8FF)
            out += utf8::encode(*c);
    }
    return out;
}

std::string metronome_text(pugi::xml_node node) {
    std::string out;
    for (auto const& child : node.children()) {
        std::string_view const name = child.name();
        if (name == "beat-unit") {
            if (!out.empty()) out += " = ";
            out += named(note_glyphs, trimmed(child)).value_or(trimmed(child));
        } else if (name == "beat-unit-dot")
            out += ".";
        else if (name == "per-minute")
            out += " = " + std::string(trimmed(child));
    }
    return out;
}

bool is_mark(pugi::xml_node direction) {
    return std::string_view(direction.attribute("id").value()).starts_with(mark_name);
}

void add_dynamics(pugi::xml_node dynamics, double onset, std::vector<StaffText>& out) {
    for (auto const& mark : dynamics.children()) {
        std::string const text =
            mark.name() == std::string_view("other-dynamics") ? std::string(trimmed(mark)) : mark.name();
        if (!text.empty()) out.push_back({onset, StaffText::Kind::dynamic, text});
    }
}

} // namespace

std::vector<StaffText> texts_of(PartDirection const& direction, bool tempo_only) {
    std::vector<StaffText> out;
    if (is_mark(direction.node)) return out;
    bool const sets_tempo = static_cast<bool>(direction.node.child("sound").attribute("tempo"));
    std::string tempo;
    bool metronome = false;
    for (auto const& type : direction.node.children("direction-type"))
        for (auto const& child : type.children()) {
            std::string_view const name = child.name();
            if (name == "metronome") {
                auto const text = metronome_text(child);
                if (!text.empty()) tempo += (tempo.empty() ? "" : " ") + text;
                metronome = true;
            } else if (auto const words = name == "words" ? plain_words(child) : std::string();
                       !words.empty()) {
                tempo += (tempo.empty() ? "" : " ") + words;
            } else if (name == "rehearsal" && !tempo_only && !trimmed(child).empty()) {
                out.push_back({direction.onset, StaffText::Kind::rehearsal, std::string(trimmed(child))});
            } else if (name == "dynamics" && !tempo_only) {
                add_dynamics(child, direction.onset, out);
            }
        }
    bool const is_tempo = sets_tempo || metronome;
    if (!tempo.empty() && (is_tempo || !tempo_only))
        out.insert(out.begin(),
                   {direction.onset, is_tempo ? StaffText::Kind::tempo : StaffText::Kind::words, tempo});
    return out;
}

} // namespace vowelway::io
