// SPDX-License-Identifier: MIT
// What a song is, before it is planned, and the song with its plan written into it.
#include "page/asks.hpp"

#include "vowelway/diction/language.hpp"
#include "vowelway/io/score/mark_score.hpp"
#include "vowelway/report/score_marks.hpp"

namespace vowelway::page {

std::string song_told(Json const& request, std::string_view bytes) {
    auto const singer = profile_of(request.at("singer")).singer;
    auto const passage = passage_of(request, bytes, singer);
    auto const language = diction::parse_language(passage.language);
    Json out{{"title", passage.title},
             {"composer", passage.composer},
             {"part", passage.part},
             {"verse", passage.verse},
             {"language", passage.language},
             {"language_name", language ? to_string(*language) : ""},
             {"transposition", transposition_of(passage)},
             {"notes", passage.notes.size()},
             {"remarks", Json::array()}};
    for (auto const& remark : passage.remarks)
        out["remarks"].push_back({{"kind", to_string(remark.kind)}, {"text", remark.text}});
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string score_marked(Json const& request, std::string_view bytes) {
    auto const& plan = planned(request, bytes);
    auto const detail = report::parse_mark_detail(request.value("marks", "changes"));
    return io::marked_score(
        std::string(bytes), request.value("file", "the score"), score_options(request, plan.singer),
        report::marks_of(plan, detail.value_or(report::MarkDetail::changes)), io::ScoreForm::plain);
}

} // namespace vowelway::page
