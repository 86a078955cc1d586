// SPDX-License-Identifier: MIT
// The files themselves: repeatable, searchable, titled, whole.
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <fstream>
#include <iterator>
#include <unistd.h>

using namespace vowelway;
namespace fs = std::filesystem;

namespace {

struct Folder {
    fs::path path = fs::temp_directory_path() / ("vowelway_chart_" + std::to_string(::getpid()));
    Folder() { fs::create_directories(path); }
    ~Folder() { fs::remove_all(path); }
    Folder(Folder const&) = delete;
    Folder& operator=(Folder const&) = delete;
};

std::string bytes_of(fs::path const& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// What a PDF reader finds in the file: poppler's pdftotext.
std::string words_of(fs::path const& pdf) {
    auto const command = "pdftotext '" + pdf.string() + "' -";
    std::string text;
    if (auto* pipe = popen(command.c_str(), "r")) {
        char buffer[4096];
        while (auto const n = std::fread(buffer, 1, sizeof buffer, pipe)) text.append(buffer, n);
        REQUIRE_MESSAGE(pclose(pipe) == 0, "pdftotext (package poppler-utils) is needed for this check");
    }
    return text;
}

} // namespace

TEST_CASE("the same plan gives the same bytes, in every form") {
    Folder const folder;
    auto const plan = sample::song_plan();
    for (char const* form : {".pdf", ".svg", ".png"}) {
        CAPTURE(std::string(form));
        auto const first = chart::write_chart(plan, {}, folder.path / (std::string("a") + form));
        auto const second = chart::write_chart(plan, {}, folder.path / (std::string("b") + form));
        REQUIRE(first.size() == second.size());
        for (std::size_t i = 0; i < first.size(); ++i) CHECK(bytes_of(first[i]) == bytes_of(second[i]));
    }
}

TEST_CASE("a PDF can be searched for its words, vowels and pitches") {
    Folder const folder;
    auto const file = folder.path / "song.pdf";
    chart::write_chart(sample::song_plan(), {}, file);
    auto const words = words_of(file);
    for (char const* word :
         {"Sera di prova", "Ottavio Brandt", "Notes to watch", "ɔ", "F♯4", "keep the shape"})
        CHECK_MESSAGE(words.find(word) != std::string::npos, word);
    CHECK(bytes_of(file).size() < 300'000);
}

TEST_CASE("an SVG has title and description; pages are numbered") {
    Folder const folder;
    auto const files = chart::write_chart(sample::song_plan(), {}, folder.path / "song.svg");
    REQUIRE(files.size() > 1);
    CHECK(files[0].filename() == "song-1.svg");
    for (auto const& file : files) {
        auto const svg = bytes_of(file);
        CHECK(svg.find("<title>Sera di prova</title>") != std::string::npos);
        CHECK(svg.find("<desc>Vowel plan for Ottavio Brandt (tenor), technique classical</desc>") !=
              std::string::npos);
        CHECK(svg.size() < 300'000);
    }
    for (char const* words : {">Ottavio Brandt, tenor</text>", ">Notes to watch</text>",
                              ">keep the shape</text>"}) // to be found and copied
        CHECK_MESSAGE(bytes_of(files[0]).find(words) != std::string::npos, words);
    auto const one = chart::write_chart(sample::range_plan(), {}, folder.path / "range.svg");
    REQUIRE(one.size() == 1);
    CHECK(one[0].filename() == "range.svg");
}

TEST_CASE("grey pages hold no colour") {
    Folder const folder;
    auto const files = chart::write_chart(sample::range_plan(), {.grey = true}, folder.path / "range.svg");
    auto const svg = bytes_of(files.at(0));
    std::size_t colors = 0;
    for (auto at = svg.find("\"#"); at != std::string::npos; at = svg.find("\"#", at + 1)) {
        unsigned r = 0, g = 0, b = 0;
        char quote = 0;
        if (std::sscanf(svg.c_str() + at, "\"#%2x%2x%2x%c", &r, &g, &b, &quote) != 4 || quote != '"')
            continue; // a glyph's name
        CHECK(r == g);
        CHECK(g == b);
        ++colors;
    }
    CHECK(colors > 50);
    CHECK(svg.find("rgb(") == std::string::npos);
}

TEST_CASE("what cannot be written says so and leaves nothing") {
    Folder const folder;
    auto const plan = sample::range_plan();
    CHECK_THROWS_AS(chart::write_chart(plan, {}, folder.path / "song.gif"), InputError);
    CHECK_THROWS_AS(chart::write_chart(plan, {}, folder.path / "no_such_folder" / "song.pdf"), InputError);
    CHECK_THROWS_AS(chart::write_chart(plan, {.kind = chart::Kind::passage_sheet}, folder.path / "song.pdf"),
                    InputError);
    fs::create_directories(folder.path / "taken.pdf" / "inside");
    CHECK_THROWS_AS(chart::write_chart(plan, {}, folder.path / "taken.pdf"), InputError);
    CHECK(std::distance(fs::directory_iterator(folder.path), fs::directory_iterator{}) == 1);
}

TEST_CASE("a theme's paper and size reach the file") {
    Folder const folder;
    Theme dark;
    std::swap(dark[Ink::text], dark[Ink::paper]);
    chart::write_chart(sample::range_plan(), {.theme = dark}, folder.path / "dark.pdf");
    chart::write_chart(sample::range_plan(), {}, folder.path / "light.pdf");
    auto const usual = chart::lay_out(sample::song_plan(), {}, *chart::chart_fonts());
    Theme large;
    large.size = Theme::largest_size;
    auto const pages = chart::lay_out(sample::song_plan(), {.theme = large}, *chart::chart_fonts(large));
    CHECK(pages.size() > usual.size());
    CHECK(pages[0].size.width == doctest::Approx(usual[0].size.width / Theme::largest_size));
    CHECK(bytes_of(folder.path / "dark.pdf") != bytes_of(folder.path / "light.pdf"));
}

TEST_CASE("a font that cannot serve is refused where it was asked for") {
    Folder const folder;
    Theme theme;
    theme.music = {"Charis SIL", {.file = "t.yaml", .line = 7, .column = 3, .musical = {}}}; // has no clefs
    try {
        chart::write_chart(sample::range_plan(), {.theme = theme}, folder.path / "x.pdf");
        FAIL("drawn");
    } catch (InputError const& error) {
        CHECK(std::string(error.what()).starts_with("t.yaml:7:3: the font \"Charis SIL\" lacks characters"));
    }
    theme.music = {"No Such Notes"};
    CHECK_THROWS_AS(chart::chart_fonts(theme), InputError);
}
