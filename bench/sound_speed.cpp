// SPDX-License-Identifier: MIT
// How fast and how large the sound is: the demo's line, long notes of low and high voices, an hour of a line.
//   sound_speed charts/demo/giusto_amor.mxl charts/demo/serafina_quill.yaml
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/sound/line_sounds.hpp"
#include "vowelway/sound/loudness.hpp"
#include "vowelway/sound/note_sounds.hpp"

#include <fmt/format.h>

#include <cstdio>
#include <ctime>
#include <sys/resource.h>

using namespace vowelway;

namespace {

long memory_kb() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

// Two passes, as a file takes: one to hear how loud it is, one to play.
void time_of(std::string const& name, sound::Programme const& programme) {
    auto const begin = std::clock(); // of the processor: others may be at work
    auto const balance = sound::balance(programme);
    double sum = 0;
    sound::play(programme, balance.gain, [&](std::span<float const> x) { sum += static_cast<double>(x[0]); });
    double const took = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    double const length = in_seconds(length_of(programme));
    fmt::print(
        "{:28} {:7.1f} s of sound in {:6.3f} s: {:4.0f} times real time; {:.1f} LUFS, peak {:.1f} dBFS; "
        "memory up to {} MB (sum {:.3f})\n",
        name, length, took, length / took, balance.loudness.integrated.value, balance.loudness.peak.value,
        memory_kb() / 1024, sum);
}

sound::Programme long_note(VoiceType type, double fo, double length) {
    auto const singer = io::built_in_voice(type);
    auto const voice = sound::voice_of(singer, io::find_technique("classical"));
    sound::Moment const m{.pitch = Pitch(hertz(fo)), .r1 = hertz(600), .r2 = hertz(1200)};
    sound::Programme out;
    out.items.push_back(
        {"", seconds(0), seconds(length), [=] { return sound::sung(voice, sound::steady(m, Vibrato{})); }});
    return out;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::fputs("sound_speed SCORE PROFILE\n", stderr);
        return 2;
    }
    for (double fo : {82.4, 130.8, 261.6, 523.3})
        time_of(fmt::format("a note of {} Hz, 60 s", fo), long_note(VoiceType::bass, fo, 60));
    plan::PlanRequest request;
    request.singer = io::read_profile(argv[2]);
    request.technique = io::find_technique("classical");
    request.draws = 0;
    request.passage = io::read_score(argv[1], {});
    diction::set_vowels(request.passage);
    auto const timing =
        sound::timing_of(request.passage, {.from = {}, .to = {}, .quarter = {}, .count_in = true});
    auto const plan = plan::make_plan(std::move(request));
    auto const voice = sound::voice_of(plan.singer, io::find_technique("classical"));
    auto const line =
        sound::line_sounds(plan, timing, voice, {.kept = false, .guide = true, .click = true, .vibrato = {}});
    time_of("the demo's line", line);
    sound::Programme hour;
    for (Duration start{}; start < seconds(3600); start += length_of(line))
        for (auto item : line.items) {
            item.start += start;
            hour.items.push_back(std::move(item));
        }
    time_of("an hour of it", hour);
}
