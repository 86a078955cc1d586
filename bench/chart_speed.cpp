// SPDX-License-Identifier: MIT
// How long charts take and how large they get: a song of 14 bars and an aria of 420, both invented.
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"

#include <chrono>
#include <cstdio>

using namespace vowelway;

namespace {

plan::Plan aria_plan() {
    auto const song = sample::song();
    Passage aria = song;
    for (int times = 1; times < 30; ++times) {
        std::size_t const before = aria.notes.size();
        aria.notes.insert(aria.notes.end(), song.notes.begin(), song.notes.end());
        for (auto measure : song.staff.measures) {
            measure.clef.reset();
            measure.key.reset();
            measure.time.reset();
            measure.number = std::to_string(aria.staff.measures.size() + 1);
            for (auto& e : measure.events)
                if (e.sung) *e.sung += before;
            aria.staff.measures.push_back(std::move(measure));
        }
    }
    return sample::plan_of(std::move(aria), sample::singer(), parse_pitch_range("C3..A4"));
}

void measure(char const* name, plan::Plan const& plan) {
    for (char const* ending : {".pdf", ".svg", ".pdf"}) {
        auto const start = std::chrono::steady_clock::now();
        auto const files = chart::draw(plan, {}, chart::parse_form(ending).value());
        double const ms =
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
        std::size_t bytes = 0;
        for (auto const& file : files) bytes += file.bytes.size();
        std::printf("%-5s %-4s %4zu bars %7.1f ms %8.1f kB in %zu files\n", name, ending,
                    plan.passage.staff.measures.size(), ms, static_cast<double>(bytes) / 1000, files.size());
    }
}

} // namespace

int main() {
    measure("song", sample::song_plan()); // the first one also loads the fonts
    measure("aria", aria_plan());
}
