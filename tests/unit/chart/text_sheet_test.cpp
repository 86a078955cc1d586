// SPDX-License-Identifier: MIT
// The text sheet: nothing leaves the page or covers another, every word is there, at every size.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "vowelway/chart/draw_text.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;

namespace {

SungText poem(std::size_t lines, std::size_t words) {
    SungText out{
        .title = "A song", .composer = "Nobody", .language = "it", .lines = {}, .key = {}, .notes = {}};
    for (std::size_t i = 0; i < lines; ++i) {
        VerseLine line;
        for (std::size_t w = 0; w < words; ++w)
            line.words.push_back({"word" + std::to_string(i) + "." + std::to_string(w), "word", "wɔrd",
                                  "wɔrd", w == 0, w == 1});
        line.begins_stanza = i > 0 && i % 4 == 0;
        line.times = i % 5 == 4 ? 2 : 1;
        out.lines.push_back(std::move(line));
    }
    for (std::size_t i = 0; i < 23; ++i) out.key.push_back({"ʃ", "as in English ship", "word"});
    out.notes.push_back("The lines were found.");
    return out;
}

} // namespace

TEST_CASE("a text sheet keeps every word on its pages, without overlaps") {
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (double const size : {1.0, Theme::largest_size})
            for (auto const& [lines, words] : {std::pair(3, 4), std::pair(60, 3), std::pair(30, 14)}) {
                Theme theme;
                theme.size = size;
                auto const text = poem(static_cast<std::size_t>(lines), static_cast<std::size_t>(words));
                auto const pages =
                    chart::lay_out(text, {.paper = paper, .theme = theme}, sample::FixedMeasurer{});
                std::string all;
                for (auto const& page : pages) {
                    for (auto const& fault : sample::faults(page)) FAIL_CHECK(fault);
                    for (auto const& mark : page.drawing.marks()) all += std::string(mark.text) + "\n";
                }
                for (auto const& line : text.lines)
                    for (auto const& word : line.words)
                        CHECK(all.find(word.written + "\n") != std::string::npos);
                CHECK(all.find("wɔrd?\n") != std::string::npos); // a guess is marked
                CHECK(all.find("wɔrd‿\n") != std::string::npos);
            }
    CHECK_THROWS_AS(chart::lay_out(SungText{}, {}, sample::FixedMeasurer{}), InputError);
}
