// SPDX-License-Identifier: MIT
#include "cli/profile_new.hpp"

#include "cli/command.hpp"
#include "cli/profile_ask.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/format.h>

#include <cmath>
#include <filesystem>
#include <iostream>
#include <memory>
#include <string>

namespace vowelway::cli {

namespace {

struct Settings {
    bool ask = false;
    std::string file, name = worded("New singer"), voice;
};

VoiceType voice_of(std::string const& name) {
    auto const voice = parse_voice_type(name);
    if (voice && *voice != VoiceType::other) return *voice;
    throw InputError(worded("there is no voice type \"{0}\"", name),
                     worded("name bass, baritone, tenor, countertenor, alto, mezzo, soprano or treble"));
}

long tens(Frequency f) { return std::lround(in_hertz(f) / 10) * 10; }

/// Questions as comments, each with an example; the numbers of the average voice only as such.
std::string template_for(std::string const& name, VoiceType type) {
    auto const average = io::built_in_voice(type);
    auto const voice = to_string(type);
    auto out =
        worded("# The profile of a singer. Lines that begin with # are questions and examples:\n"
               "# answer a question by taking away its # and putting in your own values.") +
        fmt::format("\nvowelway: 1\nsinger: {}\nvoice: {}\n\n", quoted(name), voice) +
        worded("# From which note to which is singing comfortable?") +
        fmt::format("\n#range: {}\n\n", average.range ? average.range->str() : "C3..A4") +
        worded("# How is your A4 tuned, if not to 440 Hz?") + "\n#a4: 442 Hz\n\n" +
        worded("# How and when were the resonances found: whisper, creak, sung, or typed (by ear)?") +
        fmt::format("\n#source: {{method: creak, date: 2026-10-03, note: \"{}\"}}\n\n",
                    worded("first lesson")) +
        worded("# Where are the resonances of each vowel, in Hz or as a pitch, and how sure is it?\n"
               "# The numbers are those of the average {0}, nobody's own: take them as examples only.\n"
               "# To measure instead: {1}\n"
               "# (a soft whisper or a relaxed creak of a few seconds; never when hoarse; stop if it tires "
               "you).",
               reworded(voice),
               fmt::format("vowelway measure take.wav --vowels \"i e a o u\" --voice {} --into new.yaml",
                           voice)) +
        "\nvowels:\n";
    for (auto const& v : average.vowels)
        out += fmt::format("#  {}: {{fR1: {} Hz ± 30, fR2: {} Hz ± 80}}\n", v.vowel.ipa(), tens(v.r1.centre),
                           tens(v.r2.centre));
    return out;
}

[[noreturn]] void refuse_existing(std::string const& file) {
    throw InputError(worded("{0} is there already", file), worded("name a new file"));
}

void run(Settings const& s) {
    auto const voice = voice_of(s.voice);
    if (!s.file.empty() && s.file != "-" && std::filesystem::exists(s.file)) refuse_existing(s.file);
    auto const text = s.ask ? asked_profile(std::cin, s.name, voice) : template_for(s.name, voice);
    if (s.file.empty() || s.file == "-") {
        print(text);
        finish_standard_output();
        return;
    }
    if (!files::create(s.file, text)) refuse_existing(s.file);
    say(worded("wrote {0}", s.file) + "\n");
}

} // namespace

void add_profile_new(Command& profile) {
    auto command = profile.add("new", "A profile to fill in: questions as comments, with examples");
    auto s = std::make_shared<Settings>();
    command.value("FILE", s->file, "the new file (default: standard output)");
    command.value("--voice", s->voice, "the voice type").required();
    command.value("--name", s->name, "the singer's name").text();
    command.flag("--ask", s->ask, "ask in the terminal, and check each answer at once");
    command.footer("Example: vowelway profile new me.yaml --voice tenor --name \"Ottavio Brandt\"");
    command.runs([s] { run(*s); });
}

} // namespace vowelway::cli
