// SPDX-License-Identifier: MIT
#include "vowelway/report/choir_report.hpp"

#include "report/json_parts.hpp"
#include "report/plan_tables.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/choir_words.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace vowelway::report {

namespace {

constexpr std::size_t most_told = 12; ///< words in the text; the JSON has all

SungNote const& section_note(plan::Choir const& choir, plan::SungTogether const& section) {
    auto const& plan = choir.parts[section.part].plan;
    return plan.passage.notes[plan.notes[section.note].note];
}

Json offset_json(plan::HeardOffset const& offset) {
    return {{"openness_bark", rounded(offset.openness.value, 0.01)},
            {"front_bark", rounded(offset.front.value, 0.01)}};
}

Json section_json(plan::Choir const& choir, plan::SungTogether const& section, bool common) {
    auto const& plan = choir.parts[section.part].plan;
    auto const& d = *plan.notes[section.note].decision;
    Json out{{"part", choir.parts[section.part].name},
             {"note", plan.notes[section.note].note},
             {"pitch", section_note(choir, section).spelled.str()},
             {"zone", to_string(d.zone.zone)},
             {"advice", to_string(d.advice)},
             {"heard", d.heard.vowel.ipa()},
             {"heard_offset", offset_json(section.heard)},
             {"leaves", section.leaves}};
    if (common)
        out["common"] = {{"ipa", section.shade.ipa()},
                         {"ask", section.ask},
                         {"heard_offset", offset_json(section.common)},
                         {"extra_cost", rounded(section.extra, 0.001)}};
    return out;
}

Json word_json(plan::Choir const& choir, plan::SharedWord const& word) {
    Json out{{"measure", word.measure},
             {"beat", rounded(word.beat, 0.001)},
             {"start_s", rounded(in_seconds(word.start), 0.001)},
             {"duration_s", rounded(in_seconds(word.length), 0.001)},
             {"syllable", word.syllable},
             {"ipa", word.vowel.ipa()},
             {"homophonic", word.homophonic},
             {"apart_bark", rounded(word.apart.value, 0.01)},
             {"parts_company", word.parts_company()},
             {"why", word.why},
             {"common_found", word.has_common}};
    out["ask"] = plan::ask_of(choir, word);
    out["common_apart_bark"] = rounded(word.common_apart.value, 0.01);
    out["weight"] = rounded(word.weight, 0.001);
    out["also"] = word.also;
    out["sections"] = Json::array();
    for (auto const& section : word.sections)
        out["sections"].push_back(section_json(choir, section, word.has_common));
    return out;
}

Json partial_json(plan::Choir const& choir, plan::SharedWord const& word,
                  plan::SharedPartial const& partial) {
    Json of = Json::array();
    for (auto const& one : partial.of)
        of.push_back({{"part", choir.parts[word.sections[one.section].part].name},
                      {"harmonic", one.harmonic},
                      {"resonance", one.resonance > 0 ? Json(one.resonance) : Json()}});
    return {{"hz", hz(partial.frequency)}, {"spread_cents", rounded(partial.spread.value, 0.1)}, {"of", of}};
}

Json chord_json(plan::Choir const& choir, plan::Chord const& chord) {
    auto const& word = choir.words[chord.word];
    Json out{{"word", chord.word}};
    auto const list = [&](std::vector<plan::SharedPartial> const& partials) {
        Json l = Json::array();
        for (auto const& partial : partials) l.push_back(partial_json(choir, word, partial));
        return l;
    };
    out["together"] = list(chord.together);
    out["rubs"] = list(chord.rubs);
    out["unsettled"] = Json::array();
    for (auto const s : chord.unsettled) out["unsettled"].push_back(choir.parts[word.sections[s].part].name);
    return out;
}

/// A word in three lines: where, what to ask whom for, and why, with the chord to tune it by.
std::string told_word(plan::Choir const& choir, plan::SharedWord const& word, std::size_t number) {
    auto const chord = plan::chord_words_of(choir, word).str();
    auto why = word.why + (word.why.ends_with('.') ? "" : ".");
    if (!chord.empty()) why += " " + chord;
    return fmt::format("{:>2}. {}: {} /{}/\n    {}\n    {}\n", number, plan::named_bars_of(choir, word),
                       word.syllable, word.vowel.ipa(), plan::ask_of(choir, word), why);
}

std::string director_text(plan::Choir const& choir) {
    auto out = worded("For the director") + "\n" + plan::summary_of(choir) + "\n";
    if (choir.rehearse.empty()) return out;
    out += "\n" + worded("To rehearse first") + "\n";
    bool tipped = false;
    for (std::size_t i = 0; i < std::min(most_told, choir.rehearse.size()); ++i) {
        auto const& word = choir.words[choir.rehearse[i]];
        out += told_word(choir, word, i + 1);
        tipped = tipped || !plan::chord_words_of(choir, word).unsettled.empty();
    }
    if (choir.rehearse.size() > most_told)
        out += worded("and {0} more, in the JSON", choir.rehearse.size() - most_told) + "\n";
    if (tipped)
        out += worded("Easily tipped: a small change turns the vowel over; settle it before tuning.") + "\n";
    return out;
}

} // namespace

std::string choir_json(plan::Choir const& choir) {
    Json out{{"vowelway", 1}};
    auto const& first = choir.parts.front().plan.passage;
    out["title"] = first.title;
    out["composer"] = first.composer;
    out["verse"] = first.verse;
    out["summary"] = plan::summary_of(choir);
    out["parts"] = Json::array();
    for (auto const& part : choir.parts) {
        Json one{{"part", part.name}};
        one["voice"] = to_string(part.plan.singer.voice);
        one["voice_guessed"] = part.voice_guessed;
        one["words_from"] = part.words_from.empty() ? Json() : Json(part.words_from);
        one["plan"] = Json::parse(plan_json(part.plan));
        out["parts"].push_back(std::move(one));
    }
    out["words"] = Json::array();
    for (auto const& word : choir.words) out["words"].push_back(word_json(choir, word));
    out["rehearse"] = choir.rehearse;
    out["chords"] = Json::array();
    for (auto const& chord : choir.chords) out["chords"].push_back(chord_json(choir, chord));
    out["warnings"] = warnings_json(choir.remarks);
    return text_of(out);
}

std::string choir_text(plan::Choir const& choir, Numbers numbers) {
    auto out = director_text(choir);
    for (auto const& part : choir.parts) {
        auto const told = part.words_from.empty()
                              ? part.name
                              : worded("{0} (with the words of {1})", part.name, part.words_from);
        out += "\n" + told + "\n" + plan_tables(part.plan, numbers);
    }
    return out + "\n" + plan_key() + fmt::format("\n{}\n", reworded(voice_caution));
}

} // namespace vowelway::report
