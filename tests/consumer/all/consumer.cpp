// SPDX-License-Identifier: MIT
// Uses every part of the installed library: an average voice, a sung word, a plan, a report, a chart.
#include <vowelway/chart/draw.hpp>
#include <vowelway/diction/sing_words.hpp>
#include <vowelway/files/write.hpp>
#include <vowelway/io/profile/built_in.hpp>
#include <vowelway/plan/make_plan.hpp>
#include <vowelway/report/plan_report.hpp>

#include <filesystem>
#include <iostream>

int main(int, char** argv) {
    using namespace vowelway;
    auto const sung = diction::transcribe("sole", diction::Language::italian);
    std::cout << sung.at(0).syllables.at(0).vowel.held.ipa() << "\n";
    plan::PlanRequest request;
    request.singer = io::built_in_voice(VoiceType::tenor);
    request.draws = 4;
    auto const plan = plan::make_plan(std::move(request));
    std::cout << report::plan_json(plan).substr(0, 1) << "\n";
    auto const form = chart::parse_form(std::filesystem::path(argv[1]).extension().string()).value();
    files::write(argv[1], chart::draw(plan, {}, form).at(0).bytes);
}
