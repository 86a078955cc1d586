// SPDX-License-Identifier: MIT
// vowelway survey: many songs, singers and keys, into one file.
#include "cli/chart_look.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/progress_line.hpp"
#include "cli/remarks.hpp"
#include "cli/standard_output.hpp"
#include "cli/survey_request.hpp"
#include "vowelway/chart/draw_overview.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/survey_report.hpp"
#include "vowelway/survey/store.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <memory>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

struct Answer {
    ChartLook look;
    Outputs outputs;
    std::string technique;
};

struct Settings {
    SurveyOptions survey;
    Answer answer;
    int threads = 0;
};

struct Shown {
    Answer answer;
    std::string file, singer, like;
};

struct Merged {
    std::vector<std::string> parts;
    Outputs outputs;
};

void add_answer(Command& command, Answer& answer) {
    answer.outputs.add_to(command, {Form::table, Form::csv, Form::json, Form::chart, Form::survey});
    add_chart_look(command, answer.look);
}

Writer keeps(survey::Store& store) {
    return {Form::survey, [](std::string const&) { return std::vector<chart::Document>(); },
            [&store](fs::path const&) { store.settle(); }};
}

void write(Answer const& answer, survey::Store& store) {
    auto const charts = chart_options(answer.look);
    auto const records = store.all();
    auto const overview = plan::overview_of(records, answer.technique);
    answer.outputs.write({{Form::table, [&] { return report::survey_text(overview); }},
                          {Form::csv, [&] { return report::survey_csv(records); }},
                          {Form::json, [&] { return report::survey_json(overview); }},
                          chart_writer(overview, charts),
                          keeps(store)});
}

/// A part of a larger work is one file that appears when it is whole; until then it is beside its place.
fs::path working_file(Settings const& s) {
    auto const file = s.answer.outputs.first(Form::survey);
    return s.survey.task.empty() ? fs::path(file) : fs::path(file + ".unfinished");
}

survey::Store store_for(Settings const& s) {
    auto const file = s.answer.outputs.first(Form::survey);
    if (file.empty()) return {};
    auto const working = working_file(s);
    std::error_code none;
    if (working != file && !fs::exists(working, none) && fs::exists(file, none))
        fs::copy_file(file, working, none);
    return survey::Store(working);
}

void run(Settings const& s) {
    if (s.survey.scores.empty()) missing(worded("a score or a folder of scores"));
    if (s.survey.singers.empty())
        missing(worded("a singer: --singer with a profile, a voice type or a folder of profiles"));
    if (!s.survey.task.empty() && s.answer.outputs.first(Form::survey).empty())
        missing(worded("-o PART.db with --task"));
    auto inputs = s.survey.scores;
    inputs.insert(inputs.end(), s.survey.singers.begin(), s.survey.singers.end());
    s.answer.outputs.check(inputs);
    Remarks remarks;
    auto const requests = survey_requests(s.survey, remarks);
    auto const is_average = [](survey::Voice const& voice) { return voice.singer.average; };
    if (std::any_of(requests.front().voices.begin(), requests.front().voices.end(), is_average))
        remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    print_remarks(remarks);
    auto store = store_for(s);
    ThreadPool pool(static_cast<std::size_t>(s.threads));
    survey::Progress all;
    {
        ProgressLine line(worded("plans"));
        for (auto const& request : requests) {
            auto const one = survey::run(request, store, pool, [&](survey::Progress const& p) {
                line.show(all.done + p.done, p.of * requests.size(), all.there + p.there);
            });
            all.done += one.done, all.of += one.of, all.there += one.there, all.failed += one.failed;
        }
    }
    say(worded("{0} plans, {1} of them were there; {2} times a song could not be read", all.of, all.there,
               all.failed) +
        "\n");
    if (auto const working = working_file(s); !s.survey.task.empty()) {
        store.settle();
        fs::rename(working, s.answer.outputs.first(Form::survey));
    }
    write(s.answer, store);
}

void show(Shown const& s) {
    s.answer.outputs.check({s.file});
    auto store = survey::Store::to_read(s.file);
    auto const records = store.all();
    if (!s.singer.empty())
        return s.answer.outputs.write(
            {{Form::table,
              [&] { return report::suits_text(plan::overview_of(records, s.answer.technique), s.singer); }}});
    if (!s.like.empty())
        return s.answer.outputs.write(
            {{Form::table,
              [&] { return report::likeness_text(s.like, plan::songs_like(records, s.like)); }}});
    write(s.answer, store);
}

void merge(Merged const& m) {
    auto const file = m.outputs.first(Form::survey);
    if (file.empty()) missing("-o ALL.db");
    m.outputs.check(m.parts);
    fs::path const working = file + ".unfinished";
    std::error_code none;
    fs::remove(working, none); // of a merge that was killed: all of it is in the parts
    survey::Store all(working);
    for (auto const& part : m.parts) all.take(part);
    all.settle();
    fs::rename(working, file);
    say(worded("{0} plans of {1} files", all.count(), m.parts.size()) + "\n" + worded("wrote {0}", file) +
        "\n");
}

void add_show(Command& survey) {
    auto command =
        survey.add("show", "What a survey says: songs and singers, what suits one, songs like another");
    auto o = std::make_shared<Shown>();
    command.value("FILE", o->file, "a survey (.db)").required().called("FILE");
    command.value("--singer", o->singer, "what suits this singer, the best first").called("NAME");
    command.value("--like", o->like, "songs like this one, by its name in the survey").called("SONG");
    command.value("--technique", o->answer.technique, "of this technique (default: the first)")
        .called("NAME");
    o->answer.outputs.add_to(command, {Form::table, Form::csv, Form::json, Form::chart});
    add_chart_look(command, o->answer.look);
    command.footer("Example: vowelway survey show songs.db -o songs.pdf\n         "
                   "vowelway survey show songs.db --singer \"Ottavio Brandt\"");
    command.runs([o] { show(*o); });
}

void add_merge(Command& survey) {
    auto command = survey.add("merge", "One survey of several parts");
    auto o = std::make_shared<Merged>();
    command.values("PARTS", o->parts, "surveys (.db); of two plans of the same the later file's is taken")
        .required();
    o->outputs.add_to(command, {Form::table, Form::survey});
    command.footer("Example: vowelway survey merge part*.db -o all.db");
    command.runs([o] { merge(*o); });
}

} // namespace

void add_survey(Command& program) {
    auto command = program.add("survey", "Many songs for many singers in many keys: what each asks for");
    auto o = std::make_shared<Settings>();
    o->survey.song.draws = 0;
    add_survey_options(command, o->survey);
    command.value("--threads", o->threads, "how many work at once (default: one for each processor)")
        .between(0, 1024);
    add_answer(command, o->answer);
    add_show(command);
    add_merge(command);
    command.footer("Example:\n  vowelway survey songs/ --singers pupils/ -o songs.db\n  "
                   "vowelway survey show songs.db --singer tenor\n"
                   "Stop it and run it again at any moment: what is done is not done again.");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
