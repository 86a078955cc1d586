// SPDX-License-Identifier: MIT
// reading_scores FILE..: the time to read each score, and to mark every note of it; the best of five.
#include "vowelway/io/score/mark_score.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <string>

using namespace vowelway;

namespace {

template <class Work> double best_of_five(Work work) {
    double best = 1e9;
    for (int i = 0; i < 5; ++i) {
        auto const start = std::chrono::steady_clock::now();
        work();
        best = std::min(
            best,
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    return best;
}

} // namespace

int main(int argc, char** argv) {
    auto const out = std::filesystem::temp_directory_path() / "vowelway_reading_scores.musicxml";
    double read_all = 0, mark_all = 0;
    std::size_t notes = 0;
    int files = 0;
    for (int i = 1; i < argc; ++i) try {
            auto const passage = io::read_score(argv[i]);
            ScoreMarks marks;
            for (std::size_t n = 0; n < passage.notes.size(); ++n) marks.notes.push_back({n, "ɑ", "open"});
            double const read = best_of_five([&] { (void)io::read_score(argv[i]); });
            double const mark = best_of_five([&] { io::write_marked_score(argv[i], {}, marks, out); });
            std::printf("%7.2f ms read %7.2f ms marked %5zu notes  %s\n", read, mark, passage.notes.size(),
                        std::filesystem::path(argv[i]).filename().c_str());
            read_all += read;
            mark_all += mark;
            notes += passage.notes.size();
            ++files;
        } catch (InputError const& error) {
            std::printf("refused: %s\n", error.wrong().c_str());
        }
    std::filesystem::remove(out);
    if (files > 0)
        std::printf("%d scores, %zu notes: %.2f ms read and %.2f ms marked on average\n", files, notes,
                    read_all / files, mark_all / files);
}
