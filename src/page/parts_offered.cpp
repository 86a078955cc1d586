// SPDX-License-Identifier: MIT
#include "page/parts_offered.hpp"

#include "io/score/decode.hpp"
#include "io/score/part_events.hpp"
#include "vowelway/io/score/sung_parts.hpp"

#include <string>

namespace vowelway::page {

namespace {

constexpr std::string_view lower_line = " low";

Json every_part(std::string bytes, std::string const& file) {
    io::XmlSource const source(std::move(bytes), file);
    auto out = Json::array();
    for (auto const& part : io::list_parts(source))
        out.push_back({{"part", std::to_string(out.size() + 1)},
                       {"name", part.name.empty() ? part.id : part.name},
                       {"verses", 0}});
    return out;
}

} // namespace

Json parts_offered(std::string_view score, std::string const& file) {
    std::string bytes(score);
    if (!io::looks_like_xml(bytes)) return Json::array();
    auto out = Json::array();
    try {
        for (auto const& part : io::sung_parts(bytes, file))
            out.push_back({{"part", part.lowest ? part.wish + std::string(lower_line) : part.wish},
                           {"name", part.name},
                           {"verses", part.verses}});
    } catch (InputError const&) { // no words, and no part that a voice is named for
        return every_part(std::move(bytes), file);
    }
    return out;
}

void choose_part(io::ScoreOptions& options, std::string const& wish) {
    auto const ends = wish.size() > lower_line.size() && wish.ends_with(lower_line);
    auto const line = ends ? wish.substr(0, wish.size() - lower_line.size()) : wish;
    options.lowest = ends && line.find_first_not_of("0123456789.") == std::string::npos;
    options.part = options.lowest ? line : wish;
}

} // namespace vowelway::page
