// SPDX-License-Identifier: MIT
#include "chart/caption.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

namespace vowelway::chart {

Caption caption(plan::Plan const& plan) {
    auto const& title = plan.passage.title;
    return {.title = title.empty() ? worded("Vowel plan, {0}", plan.range.str()) : title,
            .description = worded("Vowel plan for {0} ({1}), technique {2}", plan.singer.name,
                                  reworded(to_string(plan.singer.voice)), plan.technique)};
}

Caption caption(plan::Choir const& choir) {
    std::string names;
    for (auto const& part : choir.parts) names += (names.empty() ? "" : ", ") + part.name;
    auto const& plan = choir.parts.front().plan;
    return {.title =
                worded("{0}: all parts", plan.passage.title.empty() ? worded("Song") : plan.passage.title),
            .description = worded("Vowel plans of {0}, technique {1}", names, plan.technique)};
}

Caption caption(ChoirSheet const& sheet) {
    auto const& plan = sheet.choir.parts.front().plan;
    return {.title =
                worded("{0}: choir sheet", plan.passage.title.empty() ? worded("Song") : plan.passage.title),
            .description = plan::summary_of(sheet.choir)};
}

Caption caption(plan::Comparison const& comparison) {
    std::string names;
    for (auto const& singer : comparison.singers) names += (names.empty() ? "" : ", ") + singer.name;
    return {.title = worded("Voices compared"),
            .description = worded("Turning points and meetings by vowel: {0}", names)};
}

Caption caption(plan::NoteExplanation const& e) {
    return {.title = e.title + (e.title.empty() ? "" : ": ") +
                     worded("bar {0}, beat {1}", e.note.measure, fmt::format("{:g}", e.note.beat)),
            .description = worded("One note explained for {0} ({1}), technique {2}: {3}", e.singer.name,
                                  reworded(to_string(e.singer.voice)), e.technique, e.decision.why)};
}

Caption caption(ProbeMap const& p) {
    std::string vowels;
    for (auto const& v : p.vowels) vowels += (vowels.empty() ? "/" : " /") + v.vowel.ipa() + "/";
    return {.title =
                fmt::format("{}: {}", p.checks.empty() ? worded("Vowels measured") : worded("Vowels checked"),
                            p.reference.name),
            .description = worded("Probes of {0} on a map of fR1 and fR2", vowels)};
}

Caption caption(plan::Lesson const& lesson) {
    auto const& plan = lesson.plan;
    return {.title = worded("{0}: lesson", plan.passage.title.empty() ? worded("Song") : plan.passage.title),
            .description = worded("Phrases by difficulty and exercises for {0} ({1}), technique {2}. {3}",
                                  plan.singer.name, reworded(to_string(plan.singer.voice)), plan.technique,
                                  lesson.in_brief[1])};
}

Caption caption(SungText const& text) {
    return {.title = text.title.empty() ? worded("Text sheet") : text.title,
            .description = worded("The words of the song with the sounds of lyric diction")};
}

Caption caption(SingerSheet const& sheet) {
    return {.title = worded("{0}: singer's sheet", sheet.singer.name),
            .description = worded("Resonances and turning points of {0} ({1}), vowel by vowel",
                                  sheet.singer.name, reworded(to_string(sheet.singer.voice)))};
}

Caption caption(analysis::RecordingCard const& card) {
    return {.title = card.title, .description = card.vowels};
}

Caption caption(plan::PlansCompared const& c) {
    auto const& title = c.plans[0].passage.title;
    return {.title = worded("{0}: {1} and {2}", title.empty() ? worded("Two plans") : title,
                            c.plans[0].singer.name, c.plans[1].singer.name),
            .description =
                worded("Where the vowel plans of two singers differ, technique {0}", c.plans[0].technique)};
}

Caption caption(std::vector<plan::KeysPlan> const& singers) {
    std::string who;
    for (auto const& one : singers) who += (who.empty() ? "" : ", ") + one.singer.name;
    auto const& title = singers.front().passage.title;
    return {.title = worded("{0}: keys", title.empty() ? worded("Song") : title),
            .description = worded("What the song asks for in every key, for {0}, technique {1}", who,
                                  singers.front().technique)};
}

Caption caption(plan::Overview const& overview) {
    return {.title = worded("Songs and singers"),
            .description =
                worded("What speaks against each of {0} songs for each of {1} singers, technique {2}",
                       overview.songs.size(), overview.singers.size(), overview.technique)};
}

Caption caption(StudioPage const& page) {
    return {.title = page.singer.name,
            .description = worded("What is known of {0}, and in which key {1} songs suit", page.singer.name,
                                  page.songs.size())};
}

} // namespace vowelway::chart
