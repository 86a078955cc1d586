// SPDX-License-Identifier: MIT
#include "vowelway/report/studio_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/keys_report.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace vowelway::report {

namespace {

using A = Table::Align;

/// A file as it is called within the folder.
std::string within(Studio const& studio, std::string const& file) {
    auto const folder = studio.folder.ends_with('/') ? studio.folder : studio.folder + "/";
    return file.starts_with(folder) ? file.substr(folder.size()) : file;
}

std::string heads(Studio const& studio) {
    auto const singers = studio.singers.size(), songs = studio.songs.size();
    return worded("{0}: {1}, {2}", studio.folder,
                  singers == 1 ? worded("1 singer") : worded("{0} singers", singers),
                  songs == 1 ? worded("1 song") : worded("{0} songs", songs));
}

std::string singers_table(Studio const& studio) {
    Table table({{worded("singer")},
                 {worded("voice")},
                 {worded("measured")},
                 {worded("missing")},
                 {worded("changed")},
                 {worded("file")}});
    for (auto const& [file, singer] : studio.singers)
        table.row({singer.profile.singer.name, std::string(reworded(to_string(singer.profile.singer.voice))),
                   age_of(singer) + (singer.is_old() ? " !" : ""), missing_of(singer),
                   singer.changed.empty() ? "" : worded("{0} vowels", singer.changed.size()),
                   within(studio, file)});
    return table.str();
}

std::string songs_table(Studio const& studio) {
    Table table({{worded("song")}, {worded("composer")}, {worded("from")}, {worded("to")}, {worded("file")}});
    for (auto const& song : studio.songs)
        if (song.error.empty())
            table.row({song.title, song.composer, song.low, song.high, within(studio, song.file)});
    return table.str();
}

std::string plans_table(Studio const& studio) {
    Table table({{worded("plan")}, {worded("singer")}, {worded("song")}, {""}});
    for (auto const& plan : studio.plans)
        table.row({within(studio, plan.file), plan.singer, plan.title,
                   plan.behind ? worded("older than what it was made from") : ""});
    return table.str();
}

Json singer_json(std::string const& file, analysis::StudioSinger const& s) {
    Json out{{"file", file},
             {"singer", s.profile.singer.name},
             {"voice", to_string(s.profile.singer.voice)},
             {"last_measured", s.last_measured.empty() ? Json() : Json(s.last_measured)},
             {"days", s.days ? Json(*s.days) : Json()},
             {"old", s.is_old()},
             {"missing", Json::array()},
             {"changed", Json::array()}};
    for (auto const& vowel : s.missing) out["missing"].push_back(vowel.ipa());
    for (auto const& entry : s.changed)
        out["changed"].push_back({{"ipa", entry.measurement.vowel.ipa()},
                                  {"date", entry.measurement.date},
                                  {"fR1_cents", rounded(entry.change->r1.value, 1)},
                                  {"fR1_clear", entry.change->r1_clear},
                                  {"fR2_cents", rounded(entry.change->r2.value, 1)},
                                  {"fR2_clear", entry.change->r2_clear}});
    return out;
}

} // namespace

std::string age_of(analysis::StudioSinger const& singer) {
    if (!singer.days) return worded("no day is known");
    if (*singer.days == 0) return worded("today");
    return *singer.days == 1 ? worded("a day ago") : worded("{0} days ago", *singer.days);
}

std::string missing_of(analysis::StudioSinger const& singer) {
    std::string out;
    for (auto const& vowel : singer.missing) out += (out.empty() ? "/" : " /") + vowel.ipa() + "/";
    return out.empty() ? worded("none") : out;
}

