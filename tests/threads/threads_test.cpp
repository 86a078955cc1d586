// SPDX-License-Identifier: MIT
// Plans, explanations, words and charts made by several threads that share a pool and a cache, each held
// against the same made alone. To be run under ThreadSanitizer (run.sh); without it, it still compares.
#include "support/sample_plan.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/diction/sing_words.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/make_plan.hpp"
#include "vowelway/report/explain_report.hpp"
#include "vowelway/report/plan_report.hpp"

#include <cstdio>
#include <functional>
#include <string>
#include <thread>
#include <vector>

using namespace vowelway;

namespace {

// One piece of work; what it gives must not depend on the others.
struct Job {
    std::string name;
    std::function<std::string(plan::Means const&)> make;
};

// The sample tenor, and the same voice in a tract `size` times as large.
Singer singer(double size) {
    auto out = sample::singer();
    for (auto& v : out.vowels)
        for (auto* r : {&v.r1, &v.r2}) r->centre /= size;
    return out;
}

plan::PlanRequest request(double size, double semitones_up) {
    plan::PlanRequest out;
    out.singer = singer(size);
    out.passage = sample::song();
    for (auto& note : out.passage.notes) note.pitch = note.pitch + semitones(semitones_up);
    out.draws = 4;
    return out;
}

std::string text_of(std::vector<SungWord> const& words) {
    std::string out;
    for (auto const& word : words) {
        for (auto const& s : word.syllables) out += s.text + " " + s.vowel.held.ipa() + " " + s.ipa + "\n";
        out += word.doubt + "\n";
    }
    return out;
}

std::string bytes_of(plan::Plan const& plan, chart::Form form) {
    chart::ChartOptions options;
    options.kind = chart::Kind::passage_sheet;
    options.png_dpi = 40;
    std::string out;
    for (auto const& document : chart::draw(plan, options, form)) out += document.bytes;
    return out;
}

std::vector<Job> jobs() {
    std::vector<Job> out;
    for (double size : {1.0, 1.12})
        for (double key : {0.0, 2.0, -1.0})
            out.push_back({"plan", [=](auto const& means) {
                               return report::plan_json(make_plan(request(size, key), means));
                           }});
    out.push_back({"explanation", [](auto const& means) {
                       return report::explanation_json(explain_note(request(1, 0), 8, means));
                   }});
    // Each language has tables of its own that are made at first use; Swedish, Finnish and numbers are for
    // the synthesiser.
    struct Words {
        diction::Language language;
        char const* text;
    };
    using enum diction::Language;
    for (auto const& w : {Words{italian, "Sebben crudele mi fai languir sempre fedele 12"},
                          {german, "Der Mond ist aufgegangen die goldnen Sternlein prangen 7"},
                          {french, "Plaisir d'amour ne dure qu'un moment chagrin d'amour 40"},
                          {english, "Come again sweet love doth now invite thy graces 3"},
                          {latin, "Ave verum corpus natum de Maria virgine"},
                          {spanish, "Del cabello más sutil que tienes en tu trenzado"},
                          {swedish, "Uti vår hage där växa blå bär"},
                          {finnish, "Oi Suomi katso sinun päiväs koittaa"}})
        out.push_back(
            {"words", [=](auto const&) { return text_of(diction::transcribe(w.text, w.language)); }});
    out.push_back({"language", [](auto const&) {
                       auto passage = sample::song();
                       passage.language.clear();
                       for (auto& note : passage.notes) note.vowel.reset();
                       diction::set_vowels(passage);
                       std::string found = passage.language;
                       for (auto const& note : passage.notes)
                           if (note.vowel) found += note.vowel->held.ipa();
                       return found;
                   }});
    for (auto kind : {chart::Kind::passage_sheet, chart::Kind::pitch_by_vowel, chart::Kind::resonance_map})
        out.push_back({"chart", [=](auto const&) {
                           chart::ChartOptions options;
                           options.kind = kind;
                           auto const fonts = chart::chart_fonts();
                           std::string strokes;
                           for (auto const& page : chart::lay_out(sample::song_plan(), options, *fonts))
                               strokes += page.drawing.strokes();
                           return strokes;
                       }});
    for (auto form : {chart::Form::pdf, chart::Form::svg, chart::Form::png})
        out.push_back({"file", [=](auto const&) { return bytes_of(sample::song_plan(), form); }});
    return out;
}

} // namespace

int main() {
    auto const all = jobs();
    constexpr std::size_t threads = 4;
    ThreadPool pool(2);
    plan::PlanCache cache;
    // Together first, so that whatever is made at first use is made by several at once.
    std::vector<std::vector<std::string>> made(threads, std::vector<std::string>(all.size()));
    {
        std::vector<std::thread> workers;
        for (std::size_t t = 0; t < threads; ++t)
            workers.emplace_back([&, t] {
                for (std::size_t k = 0; k < all.size(); ++k) {
                    auto const i =
                        (k + t * 5) % all.size(); // each at its own place, two pairs near each other
                    made[t][i] = all[i].make({.executor = t % 2 ? &pool : nullptr, .cache = &cache});
                }
            });
        for (auto& worker : workers) worker.join();
    }
    int wrong = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        auto const alone = all[i].make({});
        if (alone.size() < 20) ++wrong, std::printf("%s %zu: next to nothing came\n", all[i].name.c_str(), i);
        for (std::size_t t = 0; t < threads; ++t)
            if (made[t][i] != alone)
                ++wrong, std::printf("%s %zu: thread %zu made something else\n", all[i].name.c_str(), i, t);
    }
    // Two singers on at most seven vowels, whatever the keys and threads.
    if (cache.reachable_sets() > 14)
        ++wrong, std::printf("%zu reachable sets were made\n", cache.reachable_sets());
    std::printf("%zu pieces of work on %zu threads, %d wrong\n", all.size(), threads, wrong);
    return wrong ? 1 : 0;
}
