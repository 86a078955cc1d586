// SPDX-License-Identifier: MIT
#include "vowelway/report/lesson_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/plan_report.hpp"

#include <fmt/format.h>

namespace vowelway::report {

namespace {

std::string lesson_heading(plan::Plan const& plan) {
    auto const& p = plan.passage;
    std::string out = p.title.empty() ? worded("Lesson") : p.title;
    if (!p.composer.empty()) out += " (" + p.composer + ")";
    out += "\n" + worded("lesson for {0}, {1}", plan.singer.name, plan.technique) + "\n";
    if (auto const told = transposition_of(p); !told.empty())
        out += fmt::format("{} ({})\n", told, p.transposed_why);
    if (plan.singer.average) out += fmt::format("{}\n", reworded(average_voice_notice));
    return out;
}

std::string notes_of(plan::Exercise const& exercise) {
    std::string out;
    for (auto const& note : exercise.notes) out += (out.empty() ? "" : " ") + note.str();
    return out;
}

std::string_view name_of(plan::Exercise::Kind kind) {
    return kind == plan::Exercise::Kind::slide ? "slide" : "scale";
}

Json phrase_json(plan::LessonPhrase const& phrase) {
    return {{"from", phrase.from},
            {"to", phrase.to},
            {"bars", phrase.bars},
            {"words", phrase.words},
            {"difficulty", rounded(phrase.difficulty, 0.01)},
            {"why", phrase.why},
            {"again", phrase.again}};
}

Json exercise_json(plan::Exercise const& exercise, plan::Plan const& plan) {
    Json out{{"kind", name_of(exercise.kind)},
             {"ipa", plan.vowels[exercise.vowel].resonances.vowel.ipa()},
             {"turns_over", plan.passage.tuning.name(plan.vowels[exercise.vowel].turning.pitch).pitch.str()},
             {"notes", Json::array()},
             {"sung", exercise.sung}};
    for (auto const& note : exercise.notes) out["notes"].push_back(note.str());
    out["how"] = exercise.how;
    out["listen"] = exercise.listen;
    return out;
}

} // namespace

std::string lesson_text(plan::Lesson const& lesson) {
    auto out = lesson_heading(lesson.plan) + "\n";
    for (auto const& line : lesson.in_brief) out += line + "\n";
    for (auto const& caution : lesson.cautions) out += caution + "\n";
    out += "\n" + worded("Phrases, the hardest first") + "\n";
    if (lesson.phrases.empty()) out += "  " + worded("No phrase asks for a change: sing as written.") + "\n";
    for (std::size_t i = 0; i < lesson.phrases.size(); ++i) {
        auto const& p = lesson.phrases[i];
        out += fmt::format("  {}. {}: {}\n     {}\n", i + 1, p.bars, p.words, p.why);
        for (auto const& bars : p.again) out += "     " + worded("again in {0}", bars) + "\n";
    }
    std::string order;
    for (auto const i : lesson.order) order += fmt::format("{}, ", i + 1);
    out += "\n" + worded("Order of practice: {0}the whole song", order) + "\n";
    if (!lesson.exercises.empty()) out += "\n" + worded("Exercises, before the phrases") + "\n";
    for (auto const& e : lesson.exercises)
        out += fmt::format("  {}: {}\n     ", notes_of(e), e.how) + worded("listen: {0}", e.listen) + "\n";
    return out + fmt::format("\n{}\n", reworded(voice_caution));
}

std::string lesson_json(plan::Lesson const& lesson) {
    auto const& plan = lesson.plan;
    Json out{{"vowelway", 1},
             {"singer", plan.singer.name},
             {"voice", to_string(plan.singer.voice)},
             {"average", plan.singer.average},
             {"technique", plan.technique},
             {"title", plan.passage.title},
             {"composer", plan.passage.composer},
             {"transposed", rounded(plan.passage.transposed, 0.01)},
             {"in_brief", lesson.in_brief},
             {"phrases", Json::array()}};
    for (auto const& phrase : lesson.phrases) out["phrases"].push_back(phrase_json(phrase));
    out["order"] = lesson.order;
    out["exercises"] = Json::array();
    for (auto const& exercise : lesson.exercises) out["exercises"].push_back(exercise_json(exercise, plan));
    out["cautions"] = lesson.cautions;
    out["warnings"] = warnings_json(plan.remarks);
    return text_of(out);
}

} // namespace vowelway::report