std::vector<std::string> changes_of(analysis::StudioSinger const& singer) {
    std::vector<std::string> out;
    auto const size = [](Cents c) { return fmt::format("{:.1f}", std::abs(in_semitones(c))); };
    auto const said = [&](Vowel const& vowel, char const* which, Cents by) {
        out.push_back(by.value > 0
                          ? worded("/{0}/: {1} has risen by {2} semitones", vowel.ipa(), which, size(by))
                          : worded("/{0}/: {1} has fallen by {2} semitones", vowel.ipa(), which, size(by)));
    };
    for (auto const& entry : singer.changed) {
        if (entry.change->r1_clear) said(entry.measurement.vowel, "fR1", entry.change->r1);
        if (entry.change->r2_clear) said(entry.measurement.vowel, "fR2", entry.change->r2);
    }
    return out;
}

std::vector<std::string> known_of(analysis::StudioSinger const& singer) {
    std::vector<std::string> out{worded("measured: {0}", age_of(singer))};
    if (singer.is_old())
        out.push_back(worded("measured more than {0} days ago: measure again", analysis::old_after_days));
    out.push_back(worded("missing vowels: {0}", missing_of(singer)));
    for (auto& change : changes_of(singer)) out.push_back(std::move(change));
    return out;
}

std::string studio_text(Studio const& studio) {
    auto out = heads(studio) + "\n";
    if (!studio.singers.empty()) out += "\n" + singers_table(studio);
    if (std::any_of(studio.singers.begin(), studio.singers.end(),
                    [](auto const& s) { return s.second.is_old(); }))
        out += worded("! measured more than {0} days ago: measure again", analysis::old_after_days) + "\n";
    if (!studio.songs.empty()) out += "\n" + songs_table(studio);
    if (!studio.plans.empty()) out += "\n" + plans_table(studio);
    for (auto const& [file, why] : studio.unread)
        out += "\n" + worded("not read: {0}: {1}", file, why) + "\n";
    for (auto const& song : studio.songs)
        if (!song.error.empty()) out += "\n" + worded("not read: {0}: {1}", song.file, song.error) + "\n";
    return out;
}

std::string studio_json(Studio const& studio) {
    Json out{{"vowelway", 1}, {"folder", studio.folder}, {"today", studio.today}};
    out["singers"] = Json::array();
    for (auto const& [file, singer] : studio.singers) out["singers"].push_back(singer_json(file, singer));
    out["unread"] = Json::array();
    for (auto const& [file, why] : studio.unread) out["unread"].push_back({{"file", file}, {"why", why}});
    out["songs"] = Json::array();
    for (auto const& s : studio.songs)
        out["songs"].push_back({{"file", s.file},
                                {"title", s.title},
                                {"composer", s.composer},
                                {"low", s.low},
                                {"high", s.high},
                                {"error", s.error.empty() ? Json() : Json(s.error)}});
    out["plans"] = Json::array();
    for (auto const& p : studio.plans)
        out["plans"].push_back(
            {{"file", p.file}, {"title", p.title}, {"singer", p.singer}, {"behind", p.behind}});
    return text_of(out);
}

std::string studio_page_text(analysis::StudioSinger const& singer, std::vector<plan::KeysPlan> const& songs) {
    auto const& s = singer.profile.singer;
    auto out = s.name + ", " + std::string(reworded(to_string(s.voice))) + "\n";
    for (auto const& line : known_of(singer)) out += line + "\n";
    if (songs.empty()) return out;
    Table table({{worded("song")},
                 {worded("key")},
                 {worded("change"), A::right},
                 {worded("long"), A::right},
                 {worded("against it as written")}});
    for (auto const& song : songs) {
        auto const& best = song.recommended();
        table.row({song.passage.title, plan::words_of_key(best.semitones),
                   fmt::format("{:.0f} %", 100 * best.demand.time.modify),
                   fmt::format("{}", best.long_on_turn.size()), plan::against_as_written(song, 3)});
    }
    return out + "\n" + table.str() + "\n" +
           worded("change: time on notes that ask for another shape, in that key; long: notes of a second or "
                  "more where "
                  "the vowel turns over or fo meets fR1.") +
           "\n" + worded("A proposal, never an order: how the voice feels on the day decides.") + "\n";
}

} // namespace vowelway::report
