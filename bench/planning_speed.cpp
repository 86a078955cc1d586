// SPDX-License-Identifier: MIT
// Notes planned a second, with and without draws, and growth with the length of the passage.
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <fmt/format.h>

#include <chrono>
#include <fstream>
#include <string>

using namespace vowelway;

namespace {

// A tune that wanders over an octave and a half on seven vowels, a third of a second a note.
Passage wandering(std::size_t notes, Tuning const& tuning) {
    Passage passage;
    passage.tuning = tuning;
    static char const* const vowels[] = {"a", "e", "i", "o", "u", "ɛ", "ɔ"};
    unsigned random = 1;
    int key = 67;
    for (std::size_t i = 0; i < notes; ++i) {
        random = random * 1664525u + 1013904223u;
        key += static_cast<int>(random >> 28) % 5 - 2;
        if (key < 60) key = 62;
        if (key > 78) key = 76;
        SungNote note{tuning.pitch(key), {},           "1",   1,  seconds(static_cast<double>(i) / 3),
                      seconds(1.0 / 3),  false,        false, {}, std::nullopt,
                      std::nullopt,      std::nullopt, false};
        note.syllables = {{"la", Syllable::Part::single}};
        note.vowel = SungVowel{parse_vowel(vowels[(random >> 20) % 7]), {}, {}, VowelOrigin::typed};
        passage.notes.push_back(note);
    }
    return passage;
}

double peak_megabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
    return 0;
}

} // namespace

int main() {
    auto const singer = io::built_in_voice(VoiceType::soprano);
    fmt::print("{:>8} {:>6} {:>10} {:>12} {:>9}\n", "notes", "draws", "seconds", "notes/s", "peak MB");
    for (std::size_t notes : {100u, 1000u, 10'000u, 100'000u})
        for (int draws : {0, 200}) {
            if (draws > 0 && notes > 10'000) continue;
            plan::PlanRequest request;
            request.singer = singer;
            request.passage = wandering(notes, singer.tuning);
            request.technique = io::find_technique("classical");
            request.draws = draws;
            auto const start = std::chrono::steady_clock::now();
            auto const plan = make_plan(std::move(request));
            double const s = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
            fmt::print("{:8} {:6} {:10.3f} {:12.0f} {:9.0f}\n", plan.notes.size(), draws, s,
                       static_cast<double>(notes) / s, peak_megabytes());
        }
}
