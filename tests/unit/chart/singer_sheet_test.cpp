// SPDX-License-Identifier: MIT
// The sheet of a singer: one page, whatever the paper, with every vowel.
#include "support/fixed_measurer.hpp"
#include "support/page_checks.hpp"
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw_singer.hpp"
#include "vowelway/core/error.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;

TEST_CASE(
    "a singer's sheet is one page at every size, without overlaps, with every vowel and where it turns") {
    auto singer = sample::song_plan().singer;
    REQUIRE(!singer.vowels.empty());
    singer.vowels.front().estimated = true;
    singer.vowels.front().origin = "between /e/ and /a/, as the average mezzo has it";
    for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
        for (double const size : {1.0, 1.3, Theme::largest_size}) {
            Theme theme;
            theme.size = size;
            auto const pages = chart::lay_out(chart::SingerSheet{singer}, {.paper = paper, .theme = theme},
                                              sample::FixedMeasurer{});
            REQUIRE(pages.size() == 1);
            for (auto const& fault : sample::faults(pages[0])) FAIL_CHECK(fault);
            std::string text;
            for (auto const& mark : pages[0].drawing.marks()) text += std::string(mark.text) + "\n";
            for (auto const& v : singer.vowels) {
                CHECK(text.find("/" + v.vowel.ipa() + "/") != std::string::npos);
                // 2fo = fR1: an octave below fR1.
                auto const turning = singer.tuning.name(Pitch(v.r1.centre / 2.0)).pitch.str();
                CHECK(text.find("\n" + turning + " ±") != std::string::npos);
            }
            CHECK(text.find("estimated: between") != std::string::npos);
        }
}

// Sopranos' fR1 follows fo (Joliveau et al. 2004); classical men's does not (Sundberg, La & Gill 2013).
TEST_CASE("only women are told to open where fo meets fR1") {
    for (auto const voice : {VoiceType::bass, VoiceType::tenor, VoiceType::alto, VoiceType::soprano}) {
        chart::SingerSheet sheet{sample::song_plan().singer};
        sheet.singer.voice = voice;
        auto const pages = chart::lay_out(sheet, {}, sample::FixedMeasurer{});
        std::string text;
        for (auto const& mark : pages.at(0).drawing.marks()) text += std::string(mark.text) + " ";
        bool const women = voice == VoiceType::alto || voice == VoiceType::soprano;
        CHECK((text.find("open with it") != std::string::npos) == women);
        CHECK((text.find("opens by itself; let it.") != std::string::npos) == !women);
    }
}

TEST_CASE("a vowel known by another probe than the head of the sheet says has its own") {
    chart::SingerSheet sheet{sample::song_plan().singer};
    sheet.singer.provenance.method = Method::creak;
    sheet.singer.provenance.date = "2026-03-02";
    REQUIRE(sheet.singer.vowels.size() > 1);
    for (auto& v : sheet.singer.vowels) {
        v.origin.clear();
        v.estimated = false;
        sheet.sources.push_back({"2026-03-02", Method::creak, v.vowel, 1, v.r1, v.r2, {}, {}, {}, {}});
    }
    auto& other = sheet.sources.back();
    other.date = "2026-02-01";
    other.method = Method::whisper;
    auto const pages = chart::lay_out(sheet, {}, sample::FixedMeasurer{});
    for (auto const& fault : sample::faults(pages.at(0))) FAIL_CHECK(fault);
    std::vector<std::string> told;
    for (auto const& mark : pages.at(0).drawing.marks())
        if (std::string(mark.text).find("known by") == 0) told.emplace_back(mark.text);
    CHECK(told == std::vector<std::string>{"known by: whisper, 2026-02-01"});
}

TEST_CASE("a singer without vowels has no sheet") {
    CHECK_THROWS_AS(chart::lay_out(chart::SingerSheet{Singer{}}, {}, sample::FixedMeasurer{}), InputError);
}
