// SPDX-License-Identifier: MIT
// The plan as lines to be heard or felt one after another: no table, no sign that is not a word or a letter.
#include "report/format.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/plan/phrases.hpp"
#include "vowelway/report/linear_report.hpp"
#include "vowelway/report/plan_report.hpp"

#include <fmt/format.h>
#include <string_view>

namespace vowelway::report {

namespace {

/// "D flat 5"
std::string spoken(SpelledPitch const& pitch) {
    std::string const step(1, pitch.step);
    auto const& octave = pitch.octave;
    if (pitch.alter == 1) return worded("{0} sharp {1}", step, octave);
    if (pitch.alter == -1) return worded("{0} flat {1}", step, octave);
    if (pitch.alter == 2) return worded("{0} double sharp {1}", step, octave);
    if (pitch.alter == -2) return worded("{0} double flat {1}", step, octave);
    return worded("{0} {1}", step, octave);
}

/// The letter, and X-SAMPA in ASCII for a reader that does not know it.
std::string spoken(Vowel const& vowel) {
    auto const letter = vowel.plain();
    auto const ascii = letter.x_sampa(), ipa = letter.ipa();
    return ascii == ipa ? ipa : ipa + " (X-SAMPA " + ascii + ")";
}

std::string linear_heading(plan::Plan const& plan) {
    auto const& p = plan.passage;
    std::string out = p.title.empty() ? worded("Plan of the range {0}", plan.range.str()) : p.title;
    if (!p.composer.empty()) out += ", " + worded("by {0}", p.composer);
    out += ".\n" +
           worded("For {0}, {1}, technique {2}.", plan.singer.name, reworded(to_string(plan.singer.voice)),
                  plan.technique) +
           "\n";
    if (plan.singer.average) out += fmt::format("{}.\n", reworded(average_voice_notice));
    if (auto const told = transposition_of(p); !told.empty())
        out += fmt::format("{}, {}.\n", told, p.transposed_why);
    return out;
}

std::string vowels(plan::Plan const& plan) {
    std::string out;
    auto const& tuning = plan.passage.tuning;
    for (auto const& v : plan.vowels) {
        out += worded("Vowel {0}: turns over near {1}", spoken(v.resonances.vowel),
                      spoken(tuning.name(v.turning.pitch).pitch)) +
               ", ";
        if (!v.passive_range)
            out += worded("needs a change in all of the range");
        else if (v.passive_range->reaches_top)
            out += worded("may be left alone in all of the range");
        else
            out += worded("may be left alone up to {0}", spoken(tuning.name(v.passive_range->to).pitch));
        out += (v.resonances.estimated ? ", " + worded("estimated") : "") + ".\n";
    }
    return out;
}

std::string line_of(plan::Plan const& plan, plan::PencilMark const& mark) {
    auto const& note = plan.passage.notes[mark.note];
    auto out = worded("Bar {0}, beat {1}, {2}", note.measure, number(note.beat, 2), spoken(note.spelled));
    if (!note.text().empty()) out += ", " + worded("on {0}", note.text());
    out += ": ";
    if (mark.turns) return out + worded("the vowel turns over, let it.") + "\n";
    if (mark.vowel) out += worded("sing toward {0}", spoken(*mark.vowel));
    if (!mark.words.empty()) out += (mark.vowel ? ", " : "") + mark.words;
    if (mark.last > mark.note)
        out += ", " + worded("until bar {0}, beat {1}", plan.passage.notes[mark.last].measure,
                             number(plan.passage.notes[mark.last].beat, 2));
    return out + (mark.sure ? "." : ". " + worded("Not sure, try it.")) + "\n";
}

/// The words of a phrase without the stop at their end: the sentence has its own.
std::string unstopped(std::string words) {
    while (!words.empty() && std::string_view(".,;:!? ").find(words.back()) != std::string_view::npos)
        words.pop_back();
    return words;
}

std::string phrases(plan::Plan const& plan, plan::Pencil const& pencil) {
    std::string out;
    int count = 0;
    for (auto const& phrase : plan::phrases_of(plan.passage)) {
        out += worded("Phrase {0}, {1}: {2}.", ++count, bars_of(plan.passage, phrase),
                      unstopped(words_of(plan.passage, phrase))) +
               "\n";
        for (auto const& mark : pencil.marks)
            if (mark.note >= phrase.from && mark.note < phrase.to) out += line_of(plan, mark);
    }
    return out;
}

} // namespace

std::string plan_linear(plan::Plan const& plan) {
    auto const pencil = plan::pencil_of(plan);
    auto out = linear_heading(plan);
    if (!plan.notes.empty()) out += summary_of(plan, pencil) + "\n";
    for (auto const& caution : pencil.cautions) out += caution + "\n";
    out += vowels(plan) + phrases(plan, pencil);
    return out + std::string(reworded(voice_caution)) + "\n";
}

} // namespace vowelway::report
