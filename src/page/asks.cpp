// SPDX-License-Identifier: MIT
#include "page/asks.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <array>

namespace vowelway::page {

namespace {

struct Question {
    std::string_view name;
    std::string (*answer)(Json const&, std::string_view);
};
constexpr std::array questions{Question{"choices", choices_told},   Question{"singer", singer_told},
                               Question{"voices", voices_told},     Question{"song", song_told},
                               Question{"sheet", sheet_drawn},      Question{"note", note_told},
                               Question{"marked", score_marked},    Question{"beside", plans_beside},
                               Question{"keys", keys_told},         Question{"frequency", frequency_told},
                               Question{"practice", practice_told}, Question{"say", language_said}};

} // namespace

std::string answer_to(Json const& request, std::string_view bytes) {
    auto const name = request.value("ask", "");
    for (auto const& question : questions)
        if (question.name == name) return question.answer(request, bytes);
    throw InputError(worded("there is no question \"{0}\"", name),
                     worded("the page and its module are not of one age"));
}

} // namespace vowelway::page
