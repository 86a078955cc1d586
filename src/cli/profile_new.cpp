// SPDX-License-Identifier: MIT
#include "cli/profile_new.hpp"

#include "cli/command.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/format.h>

#include <cmath>
#include <memory>
#include <string>

namespace vowelway::cli {

namespace {

struct Settings {
    std::string file, name = "New singer", voice;
};

VoiceType voice_of(std::string const& name) {
    auto const voice = parse_voice_type(name);
    if (voice && *voice != VoiceType::other) return *voice;
    throw InputError("there is no voice type \"" + name + "\"",
                     "name bass, baritone, tenor, countertenor, alto, mezzo, soprano or treble");
}

/// Between double quotes of YAML.
std::string quoted(std::string const& text) {
    std::string out = "\"";
    for (char const c : text) out += c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
    return out + "\"";
}

long tens(Frequency f) { return std::lround(in_hertz(f) / 10) * 10; }

/// Questions as comments, each with an example; the numbers of the average voice only as such.
std::string template_for(std::string const& name, VoiceType type) {
    auto const average = io::built_in_voice(type);
    auto out = fmt::format(
        "# The profile of a singer. Lines that begin with # are questions and examples:\n"
        "# answer a question by taking away its # and putting in your own values.\n"
        "vowelway: 1\n"
        "singer: {}\n"
        "voice: {}\n\n"
        "# From which note to which is singing comfortable?\n"
        "#range: {}\n\n"
        "# How is your A4 tuned, if not to 440 Hz?\n"
        "#a4: 442 Hz\n\n"
        "# How and when were the resonances found: whisper, creak, sung, or typed (by ear)?\n"
        "#source: {{method: creak, date: 2026-10-03, note: \"first lesson\"}}\n\n"
        "# Where are the resonances of each vowel, in Hz or as a pitch, and how sure is it?\n"
        "# The numbers are those of the average {}, nobody's own: take them as examples only.\n"
        "# To measure instead: vowelway measure take.wav --vowels \"i e a o u\" --voice {} --into new.yaml\n"
        "# (a soft whisper or a relaxed creak of a few seconds; never when hoarse; stop if it tires you).\n"
        "vowels:\n",
        quoted(name), to_string(type), average.range ? average.range->str() : "C3..A4", to_string(type),
        to_string(type));
    for (auto const& v : average.vowels)
        out += fmt::format("#  {}: {{fR1: {} Hz ± 30, fR2: {} Hz ± 80}}\n", v.vowel.ipa(), tens(v.r1.centre),
                           tens(v.r2.centre));
    return out;
}

void run(Settings const& s) {
    auto const text = template_for(s.name, voice_of(s.voice));
    if (s.file.empty() || s.file == "-") {
        print(text);
        finish_standard_output();
        return;
    }
    if (!files::create(s.file, text)) throw InputError(s.file + " is there already", "name a new file");
    say("wrote " + s.file + "\n");
}

} // namespace

void add_profile_new(Command& profile) {
    auto command = profile.add("new", "A profile to fill in: questions as comments, with examples");
    auto s = std::make_shared<Settings>();
    command.value("FILE", s->file, "the new file (default: standard output)");
    command.value("--voice", s->voice, "the voice type").required();
    command.value("--name", s->name, "the singer's name").text();
    command.footer("Example: vowelway profile new me.yaml --voice tenor --name \"Ottavio Brandt\"");
    command.runs([s] { run(*s); });
}

} // namespace vowelway::cli
