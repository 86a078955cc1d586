// SPDX-License-Identifier: MIT
// Lays out the charts of every score named, or in a folder named, for all average voices and papers, as usual
// and in large print, and looks at the boxes: nothing may leave a page, no label may cover another or a note.
// --few: only two voices, two papers and, large, one.
//   chart_boxes [--few] [--say de] FOLDER_OR_SCORE..
#include "support/page_checks.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/chart/draw_choir.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/score/sung_parts.hpp"
#include "vowelway/io/theme/read_theme.hpp"
#include "vowelway/io/wording/read_wording.hpp"
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <string_view>
#include <vector>

using namespace vowelway;
namespace fs = std::filesystem;

namespace {

struct Count {
    std::size_t pages = 0, faults = 0, refused = 0, scores = 0, choirs = 0;
};

bool is_score(fs::path const& file) {
    auto const e = file.extension();
    return e == ".mxl" || e == ".musicxml" || e == ".xml";
}

void check_pages(std::string const& name, std::vector<chart::Page> const& pages, Count& count) {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        ++count.pages;
        for (auto const& fault : sample::faults(pages[i])) {
            ++count.faults;
            std::printf("%s, page %zu: %s\n", name.c_str(), i + 1, fault.c_str());
        }
    }
}

void check(fs::path const& score, std::vector<Theme> const& themes, chart::TextMeasurer const& fonts,
           bool few, Count& count) {
    for (auto const voice : all_voice_types) {
        if (few && voice != VoiceType::bass && voice != VoiceType::soprano) continue;
        try {
            plan::PlanRequest request;
            request.singer = io::built_in_voice(voice, AverageVowels::sung);
            request.draws = 2;
            io::ScoreOptions options;
            options.singer_range = request.singer.range;
            options.voice = request.singer.voice;
            request.passage = read_score(score, options);
            diction::set_vowels(request.passage);
            // Beside this voice an alto with the same notes, for the sheet of two plans.
            auto beside = request;
            beside.singer = io::built_in_voice(VoiceType::alto, AverageVowels::sung);
            bool const two = (voice == VoiceType::bass || voice == VoiceType::soprano) &&
                             std::ranges::any_of(request.passage.notes,
                                                 [](SungNote const& n) { return n.vowel.has_value(); });
            auto const plan = make_plan(std::move(request));
            auto const both =
                two ? std::optional(compare_plans(plan, make_plan(std::move(beside)))) : std::nullopt;
            for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet}) {
                if (few && paper == chart::Paper::letter) continue;
                auto const name = score.filename().string() + ", " + std::string(to_string(voice)) + ", " +
                                  std::string(to_string(paper));
                for (auto const& theme : themes) {
                    if (few && theme.size > 1 && paper == chart::Paper::a4) continue;
                    auto const what = name + ", " + theme.name;
                    check_pages(what, chart::lay_out(plan, {.paper = paper, .theme = theme}, fonts), count);
                    if (both)
                        check_pages(what + ", two plans",
                                    chart::lay_out(*both, {.paper = paper, .theme = theme}, fonts), count);
                    check_pages(
                        what + ", map",
                        chart::lay_out(plan,
                                       {.paper = paper, .kind = chart::Kind::resonance_map, .theme = theme},
                                       fonts),
                        count);
                }
            }
        } catch (InputError const&) {
            ++count.refused; // said with a place and a remedy; the wide run over plans looks at those
            return;
        }
    }
    ++count.scores;
}

/// The plans of all parts, each by the average voice it is for; nothing where fewer than two are sung.
std::optional<plan::Choir> choir_of_score(fs::path const& score) {
    std::ifstream in(score, std::ios::binary);
    auto const parts = io::sung_parts({std::istreambuf_iterator<char>(in), {}}, score.string());
    if (parts.size() < 2) return std::nullopt;
    std::vector<plan::PlanRequest> requests;
    for (auto const& part : parts) {
        auto& request = requests.emplace_back();
        request.singer = io::built_in_voice(part.voice, AverageVowels::sung);
        request.draws = 0;
        io::ScoreOptions options;
        options.part = part.wish;
        options.lowest = part.lowest;
        options.together = true;
        options.voice = part.voice;
        request.passage = read_score(score, options);
    }
    std::vector<Passage> written;
    for (auto const& request : requests) written.push_back(request.passage);
    std::vector<Passage const*> lenders;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (parts[i].words) lenders.push_back(&written[i]);
    std::vector<plan::ChoirPart> out;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto& passage = requests[i].passage;
        if (!parts[i].words) borrow_words(passage, lenders, io::Wanting::everywhere);
        diction::set_vowels(passage);
        out.push_back({parts[i].name, {}, true, make_plan(std::move(requests[i]))});
    }
    return choir_of(std::move(out), Technique{});
}

void check_choir(fs::path const& score, std::vector<Theme> const& themes, chart::TextMeasurer const& fonts,
                 bool few, Count& count) {
    try {
        auto const choir = choir_of_score(score);
        if (!choir) return;
        for (auto const paper : {chart::Paper::a4, chart::Paper::letter, chart::Paper::tablet})
            for (auto const& theme : themes) {
                if (few && paper == chart::Paper::letter) continue;
                check_pages(score.filename().string() + ", choir, " + std::string(to_string(paper)) + ", " +
                                theme.name,
                            lay_out(chart::ChoirSheet{*choir}, {.paper = paper, .theme = theme}, fonts),
                            count);
            }
        ++count.choirs;
    } catch (InputError const&) {
        return; // no part has words
    }
}

} // namespace

int main(int argc, char** argv) {
    std::vector<fs::path> scores;
    bool few = false;
    for (int i = 1; i < argc; ++i) {
        if (std::string_view const word = argv[i]; word == "--few") {
            few = true;
            continue;
        } else if (word == "--say" && i + 1 < argc) {
            set_wording(io::find_wording(argv[++i]));
            continue;
        }
        if (!fs::is_directory(argv[i])) {
            scores.emplace_back(argv[i]);
            continue;
        }
        for (auto const& entry : fs::recursive_directory_iterator(argv[i]))
            if (is_score(entry.path())) scores.push_back(entry.path());
    }
    std::ranges::sort(scores);
    auto const fonts = chart::chart_fonts();
    std::vector<Theme> const themes{io::find_theme("paper"), io::find_theme("large")}; // of the same fonts
    Count count;
    for (auto const& score : scores) {
        check(score, themes, *fonts, few, count);
        check_choir(score, themes, *fonts, few, count);
    }
    std::printf("%zu scores charted, %zu refused, %zu choirs; %zu pages, %zu faults\n", count.scores,
                count.refused, count.choirs, count.pages, count.faults);
    return count.faults == 0 && count.scores > 0 ? 0 : 1;
}
