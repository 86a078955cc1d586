// SPDX-License-Identifier: MIT
// One note explained.
#include "page/asks.hpp"
#include "page/text_measurer.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/report/explain_report.hpp"

namespace vowelway::page {

std::string note_told(Json const& request, std::string_view bytes) {
    auto wanted = plan_request(request, bytes);
    auto const note = request.at("note").get<std::size_t>();
    if (note >= wanted.passage.notes.size())
        throw InputError(worded("there is no such note"), worded("choose one of the sheet"));
    auto const explained = explain_note(std::move(wanted), note);
    auto const options = chart_options(request);
    Json out{{"text", report::explanation_text(explained)},
             {"json", report::explanation_json(explained)},
             {"svg", draw_svg(explained, options, TextMeasurer(options.theme)).front().bytes}};
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
