// SPDX-License-Identifier: MIT
// The sheet of a singer: one page with two staves and a table.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/notes_on_staff.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/tessitura.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/crossings.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::chart {
namespace {

constexpr std::size_t most_on_a_staff = 12;

/// All of a measured singer; of an average voice, which has every vowel of every table, the seven that all
/// teachers ask for.
std::vector<VowelResonances> shown(Singer const& singer) {
    if (!singer.average) return singer.vowels;
    std::vector<VowelResonances> out;
    for (auto const* ipa : {"i", "e", "ɛ", "a", "ɔ", "o", "u"})
        if (auto const* found = singer.find(parse_vowel(ipa))) out.push_back(*found);
    return out;
}

double draw_staff(Canvas& canvas, Singer const& singer, std::vector<VowelResonances> const& vowels,
                  ResonanceNumber which, double y, double width) {
    bool const first = which.number == 1;
    y = draw_heading(canvas, 0, y, width,
                     first ? worded("First resonance (fR1), as a note")
                           : worded("Second resonance (fR2), as a note"));
    NotesOnStaff notes{
        .sounding = {}, .words = {}, .clef = {'G', 2, first ? 0 : 2}, .look = NotesOnStaff::Look::halves};
    for (std::size_t i = 0; i < std::min(vowels.size(), most_on_a_staff); ++i) {
        notes.sounding.push_back(singer.tuning.name(Pitch(vowels[i].get(which)->centre)).pitch);
        notes.words.push_back(vowels[i].vowel.ipa());
    }
    auto const staff = notes_on_staff(notes, width, canvas.measurer());
    staff.replay(canvas, {0, y + 8});
    return y + 8 + staff.bottom(-1e6, 1e6, 0) + 8;
}

std::string as_pitch(Singer const& singer, Frequency f) { return singer.tuning.name(Pitch(f)).pitch.str(); }

// To 5 Hz, as the table on the terminal has them: nothing is known finer.
long to_five(Frequency f) { return 5 * std::lround(in_hertz(f) / 5); }

std::string with_sd(Singer const& singer, Resonance const& r) {
    return fmt::format("{} ± {} Hz, {}", to_five(r.centre), to_five(r.sd), as_pitch(singer, r.centre));
}

std::string with_sd(Singer const& singer, plan::Crossing const& c) {
    return fmt::format("{} ±{:.0f}", as_pitch(singer, c.pitch.frequency()),
                       std::max(1.0, std::round(in_semitones(c.sd))));
}

/// Where the numbers of a vowel come from, where that is more than the sheet's head says.
std::string origin_of(VowelResonances const& v) {
    if (v.estimated)
        return v.origin.empty() ? worded("estimated, not measured") : worded("estimated: {0}", v.origin);
    return v.origin;
}

double draw_table(Canvas& canvas, Singer const& singer, std::vector<VowelResonances> const& vowels, double y,
                  double width) {
    struct Column {
        double x;
        std::string head;
    };
    Column const columns[] = {{0, worded("vowel")},
                              {0.09 * width, "fR1"},
                              {0.35 * width, "fR2"},
                              {0.63 * width, worded("turns over at")},
                              {0.82 * width, worded("fo meets fR1")}};
    auto const& m = canvas.measurer();
    y = draw_heading(canvas, 0, y, width, worded("Vowel by vowel")) + 10;
    for (auto const& c : columns) canvas.write({c.x, y}, c.head, plain(type::small, ink::soft));
    y += 3;
    for (auto const& v : vowels) {
        auto const turning = plan::crossing({2}, {1}, v.r1), meeting = plan::crossing({1}, {1}, v.r1);
        std::string const cells[] = {slashed(v.vowel), with_sd(singer, v.r1), with_sd(singer, v.r2),
                                     with_sd(singer, turning), with_sd(singer, meeting)};
        y += 12;
        for (std::size_t i = 0; i < std::size(cells); ++i) {
            double const right = i + 1 < std::size(columns) ? columns[i + 1].x - 6 : width;
            auto const style = i == 0 ? bold(type::body) : plain(type::label);
            canvas.write({columns[i].x, y}, fitted(m, cells[i], style, right - columns[i].x), style);
        }
        if (auto const origin = origin_of(v); !origin.empty())
            canvas.write({columns[1].x, y += 9.5},
                         fitted(m, origin, slanted(type::small, ink::soft), width - columns[1].x),
                         slanted(type::small, ink::soft));
        canvas.line({0, y + 3}, {width, y + 3}, {.width = 0.35, .color = ink::rule});
    }
    return y + 8;
}

/// Men's voices do not follow fo with fR1 where they pass it (docs/strategy.md); women's do.
std::string above_the_meeting(VoiceType voice) {
    if (is_mans_voice(voice))
        return worded(
            "fo meets fR1: from here on the note is higher than the vowel's first resonance, and the vowel "
            "opens by itself; let it.");
    return worded("fo meets fR1: from here on the note is higher than the vowel's first resonance; open with "
                  "it, as far as is easy.");
}

double draw_how_to_read(Canvas& canvas, VoiceType voice, double y, double width) {
    std::string const lines[] = {
        worded("turns over at: from this note on the vowel closes by itself when its shape is kept; let it."),
        above_the_meeting(voice),
        worded("The notes of fR1 and fR2 can be heard in a soft whisper (the high one) and a creak. 15 over "
               "a clef: two octaves higher than written. ±: semitones, or Hz.")};
    for (auto const& line : lines)
        for (auto const& part : wrapped(canvas.measurer(), line, plain(type::label), width))
            canvas.write({0, y += 11}, part, plain(type::label));
    return y + 6;
}

Head head_of_sheet(Singer const& singer) {
    auto head = head_of(singer, "");
    head.title = singer.name;
    head.who = std::string(reworded(to_string(singer.voice)));
    head.how = singer.range ? worded("range {0}", singer.range->str()) : std::string();
    head.sentence = worded("Where each vowel resonates, and where it turns over as the note rises.");
    return head;
}

double draw_sheet(Canvas& canvas, Singer const& singer, Head const& head, double width) {
    auto const vowels = shown(singer);
    double y = draw_title(canvas, head, width);
    y = draw_staff(canvas, singer, vowels, {2}, y, width);
    y = draw_staff(canvas, singer, vowels, {1}, y, width);
    y = draw_table(canvas, singer, vowels, y, width);
    return draw_how_to_read(canvas, singer.voice, y, width);
}

} // namespace

Page singer_sheet(Singer const& singer, Size paper, TextMeasurer const& measurer) {
    auto const head = head_of_sheet(singer);
    return on_one_page(head, worded("singer's sheet"), paper, measurer,
                       [&](Canvas& canvas, double width) { return draw_sheet(canvas, singer, head, width); });
}

} // namespace vowelway::chart
