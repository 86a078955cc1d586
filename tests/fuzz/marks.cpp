// SPDX-License-Identifier: MIT
// The round trip of the marked score: marks go in and come out, and leave everything else alone.
#include "fuzz/reads.hpp"
#include "vowelway/io/score/mark_score.hpp"
#include "vowelway/io/score/read_score.hpp"

int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    using namespace vowelway;
    return fuzz::reads(data, size, [](std::string const& text) {
        auto const name = std::string("fuzz.musicxml");
        auto const passage = io::parse_score(text, name);
        ScoreMarks marks;
        marks.heading = "two lines\nwith <signs> & \"quotes\"";
        for (std::size_t i = 0; i < passage.notes.size(); i += 2)
            marks.notes.push_back({i, i % 4 == 0 ? "ɛ" : "", "open & round"});
        auto const bare = io::without_marks(text, name);
        auto const marked = io::marked_score(text, name, {}, marks, io::ScoreForm::plain);
        fuzz::require(io::parse_score(marked, name).notes.size() == passage.notes.size());
        fuzz::require(io::marked_score(marked, name, {}, marks, io::ScoreForm::plain) == marked);
        auto const declares_utf8 = [](std::string const& xml) {
            return xml.substr(0, xml.find("?>")).find("encoding=\"UTF-8\"") != std::string::npos;
        };
        bool const same_encoding = !declares_utf8(marked) || declares_utf8(text);
        if (same_encoding && text.starts_with("<")) fuzz::require(io::without_marks(marked, name) == bare);
    });
}
