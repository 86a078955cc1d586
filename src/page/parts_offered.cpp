// SPDX-License-Identifier: MIT
#include "page/parts_offered.hpp"

#include "io/score/decode.hpp"
#include "io/score/lyric_lines.hpp"
#include "io/score/part_events.hpp"

#include <algorithm>
#include <string>

namespace vowelway::page {

namespace {

bool has_words(io::PartInfo const& part) {
    for (auto const& measure : part.measures)
        for (auto const& note : measure.music.children("note"))
            if (note.child("lyric")) return true;
    return false;
}

} // namespace

Json parts_offered(std::string_view score, std::string const& file) {
    std::string bytes(score);
    if (!io::looks_like_xml(bytes)) return Json::array();
    io::XmlSource const source(std::move(bytes), file);
    auto with_words = Json::array(), all = Json::array();
    int number = 0;
    for (auto const& part : io::list_parts(source)) {
        Json told{{"part", std::to_string(++number)},
                  {"name", part.name.empty() ? part.id : part.name},
                  {"verses", 0}};
        if (has_words(part)) {
            told["verses"] = io::lyric_lines(io::read_part(source, part)).text.size();
            with_words.push_back(told);
        }
        all.push_back(std::move(told));
    }
    return with_words.empty() ? all : with_words;
}

} // namespace vowelway::page
