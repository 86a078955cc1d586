// SPDX-License-Identifier: MIT
#include "vowelway/report/survey_report.hpp"

#include "report/csv.hpp"
#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::report {

namespace {

using A = Table::Align;

/// The title, or where there is none the file; no longer than a column may be.
std::string name_of(std::string const& title, std::string const& song, std::size_t longest = 40) {
    auto out = title.empty() ? song : title;
    for (std::size_t i = 0, width = 0; i < out.size(); ++i) {
        if ((static_cast<unsigned char>(out[i]) & 0xc0u) == 0x80u) continue; // within a letter
        if (++width > longest) return out.substr(0, i) + "…";
    }
    return out;
}

std::string key_of(int semitones) { return semitones == 0 ? "0" : fmt::format("{:+}", semitones); }

void put_errors(std::string& out, plan::Overview const& overview) {
    for (auto const& song : overview.songs)
        if (!song.error.empty()) out += "\n" + worded("not read: {0}: {1}", song.song, song.error) + "\n";
}

} // namespace

std::string survey_text(plan::Overview const& overview) {
    std::vector<Table::Column> columns{{worded("song")}};
    for (auto const& singer : overview.singers) columns.push_back({std::string(reworded(singer)), A::right});
    Table table(columns);
    for (auto const& song : overview.songs) {
        if (!song.error.empty()) continue;
        std::vector<std::string> row{name_of(song.title, song.song, overview.singers.size() > 5 ? 22 : 40)};
        for (auto const& cell : song.of)
            row.push_back(cell ? fmt::format("{:.2f}{:>3}", cell->need, key_of(cell->best)) : "");
        table.row(row);
    }
    auto out = worded("{0} songs, {1} singers, technique {2}", overview.songs.size(), overview.singers.size(),
                      overview.technique) +
               "\n\n" + table.str();
    put_errors(out, overview);
    return out + "\n" +
           worded("For each singer what speaks against the song for a second of it (1: every vowel is lost), "
                  "in the key "
                  "that suits best, and that key in semitones. The song that asks least first.") +
           "\n";
}

std::string suits_text(plan::Overview const& overview, std::string const& singer) {
    auto const at = std::find(overview.singers.begin(), overview.singers.end(), singer);
    if (at == overview.singers.end())
        throw InputError(worded("the survey has no singer {0}", singer),
                         worded("there are: {0}", fmt::format("{}", fmt::join(overview.singers, ", "))));
    auto const column = static_cast<std::size_t>(at - overview.singers.begin());
    std::vector<plan::OverviewSong const*> songs;
    for (auto const& song : overview.songs)
        if (song.error.empty() && song.of[column]) songs.push_back(&song);
    std::stable_sort(songs.begin(), songs.end(),
                     [&](auto const* a, auto const* b) { return a->of[column]->need < b->of[column]->need; });
    Table table({{worded("song")},
                 {worded("composer")},
                 {worded("key"), A::right},
                 {worded("need"), A::right},
                 {worded("as is"), A::right},
                 {worded("by what")}});
    for (auto const* song : songs) {
        auto const& cell = *song->of[column];
        table.row({name_of(song->title, song->song, 34), name_of(song->composer, "", 20), key_of(cell.best),
                   fmt::format("{:.2f}", cell.need), fmt::format("{:.2f}", cell.need_as_is),
                   std::string(reworded(cell.why))});
    }
    return worded("What suits {0}, technique {1}, the best first", singer, overview.technique) + "\n\n" +
           table.str() + "\n" +
           worded("key: the one that suits best, in semitones from where the song stands; need: what speaks "
                  "against the song there, for a second of it (1: every vowel is lost), and most of it by "
                  "what; as is: the same in the key as it stands.") +
           "\n";
}

std::string likeness_text(std::string const& song, std::vector<plan::Likeness> const& others) {
    Table table({{worded("title")}, {worded("how far"), A::right}, {worded("song")}});
    for (auto const& one : others)
        table.row({name_of(one.title, ""), fmt::format("{:.2f}", one.distance), one.song});
    return worded("Songs like {0}, the nearest first", song) + "\n\n" + table.str() + "\n" +
           worded("how far: in standard deviations over the survey, of where the line lies and what it asks "
                  "for.") +
           "\n";
}

std::string survey_csv(std::vector<plan::PlanRecord> const& records) {
    std::vector<std::string> heads{"song",      "singer",         "technique", "transpose", "title",
                                   "composer",  "part",           "language",  "name",      "voice",
                                   "worst_bar", "worst_syllable", "error"};
    for (auto const& f : plan::figure_names()) heads.emplace_back(f.name);
    for (auto const* more : {"draws", "program", "song_hash", "singer_hash", "technique_hash"})
        heads.emplace_back(more);
    std::string out;
    csv_line(out, heads);
    for (auto const& r : records) {
        std::vector<std::string> row{
            r.key.song, r.key.singer, r.key.technique, std::to_string(r.key.transpose),
            r.title,    r.composer,   r.part,          r.language,
            r.name,     r.voice,      r.worst_bar,     r.worst_syllable,
            r.error};
        for (auto const& figure : r.figures) row.push_back(figure ? number(*figure, 4) : "");
        for (auto const& more : {std::to_string(r.source.draws), r.source.program, r.source.song_hash,
                                 r.source.singer_hash, r.source.technique_hash})
            row.push_back(more);
        csv_line(out, row);
    }
    return out;
}

std::string survey_json(plan::Overview const& overview) {
    Json out{{"vowelway", 1}, {"technique", overview.technique}, {"singers", overview.singers}};
    out["songs"] = Json::array();
    for (auto const& song : overview.songs) {
        Json row{{"song", song.song}, {"title", song.title}, {"composer", song.composer}};
        row["error"] = song.error.empty() ? Json() : Json(song.error);
        row["need"] = rounded(song.need, 0.0001);
        row["for"] = Json::array();
        for (auto const& cell : song.of)
            row["for"].push_back(cell ? Json{{"best", cell->best},
                                             {"need", rounded(cell->need, 0.0001)},
                                             {"need_as_it_stands", rounded(cell->need_as_is, 0.0001)},
                                             {"mostly", cell->why}}
                                      : Json());
        out["songs"].push_back(std::move(row));
    }
    return text_of(out);
}

} // namespace vowelway::report
