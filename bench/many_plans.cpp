// SPDX-License-Identifier: MIT
// many_plans THREADS SCORE..: every song for every average voice in 13 keys, without draws, in one process; a
// cache for each voice. Prints the time, the time of a plan and the peak of memory.
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/demand.hpp"

#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <string>
#include <vector>

using namespace vowelway;

namespace {

double peak_megabytes() {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with("VmHWM:")) return std::stod(line.substr(6)) / 1024;
    return 0;
}

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

std::vector<Passage> songs(int count, char** names) {
    std::vector<Passage> out;
    for (int i = 0; i < count; ++i) try {
            auto passage = io::read_score(names[i]);
            diction::set_vowels(passage);
            if (!passage.notes.empty()) out.push_back(std::move(passage));
        } catch (InputError const&) {
        }
    return out;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) return std::fprintf(stderr, "usage: many_plans THREADS SCORE..\n"), 2;
    auto start = std::chrono::steady_clock::now();
    auto const passages = songs(argc - 2, argv + 2);
    double const reading = seconds_since(start);
    auto const technique = io::find_technique("classical");
    constexpr int keys = 13;
    std::vector<VoiceType> voices;
    for (auto voice : all_voice_types)
        if (voice != VoiceType::other) voices.push_back(voice);

    ThreadPool pool(static_cast<std::size_t>(std::atoi(argv[1])));
    std::atomic<std::size_t> notes{0}, plans{0}, landscapes{0}, sets{0};
    start = std::chrono::steady_clock::now();
    for (auto voice : voices) {
        plan::PlanCache cache;
        auto const singer = io::built_in_voice(voice);
        pool.run(passages.size(), [&](std::size_t song) {
            for (int key = -keys / 2; key <= keys / 2; ++key) try {
                    plan::PlanRequest request;
                    request.singer = singer;
                    request.passage = passages[song];
                    for (auto& note : request.passage.notes) note.pitch = note.pitch + semitones(key);
                    request.technique = technique;
                    request.draws = 0;
                    notes += demand_of(std::move(request), {.cache = &cache}).each.size();
                    ++plans;
                } catch (InputError const&) {
                }
        });
        landscapes += cache.landscapes();
        sets += cache.reachable_sets();
    }
    double const planning = seconds_since(start);
    std::printf("%zu songs read in %.1f s\n%zu plans of %zu voices, %.0f notes each: %.2f s, %.2f ms a plan, "
                "%.0f MB\n"
                "%zu reachable sets, %zu landscapes\n",
                passages.size(), reading, plans.load(), voices.size(),
                static_cast<double>(notes) / static_cast<double>(plans), planning,
                1000 * planning / static_cast<double>(plans), peak_megabytes(), sets.load(),
                landscapes.load());
}
