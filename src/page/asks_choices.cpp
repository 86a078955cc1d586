// SPDX-License-Identifier: MIT
// What a page offers to choose from.
#include "page/asks.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/diction/language.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "vowelway/io/wording/read_wording.hpp"
#include "vowelway/report/plan_report.hpp"

namespace vowelway::page {

std::string choices_told(Json const&, std::string_view) {
    Json out{{"voices", Json::array()}, {"languages", Json::array()}, {"techniques", io::technique_names()}};
    for (auto const voice : all_voice_types) out["voices"].push_back(to_string(voice));
    using diction::Language;
    for (int i = 0; i <= static_cast<int>(diction::last_language); ++i) {
        auto const language = static_cast<Language>(i);
        out["languages"].push_back({{"tag", tag(language)},
                                    {"name", reworded(to_string(language))},
                                    {"rules", has_diction_rules(language)}});
    }
    out["caution"] = reworded(report::voice_caution);
    return out.dump();
}

std::string language_said(Json const& request, std::string_view) {
    auto const code = request.value("language", "en");
    auto wording = io::built_in_wording(code);
    if (!wording)
        throw InputError(worded("the language {0} is not spoken here", code), worded("name one of the list"));
    set_wording(std::move(*wording));
    return Json{{"language", wording_language()}, {"languages", io::wording_codes()}}.dump();
}

} // namespace vowelway::page
