// SPDX-License-Identifier: MIT
// The door of the page: a request as JSON, bytes of a score or samples in; JSON, CSV or text out. The fields
// are told in src/page/README.md. Each function gives an Outcome; the text is fetched with vowelway_answer.
#include "page/answer.hpp"
#include "page/asks.hpp"
#include "page/hearing.hpp"
#include "page/live.hpp"
#include "page/measuring.hpp"
#include "page/text_measurer.hpp"
#include "vowelway/report/plan_report.hpp"

#include <string>
#include <string_view>
#include <utility>

namespace vowelway::page {

namespace {

std::string plan_of(Json const& request, std::string_view score) {
    auto const& plan = planned(request, score);
    auto const form = request.value("form", "json");
    return form == "csv"    ? report::plan_csv(plan)
           : form == "text" ? report::plan_text(plan)
                            : report::plan_json(plan);
}

/// {"pages": ["<svg ..", ..]}.
std::string drawing_of(Json const& request, std::string_view score) {
    auto const options = chart_options(request);
    auto pages = Json::array();
    for (auto const& page : draw_svg(planned(request, score), options, TextMeasurer(options.theme)))
        pages.push_back(page.bytes);
    return Json{{"pages", std::move(pages)}}.dump();
}

} // namespace

extern "C" {

/// The plan of a score (bytes of MusicXML or of a YAML passage) or, without bytes, of a range.
int vowelway_plan(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] { return plan_of(Json::parse(std::string_view(request, size)), {score, score_size}); });
}

/// The charts of the same plan as SVG, set with the page's own fonts (text_measurer.hpp).
int vowelway_draw(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] {
        return drawing_of(Json::parse(std::string_view(request, size)), {score, score_size});
    });
}

/// Everything else, by the name in request["ask"] (asks.hpp).
int vowelway_ask(char const* request, std::size_t size, char const* bytes, std::size_t count) {
    return answer([&] { return answer_to(Json::parse(std::string_view(request, size)), {bytes, count}); });
}

/// Sound (hearing.hpp): its samples are fetched with vowelway_samples.
int vowelway_hear(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] { return heard(Json::parse(std::string_view(request, size)), {score, score_size}); });
}
float const* vowelway_samples() { return samples().data(); }
std::size_t vowelway_samples_size() { return samples().size(); }

/// Practising (live.hpp): begun with a vowel or a note, then fed with samples at 16 kHz.
int vowelway_practise(char const* request, std::size_t size, char const* score, std::size_t score_size) {
    return answer([&] {
        return live_begun(Json::parse(std::string_view(request, size)), {score, score_size});
    });
}
int vowelway_live(char const*, std::size_t, float const* samples, std::size_t count) {
    return answer([&] { return live_heard({samples, count}); });
}

/// The measurement of one recording: samples at 16 kHz, one channel.
int vowelway_measure(char const* request, std::size_t size, float const* samples, std::size_t count) {
    return answer([&] {
        return measurement_of(Json::parse(std::string_view(request, size)), {samples, count});
    });
}
}

} // namespace vowelway::page
