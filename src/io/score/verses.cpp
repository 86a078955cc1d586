// SPDX-License-Identifier: MIT
#include "io/score/verses.hpp"

#include "io/score/lyric_lines.hpp"
#include "io/score/voices.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

/// Words of the first verse that this one takes over; says how many.
std::size_t take_refrain(VoiceLine& line, std::vector<std::string> const& text_lines) {
    constexpr std::size_t least_refrain = 4; // syllables in a row; fewer are taken for a different rhythm
    std::vector<LineEvent*> run;
    std::size_t taken = 0;
    auto const finish = [&] {
        if (run.size() >= least_refrain)
            for (auto* e : run) {
                e->lyric = lyric_on(*e->event, text_lines.front());
                e->other_verse = false;
                ++taken;
            }
        run.clear();
    };
    std::string const* verse = nullptr;
    for (auto& measure : line.measures) {
        if (verse && *verse != measure.verse) finish();
        verse = &measure.verse;
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) continue;
            if (e.lyric) {
                finish();
                continue;
            }
            for (auto const& number : text_lines)
                if (number != measure.verse && lyric_on(*e.event, number)) e.other_verse = true;
            if (measure.verse != text_lines.front() && lyric_on(*e.event, text_lines.front()))
                run.push_back(&e);
        }
    }
    finish();
    return taken;
}

/// Marks the notes after a silence that only other verses sing; says how many.
std::size_t leave_out_unsung(VoiceLine& line) {
    bool after_silence = true;
    std::size_t unsung = 0;
    for (auto& measure : line.measures)
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) {
                after_silence = true;
                continue;
            }
            if (after_silence && !e.lyric && e.other_verse) {
                e.unsung = true;
                ++unsung;
            } else
                after_silence = false;
        }
    return unsung;
}

} // namespace

void fit_verse(VoiceLine& line, std::vector<std::string> const& text_lines, Remarks& remarks) {
    auto const taken = take_refrain(line, text_lines);
    auto const unsung = leave_out_unsung(line);
    bool const every = std::any_of(line.measures.begin(), line.measures.end(),
                                   [&](LineMeasure const& m) { return m.verse != line.verse; });
    if (taken > 0)
        remarks.push_back(
            {Remark::Kind::assumed,
             every
                 ? worded("a later verse has no words for {0} notes that the first verse sings; taken as a "
                          "refrain",
                          taken)
                 : worded(
                       "verse {0} has no words for {1} notes that the first verse sings; taken as a refrain",
                       line.verse, taken)});
    if (unsung > 0)
        remarks.push_back({Remark::Kind::assumed,
                           unsung == 1
                               ? worded("1 note is only sung in other verses and left out")
                               : worded("{0} notes are only sung in other verses and left out", unsung)});
}

void move_off_rests(VoiceLine& line, Remarks& remarks) {
    LineEvent* rest = nullptr;
    int moved = 0;
    for (auto& measure : line.measures)
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) {
                bool const word = e.event->rest && e.lyric && !e.lyric->syllables.empty();
                if (word) rest = &e;
                continue;
            }
            if (rest && !e.lyric) {
                e.lyric = std::move(rest->lyric);
                rest->lyric.reset();
                ++moved;
            }
            rest = nullptr;
        }
    if (moved > 0)
        remarks.push_back({Remark::Kind::assumed,
                           moved == 1
                               ? worded("1 syllable stands under a rest and goes to the note after")
                               : worded("{0} syllables stand under a rest and go to the note after", moved)});
}

std::string choose_verse(XmlSource const& source, std::vector<std::string> const& lines, bool phonetic_too,
                         int wish, Remarks& remarks) {
    if (lines.empty()) return {};
    if (wish == every_verse) return lines.front();
    if (wish == 0) {
        if (lines.size() > 1)
            remarks.push_back(
                {Remark::Kind::assumed,
                 worded("verse {0} of {1} is taken (--verse chooses another)", lines.front(), lines.size())});
        return lines.front();
    }
    auto const exact = std::find(lines.begin(), lines.end(), std::to_string(wish));
    if (exact != lines.end() && !phonetic_too) return *exact;
    if (wish > 0 && static_cast<std::size_t>(wish) <= lines.size())
        return lines[static_cast<std::size_t>(wish) - 1];
    throw InputError(worded("the part has no verse {0}", wish),
                     worded("it has {0}; count from 1", lines.size()), {source.file(), 0, 0, {}});
}

} // namespace vowelway::io
