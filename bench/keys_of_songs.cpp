// SPDX-License-Identifier: MIT
// keys_of_songs SCORE..: for each average voice the keys proposed for these songs: how far they lie from the
// printed key, how often that is the first or among the first three, and how often the lowest or the highest
// of all keys wins.
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/plan/keys.hpp"

#include <algorithm>
#include <cstdio>
#include <string>
#include <vector>

using namespace vowelway;

namespace {

struct Counts {
    std::vector<int> moved;
    int first = 0, among_three = 0, lowest = 0, highest = 0;
    double chance = 0; ///< of being among three by throwing dice

    void add(plan::KeysPlan const& keys) {
        moved.push_back(keys.recommended().semitones);
        lowest += keys.best.front() == 0 ? 1 : 0;
        highest += keys.best.front() + 1 == keys.keys.size() ? 1 : 0;
        for (std::size_t rank = 0; rank < std::min<std::size_t>(3, keys.best.size()); ++rank)
            if (keys.keys[keys.best[rank]].semitones == 0) {
                ++among_three;
                first += rank == 0 ? 1 : 0;
            }
        chance += std::min(1.0, 3.0 / static_cast<double>(keys.keys.size()));
    }
};

Counts counts_of(VoiceType voice, int count, char** names, Executor& executor) {
    Counts out;
    plan::PlanCache cache;
    auto const technique = io::find_technique("classical");
    for (int i = 0; i < count; ++i) try {
            plan::PlanRequest request;
            request.singer = io::built_in_voice(voice, technique.averages);
            request.technique = technique;
            request.draws = 0;
            io::ScoreOptions options;
            options.singer_range = request.singer.range;
            options.voice = voice;
            request.passage = io::read_score(names[i], options);
            diction::set_vowels(request.passage);
            out.add(plan_keys(std::move(request), std::nullopt, {&executor, &cache}));
        } catch (InputError const&) { // told by the wide run
        }
    std::sort(out.moved.begin(), out.moved.end());
    return out;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) return std::fprintf(stderr, "usage: keys_of_songs SCORE..\n"), 2;
    ThreadPool pool;
    std::printf(
        "%-14s songs  lowest wins  highest  printed first  among three  (by chance)  moved: quartiles\n",
        "voice");
    for (auto const voice : all_voice_types) {
        auto const c = counts_of(voice, argc - 1, argv + 1, pool);
        auto const n = c.moved.size();
        if (n == 0) continue;
        std::printf("%-14s %5zu %12d %8d %14d %12d %12.1f  %+d %+d %+d\n",
                    std::string(to_string(voice)).c_str(), n, c.lowest, c.highest, c.first, c.among_three,
                    c.chance, c.moved[n / 4], c.moved[n / 2], c.moved[3 * n / 4]);
    }
}
