// SPDX-License-Identifier: MIT
// The documents themselves: repeatable, searchable, titled.
#include "support/fixed_measurer.hpp"
#include "support/sample_plan.hpp"
#include "support/scratch_folder.hpp"
#include "vowelway/chart/draw.hpp"

#include <doctest/doctest.h>

#include <cstdio>

using namespace vowelway;
namespace fs = std::filesystem;

namespace {

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
    auto const plan = sample::song_plan();
    for (auto const* ending : {".pdf", ".svg", ".png"}) {
        CAPTURE(std::string(ending));
        auto const form = chart::parse_form(ending).value();
        auto const first = chart::draw(plan, {}, form);
        auto const second = chart::draw(plan, {}, form);
        REQUIRE(first.size() == second.size());
        CHECK(first.size() ==
              (form == chart::Form::pdf ? 1 : chart::lay_out(plan, {}, *chart::chart_fonts()).size()));
        for (std::size_t i = 0; i < first.size(); ++i) CHECK(first[i].bytes == second[i].bytes);
    }
    CHECK_FALSE(chart::parse_form(".gif"));
    CHECK_FALSE(chart::parse_form("pdf"));
}

TEST_CASE("a PDF can be searched for its words, vowels and pitches") {
    test::ScratchFolder const folder;
    auto const pdf = chart::draw(sample::song_plan(), {}, chart::Form::pdf).at(0);
    CHECK(pdf.suffix.empty());
    auto const words = words_of(folder.put("song.pdf", pdf.bytes));
    for (char const* word :
         {"Sera di prova", "Ottavio Brandt", "Notes to watch", "ɔ", "F♯4", "keep the shape"})
        CHECK_MESSAGE(words.find(word) != std::string::npos, word);
    CHECK(pdf.bytes.size() < 300'000);
}

// ISO 32000-1, 14.7: a tagged file names its tree of structure in its catalog.
TEST_CASE("a PDF is tagged on every paper, in colour, grey and on dark paper") {
    Theme dark;
    std::swap(dark[Ink::text], dark[Ink::paper]);
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (auto const& options :
             {chart::ChartOptions{.paper = paper}, chart::ChartOptions{.paper = paper, .grey = true},
              chart::ChartOptions{.paper = paper, .theme = dark}}) {
            CAPTURE(to_string(paper));
            CAPTURE(options.grey);
            auto const pdf = chart::draw(sample::range_plan(), options, chart::Form::pdf).at(0);
            CHECK(pdf.bytes.find("/StructTreeRoot") != std::string::npos);
        }
}

TEST_CASE("an SVG has title and description, pages are numbered") {
    auto const pages = chart::draw(sample::song_plan(), {}, chart::Form::svg);
    REQUIRE(pages.size() > 1);
    CHECK(pages[0].suffix == "-1");
    CHECK(pages[1].suffix == "-2");
    for (auto const& page : pages) {
        auto const& svg = page.bytes;
        CHECK(svg.find("<title>Sera di prova</title>") != std::string::npos);
        CHECK(svg.find("<desc>Vowel plan for Ottavio Brandt (tenor), technique classical</desc>") !=
              std::string::npos);
        CHECK(svg.size() < 300'000);
    }
    auto const sheet =
        chart::draw(sample::song_plan(), {.kind = chart::Kind::passage_sheet}, chart::Form::svg);
    for (char const* words : {">Ottavio Brandt, tenor</text>", ">Notes to watch</text>",
                              ">keep the shape</text>"}) // to be found and copied
        CHECK_MESSAGE(sheet[0].bytes.find(words) != std::string::npos, words);
    auto const one = chart::draw(sample::range_plan(), {}, chart::Form::svg);
    REQUIRE(one.size() == 1);
    CHECK(one[0].suffix.empty());
}

TEST_CASE("an SVG needs no fonts: with any measurer its words are text where the layout put them") {
    sample::FixedMeasurer const measurer;
    chart::ChartOptions const sheet{.kind = chart::Kind::passage_sheet};
    auto const pages = chart::draw_svg(sample::song_plan(), sheet, measurer);
    REQUIRE(pages.size() == chart::lay_out(sample::song_plan(), sheet, measurer).size());
    auto const& svg = pages[0].bytes;
    int texts = 0;
    for (auto at = svg.find("<text x="); at != std::string::npos; at = svg.find("<text x=", at + 1)) ++texts;
    CHECK(texts > 50);
    CHECK(svg.find(">keep the shape</text>") != std::string::npos);
    CHECK(svg.find("<use") == std::string::npos);
    CHECK(svg.find("font-family=\"Charis SIL, serif\"") != std::string::npos);
}

TEST_CASE("grey pages hold no colour") {
    auto const svg = chart::draw(sample::range_plan(), {.grey = true}, chart::Form::svg).at(0).bytes;
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

TEST_CASE("a sheet of notes cannot be drawn of a range") {
    CHECK_THROWS_AS(chart::draw(sample::range_plan(), {.kind = chart::Kind::passage_sheet}, chart::Form::pdf),
                    InputError);
}

TEST_CASE("a theme's paper and size reach the file") {
    Theme dark;
    std::swap(dark[Ink::text], dark[Ink::paper]);
    auto const usual = chart::lay_out(sample::song_plan(), {}, *chart::chart_fonts());
    Theme large;
    large.size = Theme::largest_size;
    auto const pages = chart::lay_out(sample::song_plan(), {.theme = large}, *chart::chart_fonts(large));
    CHECK(pages.size() > usual.size());
    CHECK(pages[0].size.width == doctest::Approx(usual[0].size.width / Theme::largest_size));
    CHECK(chart::draw(sample::range_plan(), {.theme = dark}, chart::Form::pdf)[0].bytes !=
          chart::draw(sample::range_plan(), {}, chart::Form::pdf)[0].bytes);
}

TEST_CASE("a font that cannot serve is refused where it was asked for") {
    Theme theme;
    theme.music = {"Charis SIL", {.file = "t.yaml", .line = 7, .column = 3, .musical = {}}}; // has no clefs
    try {
        (void)chart::draw(sample::range_plan(), {.theme = theme}, chart::Form::pdf);
        FAIL("drawn");
    } catch (InputError const& error) {
        CHECK(std::string(error.what()).starts_with("t.yaml:7:3: the font \"Charis SIL\" lacks characters"));
    }
    theme.music = {"No Such Notes"};
    CHECK_THROWS_AS(chart::chart_fonts(theme), InputError);
}
