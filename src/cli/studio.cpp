// SPDX-License-Identifier: MIT
// vowelway studio: a teacher's folder, with nothing but profiles and scores in it.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/plan_request.hpp"
#include "cli/standard_output.hpp"
#include "cli/studio_folder.hpp"
#include "cli/studio_plans.hpp"
#include "cli/today.hpp"
#include "vowelway/chart/draw_studio.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/plan/keys.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

struct Settings {
    std::string folder, date;
    Outputs outputs;
};

struct Report {
    std::string folder, into, date, technique = "classical";
    ChartLook look;
};

struct Plans {
    std::string folder, into, technique = "classical";
    int draws = 50;
    bool watch = false;
    ChartLook look;
};

std::string or_today(std::string const& date) { return date.empty() ? today() : date; }

void list(Settings const& s) {
    if (s.folder.empty()) missing(worded("a FOLDER"));
    s.outputs.check({});
    auto const studio = read_studio(s.folder, or_today(s.date));
    s.outputs.write({{Form::table, [&] { return report::studio_text(studio); }},
                     {Form::json, [&] { return report::studio_json(studio); }}});
}

/// The songs of the folder for a singer, the least needy first.
std::vector<plan::KeysPlan> songs_for(std::string const& profile, report::Studio const& studio,
                                      std::string const& technique, plan::Means const& means) {
    std::vector<plan::KeysPlan> out;
    for (auto const& song : studio.songs) {
        if (!song.error.empty()) continue;
        PlanOptions o;
        o.score = song.file;
        o.singer = profile;
        o.technique = technique;
        o.draws = 0;
        out.push_back(plan_keys(read_request(o).request, std::nullopt, means));
    }
    std::stable_sort(out.begin(), out.end(), [](auto const& a, auto const& b) {
        return a.recommended().terms.total() < b.recommended().terms.total();
    });
    return out;
}

void report_all(Report const& r) {
    auto const charts = chart_options(r.look);
    auto const studio = read_studio(r.folder, or_today(r.date));
    if (studio.singers.empty())
        throw InputError(worded("there is no singer in this folder"), worded("put profiles (.yaml) into it"),
                         Place{r.folder, 0, 0, {}});
    fs::path const into = r.into.empty() ? fs::path(r.folder) / "pages" : fs::path(r.into);
    std::error_code wrong;
    fs::create_directories(into, wrong);
    ThreadPool pool;
    for (auto const& [file, singer] : studio.singers) {
        plan::PlanCache cache;
        chart::StudioPage const page{
            singer.profile.singer, report::known_of(singer),
            songs_for(file, studio, r.technique, {.executor = &pool, .cache = &cache})};
        auto const stem = into / fs::path(file).stem();
        files::write(stem.string() + ".pdf", draw(page, charts, chart::Form::pdf).front().bytes);
        files::write(stem.string() + ".txt", report::studio_page_text(singer, page.songs));
        say(worded("wrote {0}", stem.string() + ".pdf") + "\n" + worded("wrote {0}", stem.string() + ".txt") +
            "\n");
    }
}

void add_report(Command& studio) {
    auto command =
        studio.add("report", "A page for each singer: what is known, and which songs suit in which key");
    auto o = std::make_shared<Report>();
    command.value("FOLDER", o->folder, "with profiles and scores").required().called("FOLDER");
    command.value("--into", o->into, "where the pages go (default: FOLDER/pages)").called("FOLDER");
    command.value("--technique", o->technique, "technique of all songs").shows_default();
    command.value("--date", o->date, "the day to count from, such as 2026-10-03 (default: today)").day();
    add_chart_look(command, o->look);
    command.footer("Example: vowelway studio report pupils/");
    command.runs([o] { report_all(*o); });
}

void add_plans(Command& studio) {
    auto command =
        studio.add("plans", "A plan for each song and singer, made again where one of them has changed");
    auto o = std::make_shared<Plans>();
    command.value("FOLDER", o->folder, "with profiles and scores").required().called("FOLDER");
    command.value("--into", o->into, "where the plans go (default: FOLDER/plans)").called("FOLDER");
    command.value("--technique", o->technique, "technique of all songs").shows_default();
    command.value("--draws", o->draws, "random draws within the deviations, for the certainty of each advice")
        .between(0, 10000)
        .shows_default();
    command.flag("--watch", o->watch, "stay, and plan again whatever is changed while you edit");
    add_chart_look(command, o->look);
    command.footer("Example: vowelway studio plans pupils/ --watch");
    command.runs([o] {
        StudioPlansOptions options{o->folder,
                                   o->into.empty() ? fs::path(o->folder) / "plans" : fs::path(o->into),
                                   o->technique,
                                   o->draws,
                                   chart_options(o->look),
                                   o->watch};
        make_studio_plans(options);
    });
}

} // namespace

void add_studio(Command& program) {
    auto command = program.add("studio", "A teacher's folder: singers, songs and plans in it");
    auto o = std::make_shared<Settings>();
    command.value("FOLDER", o->folder, "with profiles and scores; nothing else is needed").called("FOLDER");
    command.value("--date", o->date, "the day to count from, such as 2026-10-03 (default: today)").day();
    o->outputs.add_to(command, {Form::table, Form::json});
    add_report(command);
    add_plans(command);
    command.footer(
        "Example:\n  vowelway studio pupils/\n  vowelway studio report pupils/\n  vowelway studio plans "
        "pupils/ --watch");
    command.runs([o] { list(*o); });
}

} // namespace vowelway::cli
