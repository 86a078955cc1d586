// SPDX-License-Identifier: MIT
// What a song is, before it is planned, and the song with its plan written into it.
#include "page/asks.hpp"
#include "page/parts_offered.hpp"
#include "page/synthesiser.hpp"
#include "page/words_sung.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/diction/language.hpp"
#include "vowelway/io/score/mark_score.hpp"
#include "vowelway/report/score_marks.hpp"

#include <set>

namespace vowelway::page {

namespace {

/// The words for which the synthesiser would be asked, and what it would be asked: a part of a compound, say.
Json unknown_words(Passage const& passage, diction::DictionOptions const& options) {
    auto out = Json::array();
    auto const language = diction::parse_language(passage.language);
    if (!language) return out;
    std::set<std::string> seen;
    for (auto const& [word, notes] : words_sung(passage)) {
        if (!seen.insert(word).second) continue;
        Unanswered const unanswered;
        transcribe(word, *language, options);
        if (!unanswered.asked().empty())
            out.push_back({{"word", word}, {"language", passage.language}, {"asks", unanswered.asked()}});
    }
    return out;
}

} // namespace

std::string song_told(Json const& request, std::string_view bytes) {
    auto const singer = profile_of(request.at("singer")).singer;
    Unanswered const looked_at; // nothing is planned from it
    auto const passage = passage_of(request, bytes, singer);
    auto const language = diction::parse_language(passage.language);
    Json out{{"title", passage.title},
             {"composer", passage.composer},
             {"part", passage.part},
             {"verse", passage.verse},
             {"language", passage.language},
             {"language_name", language ? reworded(to_string(*language)) : ""},
             {"transposition", transposition_of(passage)},
             {"notes", passage.notes.size()},
             {"unknown", unknown_words(passage, diction_options(request))},
             {"parts", parts_offered(bytes, request.value("file", "the score"))},
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
