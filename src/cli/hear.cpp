// SPDX-License-Identifier: MIT
// vowelway hear: resonances, notes and lines as sound.
#include "cli/commands.hpp"
#include "cli/hear_output.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/known_resonances.hpp"
#include "vowelway/plan/sung_source.hpp"
#include "vowelway/report/find_note.hpp"
#include "vowelway/sound/line_sounds.hpp"
#include "vowelway/sound/note_sounds.hpp"
#include "vowelway/sound/vowel_sounds.hpp"

#include <fmt/format.h>

#include <array>
#include <memory>
#include <optional>

namespace vowelway::cli {

namespace {

struct Options {
    PlanOptions plan;
    std::string vowel, measure, only, from, to;
    double beat = 0, seconds = 0, vibrato = -1, tempo = 0;
    bool faults = false, glide = false, kept = false, guide = false, click = false, count_in = false;
    Outputs outputs;
};

constexpr std::array vowel_sound_names{
    std::pair{"low", sound::VowelSound::low}, std::pair{"high", sound::VowelSound::high},
    std::pair{"tones", sound::VowelSound::tones}, std::pair{"noise", sound::VowelSound::noise},
    std::pair{"whisper", sound::VowelSound::whisper}};

enum class What { vowel, note, line };

What what_of(Options const& o) {
    return o.plan.score.empty() ? What::vowel : o.measure.empty() ? What::line : What::note;
}

// An option that means nothing for what is asked is a slip, and said.
void check(Options const& o) {
    auto const what = what_of(o);
    auto const only_with = [&](char const* option, bool given, bool right, std::string_view need) {
        if (given && !right) bad_command_line(option, worded("has a meaning only with {0}", reworded(need)));
    };
    if (what == What::vowel && o.vowel.empty()) missing(worded("a SCORE or --vowel"));
    bool const line = what == What::line;
    only_with("--vowel", !o.vowel.empty(), what == What::vowel, to_word("a singer and no SCORE"));
    only_with("--measure", !o.measure.empty(), what == What::note, to_word("a SCORE"));
    only_with("--faults", o.faults, what == What::vowel && !o.glide, "--vowel");
    only_with("--beat", o.beat > 0, what == What::note, "--measure");
    constexpr auto one = to_word("--vowel or --measure");
    only_with("--glide", o.glide, !line, one);
    only_with("--seconds", o.seconds > 0, !line, one);
    only_with("--only", !o.only.empty(), !line && !o.glide, one);
    constexpr auto whole = to_word("a SCORE as a whole, without --measure");
    only_with("--kept", o.kept, line, whole);
    only_with("--guide", o.guide, line, whole);
    only_with("--click", o.click, line, whole);
    only_with("--count-in", o.count_in, line, whole);
    only_with("--tempo", o.tempo > 0, line, whole);
    only_with("--from", !o.from.empty(), line, whole);
    only_with("--to", !o.to.empty(), line, whole);
    bool const of_note = o.only == "kept" || o.only == "changed";
    if (!o.only.empty() && of_note != (what == What::note))
        bad_command_line("--only", what == What::note
                                       ? worded("a note is heard kept or changed")
                                       : worded("a vowel is heard as low, high, tones, noise or whisper"));
    o.outputs.check(inputs_of(o.plan));
    if (auto const file = o.outputs.first(Form::midi); !file.empty() && !line)
        bad_command_line(
            "--output",
            worded("{0} would hold a line of notes, and one note or vowel is heard; use .wav or .flac",
                   file));
}

Duration each(Options const& o, Duration usual) { return o.seconds > 0 ? seconds(o.seconds) : usual; }

Vibrato vibrato_of(Options const& o, Singer const& singer, Technique const& technique) {
    auto vibrato = singer.vibrato.value_or(technique.vibrato);
    if (o.vibrato >= 0) vibrato.extent = Cents{o.vibrato};
    return vibrato;
}

sound::Programme glide(Options const& o, plan::PlanRequest request, Vowel const& vowel) {
    auto const technique = request.technique;
    request.passage.notes.clear();
    request.vowels = {vowel};
    ThreadPool pool;
    auto const plan = plan::make_plan(std::move(request), {.executor = &pool});
    print_remarks(plan.remarks);
    std::array const planned{plan.vowels.front().resonances};
    return sound::glide_sounds(plan.vowels.front(), sound::voice_of(plan.singer, technique, planned),
                               {each(o, seconds(8)), plan.passage.tuning});
}

sound::Programme vowel_sounds(Options const& o, plan::PlanRequest const& request) {
    auto const vowel = parse_vowel(o.vowel);
    auto const known =
        plan::resonances_of(vowel, request.singer, request.reference ? &*request.reference : nullptr);
    if (!known)
        throw InputError(worded("the profile of {0} has no vowels", request.singer.name),
                         worded("add at least one vowel with fR1 and fR2"));
    auto remarks = request.passage.remarks;
    if (known->estimated)
        remarks.push_back({Remark::Kind::guessed,
                           worded("/{0}/ is not measured: {1}", vowel.ipa(), reworded(known->origin))});
    if (request.singer.average)
        remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    remarks.push_back(
        {Remark::Kind::caution, worded("whisper softly and briefly; a loud whisper strains the voice")});
    print_remarks(remarks);
    std::array const planned{*known};
    sound::VowelSoundsAsked asked{.vowel = *known,
                                  .tract = plan::tract_length_of(request.singer, planned),
                                  .tuning = request.passage.tuning,
                                  .only = {},
                                  .each = each(o, seconds(2)),
                                  .faults = o.faults};
    for (auto const& [name, sound] : vowel_sound_names)
        if (o.only == name) asked.only = sound;
    return sound::vowel_sounds(asked);
}

sound::Programme note_sounds(Options const& o, plan::PlanRequest request) {
    auto const note = report::find_note(request.passage, {o.plan.score, o.measure, o.beat});
    if (o.glide) return glide(o, request, request.passage.notes[note].vowel->held.quality());
    auto const technique = request.technique;
    ThreadPool pool;
    auto const explained = plan::explain_note(std::move(request), note, {.executor = &pool});
    print_remarks(explained.remarks);
    std::array const planned{explained.vowel};
    sound::NoteSoundsAsked asked{
        .only = {}, .each = each(o, seconds(3)), .vibrato = vibrato_of(o, explained.singer, technique)};
    if (o.only == "kept") asked.only = sound::NoteSound::kept;
    if (o.only == "changed") asked.only = sound::NoteSound::changed;
    return sound::note_sounds(explained, sound::voice_of(explained.singer, technique, planned), asked);
}

std::pair<sound::Programme, GuideLine> line_sounds(Options const& o, plan::PlanRequest request) {
    sound::TimingAsked when{.from = {}, .to = {}, .quarter = {}, .count_in = o.count_in};
    if (!o.from.empty()) when.from = o.from;
    if (!o.to.empty()) when.to = o.to;
    if (o.tempo > 0) when.quarter = seconds(60 / o.tempo);
    std::optional<sound::Timing> timing;
    try {
        timing = sound::timing_of(request.passage, when);
    } catch (InputError& error) {
        throw error.at({.file = o.plan.score, .musical = {}});
    }
    auto const technique = request.technique;
    ThreadPool pool;
    auto const plan = plan::make_plan(std::move(request), {.executor = &pool});
    print_remarks(plan.remarks);
    std::vector<VowelResonances> planned;
    for (auto const& vowel : plan.vowels) planned.push_back(vowel.resonances);
    GuideLine guide{.title = plan.passage.title, .notes = {}, .quarter = timing->quarter};
    for (auto const& timed : timing->notes) {
        auto const& note = plan.passage.notes[timed.note];
        guide.notes.push_back({note.pitch, timed.start, timed.length, note.text()});
    }
    return {sound::line_sounds(plan, *timing, sound::voice_of(plan.singer, technique, planned),
                               {.kept = o.kept,
                                .guide = o.guide,
                                .click = o.click,
                                .vibrato = vibrato_of(o, plan.singer, technique)}),
            std::move(guide)};
}

void run(Options const& o) {
    check(o);
    if (what_of(o) == What::vowel) parse_vowel(o.vowel);
    auto request = read_request(o.plan).request;
    sound::Programme programme;
    GuideLine guide;
    if (what_of(o) == What::line)
        std::tie(programme, guide) = line_sounds(o, std::move(request));
    else if (what_of(o) == What::note)
        programme = note_sounds(o, std::move(request));
    else if (o.glide)
        programme = glide(o, std::move(request), parse_vowel(o.vowel).quality());
    else
        programme = vowel_sounds(o, request);
    programme.remarks.push_back(
        {Remark::Kind::caution,
         worded(
             "begin with the volume low, above all on headphones; this is a model and no voice to imitate")});
    print_remarks(programme.remarks);
    write_sound(programme, guide, o.outputs);
}

void add_sound_options(Command& command, Options& o) {
    command.value("--vowel", o.vowel,
                  "without a SCORE: the vowel (IPA or X-SAMPA) whose resonances are heard");
    command.value("--measure", o.measure, "one note of the SCORE: its bar, by the printed number")
        .called("BAR");
    command.value("--beat", o.beat, "the beat on which the note begins (default: the first note of the bar)")
        .between(1.0, 1000.0);
    command
        .value("--only", o.only,
               "of a vowel: tones, low, high, noise or whisper; of a note: kept or changed (default: all)")
        .one_of({"tones", "low", "high", "noise", "whisper", "kept", "changed"});
    command.value("--seconds", o.seconds, "length of each sound").between(0.2, 600.0);
    command.flag("--faults", o.faults, "the two faults of a whisper too, exaggerated, to hear what to leave");
    command.flag("--glide", o.glide, "the vowel on slow slides through its turning point and its meeting");
    command
        .value("--vibrato", o.vibrato,
               "to either side of the pitch; 0 for none (default: the singer's, else the technique's)")
        .between(0.0, widest_vibrato.value)
        .called("CENTS");
    command.flag("--kept", o.kept, "every vowel of the line in its own shape, not as planned");
    command.flag("--guide", o.guide, "a soft tone on each note");
    command.flag("--click", o.click, "a click on each beat");
    command.flag("--count-in", o.count_in, "one bar of clicks first");
    command.value("--tempo", o.tempo, "quarter notes a minute at the beginning (default: the score's)")
        .between(10.0, 400.0);
    command.value("--from", o.from, "first bar of the line, by its printed number").called("BAR");
    command.value("--to", o.to, "last bar").called("BAR");
}

} // namespace

void add_hear(Command& program) {
    auto command =
        program.add("hear", "The resonances, one note kept and changed, or the whole line, as sound");
    auto o = std::make_shared<Options>();
    add_score(command, o->plan);
    add_plan_options(command, o->plan);
    add_sound_options(command, *o);
    o->outputs.add_to(command, {Form::table, Form::wav, Form::flac, Form::midi});
    command.footer("Example:\n  vowelway hear --singer me.yaml --vowel i -o i.wav\n  "
                   "vowelway hear song.mxl --singer me.yaml --measure 12 --beat 3 -o note.wav\n  "
                   "vowelway hear song.mxl --singer me.yaml --count-in -o line.flac");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
