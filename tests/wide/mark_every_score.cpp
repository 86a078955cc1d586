// SPDX-License-Identifier: MIT
// mark_every_score FOLDER [OUT]: reads every score below a folder in every verse, marks it, takes the marks
// out again. Fails on anything but music or a refusal with place and remedy; prints what was read. With OUT
// the marked scores stay there, "plain" beside them the sources' text, for other tools to judge.
#include "vowelway/io/score/mark_score.hpp"

#include <algorithm>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace vowelway;
namespace fs = std::filesystem;

namespace {

std::string bytes_of(fs::path const& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

struct Tally {
    int files = 0, read = 0, refused = 0, failed = 0;
    std::size_t notes = 0, syllables = 0;
};

void fail(Tally& tally, fs::path const& file, std::string const& why) {
    ++tally.failed;
    std::fprintf(stderr, "%s: %s\n", file.c_str(), why.c_str());
}

ScoreMarks marks_for(Passage const& passage) {
    ScoreMarks out;
    out.heading = "wide run\nevery note marked";
    for (std::size_t i = 0; i < passage.notes.size(); ++i)
        out.notes.push_back({i, passage.notes[i].melisma ? "" : "ɑ̝", i % 4 == 0 ? "words" : ""});
    return out;
}

void mark(Tally& tally, fs::path const& file, Passage const& passage, fs::path const& out) {
    auto const name = file.stem().string() + ".musicxml";
    auto const plain = out / "plain" / name, marked = out / name;
    io::write_marked_score(file, {}, {}, plain); // nothing to mark: the source's own text
    io::write_marked_score(file, {}, marks_for(passage), marked);
    auto const before = bytes_of(plain);
    if (file.extension() != ".mxl" && before.find("encoding=\"UTF-8\"") != std::string::npos &&
        before != bytes_of(file))
        fail(tally, file, "changed although nothing was marked");
    if (io::without_marks(bytes_of(marked), name) != before)
        fail(tally, file, "not the same after marking and unmarking");
    if (io::read_score(marked).notes.size() != passage.notes.size())
        fail(tally, file, "reads differently when marked");
}

void every_verse(Tally& tally, fs::path const& file, fs::path const& out) {
    ++tally.files;
    for (int verse = io::every_verse; verse < 10; ++verse) {
        io::ScoreOptions options;
        options.verse = verse;
        try {
            auto const passage = read_score(file, options);
            if (verse != 0) continue;
            ++tally.read;
            tally.notes += passage.notes.size();
            for (auto const& note : passage.notes) tally.syllables += note.syllables.size();
            mark(tally, file, passage, out);
        } catch (InputError const& error) {
            if (error.place().file.empty() || error.remedy().empty())
                fail(tally, file, "refused without place or remedy: " + error.wrong());
            if (verse > 0) return;
            if (verse < 0) continue;
            ++tally.refused;
            std::printf("refused: %s\n", error.what());
            return;
        } catch (std::exception const& error) {
            fail(tally, file, error.what());
            return;
        }
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "usage: mark_every_score FOLDER [OUT]\n");
        return 2;
    }
    bool const keep = argc > 2;
    fs::path const out = keep ? fs::path(argv[2]) : fs::temp_directory_path() / "vowelway_wide_scores";
    fs::create_directories(out / "plain");
    Tally tally;
    std::vector<fs::path> files;
    for (auto const& entry : fs::recursive_directory_iterator(argv[1])) {
        auto const extension = entry.path().extension();
        if (entry.is_regular_file() &&
            (extension == ".xml" || extension == ".musicxml" || extension == ".mxl"))
            files.push_back(entry.path());
    }
    std::sort(files.begin(), files.end());
    for (auto const& file : files) every_verse(tally, file, out);
    if (!keep) fs::remove_all(out);
    std::printf("%d scores: %d read (%zu notes, %zu syllables), %d refused, %d failures\n", tally.files,
                tally.read, tally.notes, tally.syllables, tally.refused, tally.failed);
    return tally.failed > 0 || tally.read == 0 ? 1 : 0;
}
