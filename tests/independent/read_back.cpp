// SPDX-License-Identifier: MIT
// read_back VERSE FILE..: the line that is read from each score, one note a line, for read_scores.py to hold
// against a reading of its own. VERSE as the option of the program: 0 chooses, -1 is all.
#include "io/score/score_reading.hpp"
#include "vowelway/core/error.hpp"

#include <cstdio>
#include <cstdlib>
#include <exception>
#include <fstream>
#include <iterator>

using namespace vowelway;

namespace {

std::string bytes_of(char const* file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void print(char const* file, io::ScoreOptions const& options) {
    auto score = io::unpack_score(bytes_of(file), file);
    io::XmlSource const source(std::move(score.xml), score.shown);
    auto const reading = io::read_music(source, options);
    auto const& passage = reading.passage;
    std::printf("file\t%s\t%s\t%s\n", file, passage.part.c_str(), passage.verse.c_str());
    for (auto const& remark : passage.remarks) std::printf("remark\t%s\n", remark.text.c_str());
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        auto const& note = passage.notes[i];
        std::string words;
        for (auto const& s : note.syllables) words += (words.empty() ? "" : " ") + s.text;
        std::printf("note\t%s\t%.4f\t%s\t%.5f\t%.5f\t%.5f\t%.5f\t%s\n", note.measure.c_str(), note.beat,
                    note.spelled.str().c_str(), reading.onsets[i], reading.lengths[i], in_seconds(note.start),
                    in_seconds(note.length), note.hummed ? "(hum)" : words.c_str());
    }
}

} // namespace

int main(int argc, char** argv) {
    io::ScoreOptions options;
    options.verse = argc > 1 ? std::atoi(argv[1]) : 0;
    for (int i = 2; i < argc; ++i) try {
            print(argv[i], options);
        } catch (InputError const& error) {
            std::printf("refused\t%s\t%s\n", argv[i], error.wrong().c_str());
        } catch (std::exception const& error) {
            std::fprintf(stderr, "%s: %s\n", argv[i], error.what());
            return 1;
        }
    return argc > 2 ? 0 : 2;
}
