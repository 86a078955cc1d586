// SPDX-License-Identifier: MIT
// read_back VERSE FILE..: the line that is read from each score, one note a line, for read_scores.py to hold
// against a reading of its own. VERSE as the option of the program: 0 chooses, -1 is all; "parts": each line
// that --all would sing, of the verse that is chosen.
#include "io/score/score_reading.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/score/sung_parts.hpp"

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

void print(char const* file, io::XmlSource const& source, io::ScoreOptions const& options) {
    auto const reading = io::read_music(source, options);
    auto const& passage = reading.passage;
    std::printf("file\t%s\t%s\t%s\t%s\t%d\n", file, passage.part.c_str(), passage.verse.c_str(),
                options.part.c_str(), options.lowest ? 1 : 0);
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

void print(char const* file, std::string const& verse) {
    auto score = io::unpack_score(bytes_of(file), file);
    io::XmlSource const source(std::move(score.xml), score.shown);
    io::ScoreOptions options;
    if (verse != "parts") {
        options.verse = std::atoi(verse.c_str());
        return print(file, source, options);
    }
    for (auto const& part : io::sung_parts(bytes_of(file), file)) {
        options.part = part.wish;
        options.lowest = part.lowest;
        print(file, source, options);
    }
}

} // namespace

int main(int argc, char** argv) {
    for (int i = 2; i < argc; ++i) try {
            print(argv[i], std::string(argv[1]));
        } catch (InputError const& error) {
            std::printf("refused\t%s\t%s\n", argv[i], error.wrong().c_str());
        } catch (std::exception const& error) {
            std::fprintf(stderr, "%s: %s\n", argv[i], error.what());
            return 1;
        }
    return argc > 2 ? 0 : 2;
}
