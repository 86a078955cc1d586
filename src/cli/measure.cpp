// SPDX-License-Identifier: MIT
// vowelway measure: resonances from a recording of a whisper, a creak or a low note.
#include "cli/commands.hpp"
#include "cli/measuring.hpp"
#include "cli/outputs.hpp"
#include "cli/record.hpp"
#include "cli/remarks.hpp"
#include "cli/standard_output.hpp"
#include "cli/today.hpp"
#include "vowelway/analysis/history.hpp"
#include "vowelway/analysis/reference.hpp"
#include "vowelway/chart/draw_card.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/profile/write_profile.hpp"
#include "vowelway/report/measurement_report.hpp"
#include "vowelway/report/recording_card.hpp"

#include <fmt/format.h>

#include <ctime>
#include <filesystem>
#include <memory>

namespace vowelway::cli {
namespace {

struct Settings {
    MeasuringOptions measuring;
    Outputs outputs;
    std::string into, name, date, note;
    RecordOptions record;
    bool script = false;
};

VoiceType voice_of(std::string const& name) {
    auto const voice = parse_voice_type(name);
    if (!voice || *voice == VoiceType::other)
        throw InputError(worded("there is no average voice \"{0}\"", name),
                         worded("name bass, baritone, tenor, countertenor, alto, mezzo, soprano or treble"));
    return *voice;
}

/// Whom to measure: the profile to extend, the one named, or a new one over the average of the voice type.
Profile profile_for(Settings const& s, Remarks& remarks) {
    if (!s.into.empty() && std::filesystem::exists(s.into)) {
        if (!s.measuring.singer.empty())
            bad_command_line("--singer", worded("is not needed with --into an existing profile"));
        return io::read_whole_profile(s.into);
    }
    if (!s.measuring.singer.empty()) {
        if (std::filesystem::exists(s.measuring.singer)) return io::read_whole_profile(s.measuring.singer);
        Profile p;
        p.singer = io::find_singer(s.measuring.singer, remarks);
        return p;
    }
    if (s.measuring.voice.empty())
        throw InputError(worded("there is nothing to say where this singer's resonances should be"),
                         worded("name the voice (--voice tenor), a profile (--singer me.yaml), or --into an "
                                "existing profile"));
    Profile p;
    p.singer = io::built_in_voice(voice_of(s.measuring.voice));
    return p;
}

/// The name given, that of the profile, or that of the file to be begun.
std::string name_of(Settings const& s, Profile const& profile) {
    if (!s.name.empty()) return s.name;
    if (!profile.singer.average) return profile.singer.name;
    return s.into.empty() ? worded("A new recording") : std::filesystem::path(s.into).stem().string();
}

void write_into(Settings const& s, Profile const& profile, analysis::Measurements const& m) {
    auto const history = analysis::measured_history(m, s.date, s.note);
    auto const shifts = analysis::learned_shifts(m, profile.shifts, s.date);
    auto const began = [&] {
        return io::begin_profile(s.into, analysis::begin_profile(name_of(s, profile), profile.singer.voice,
                                                                 profile.singer.tuning, history, shifts));
    };
    // Another run may begin the profile in the same moment: then it is there to be extended.
    if (std::filesystem::exists(s.into) || !began()) io::extend_profile(s.into, history, shifts);
    say(worded("{0}: {1} measurements written, {2}", s.into, history.size(), s.date) + "\n");
}

void record(Settings const& s) {
    if (s.measuring.audio != std::vector{s.record.file} || !s.measuring.cues.empty())
        bad_command_line("--record", worded("goes without AUDIO and --cues"));
    auto options = s.record;
    options.repeat = std::max(1, s.measuring.repeat);
    record_vowels(parse_vowels(s.measuring.vowels), options);
}

/// What the student is to do: in the terminal, or to print.
void print_card(Settings const& s) {
    s.outputs.check({s.measuring.look.theme});
    auto const card = analysis::recording_card(
        parse_vowels(s.measuring.vowels.empty() ? "i e a o u" : s.measuring.vowels), s.measuring.repeat);
    auto const no_data = [] {
        bad_command_line("--script", worded("is a text or a page to print: .txt, .pdf, .svg or .png"));
        return std::string();
    };
    s.outputs.write({{Form::table, [&] { return report::recording_card_text(card); }},
                     {Form::json, no_data},
                     chart_writer(card, chart_options(s.measuring.look))});
}

void run(Settings s) {
    if (s.script) {
        print_card(s);
        return;
    }
    if (!s.record.file.empty() && s.measuring.audio.empty()) s.measuring.audio = {s.record.file};
    auto inputs = inputs_of(s.measuring);
    inputs.push_back(s.into);
    s.outputs.check(inputs);
    auto const charts = chart_options(s.measuring.look);
    if (s.date.empty()) s.date = today();
    Remarks remarks;
    auto const profile = profile_for(s, remarks);
    auto const reference = reference_for(profile.singer);
    auto const request = request_for(s.measuring, reference, profile);
    if (!s.record.file.empty()) record(s);
    auto const recordings = read_recordings(s.measuring, remarks);
    auto const files = names_of(recordings);
    auto m = measure(recordings, request);
    analysis::add_remarks(m, std::move(remarks), reference);
    print_remarks(m.remarks);
    auto map = probe_map(m, recordings, reference, s.date);
    map.who = name_of(s, profile);
    s.outputs.write({{Form::table, [&] { return report::measurement_text(m, files, reference.tuning); }},
                     {Form::json, [&] { return report::measurement_json(m, files); }},
                     chart_writer(map, charts)});
    if (!s.outputs.prints()) say(report::refusals_text(m, files));
    if (m.vowels.empty())
        throw InputError(
            worded("no take gives a result"),
            worded("see the reason of each above, and record again: softly and briefly, never when hoarse"));
    if (!s.into.empty()) write_into(s, profile, m);
}

} // namespace

void add_measure(Command& program) {
    auto command =
        program.add("measure", "Resonances of a singer's vowels from a whisper, a creak or a low note");
    auto s = std::make_shared<Settings>();
    add_measuring_options(command, s->measuring);
    command.value("--voice", s->measuring.voice, "the voice type, if the singer has no profile");
    command.value("--singer", s->measuring.singer, "the singer's profile, or a voice type");
    command.value("--into", s->into, "the profile to add to, or a new one");
    command.value("--name", s->name, "the singer's name in a new profile (default: the name of the file)")
        .text();
    command.value("--date", s->date, "date of the recording, such as 2026-10-03 (default: today)").day();
    command.value("--note", s->note, "a note kept with the measurement").text();
    command
        .value(
            "--record", s->record.file,
            "record the vowels from the microphone into this .wav or .flac, one at a time, then measure it")
        .called("FILE");
    command.value("--device", s->record.device, "the microphone for --record, a name of ALSA")
        .shows_default();
    command.flag("--script", s->script, "print what the student is to do, and end");
    s->outputs.add_to(command, {Form::table, Form::json, Form::chart});
    add_chart_look(command, s->measuring.look);
    command.footer("Before you record: a soft whisper or a relaxed creak of a few seconds, never when "
                   "hoarse; stop if it tires "
                   "you.\nExample: vowelway measure take.m4a --vowels \"i e a o u\" --repeat 3 --voice tenor "
                   "--into me.yaml\n "
                   "        vowelway measure take.m4a --vowels \"i e a o u\" --singer me.yaml -o map.pdf");
    command.runs([s] { run(*s); });
}

} // namespace vowelway::cli
