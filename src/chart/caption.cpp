// SPDX-License-Identifier: MIT
#include "chart/caption.hpp"

#include <fmt/format.h>

namespace vowelway::chart {

Caption caption(plan::Plan const& plan) {
    auto const& title = plan.passage.title;
    return {.title = title.empty() ? fmt::format("Vowel plan, {}", plan.range.str()) : title,
            .description = fmt::format("Vowel plan for {} ({}), technique {}", plan.singer.name,
                                       to_string(plan.singer.voice), plan.technique)};
}

Caption caption(plan::Comparison const& comparison) {
    std::string names;
    for (auto const& singer : comparison.singers) names += (names.empty() ? "" : ", ") + singer.name;
    return {.title = "Voices compared", .description = "Turning points and meetings by vowel: " + names};
}

Caption caption(plan::NoteExplanation const& e) {
    return {.title = fmt::format("{}{}bar {}, beat {:g}", e.title, e.title.empty() ? "" : ": ",
                                 e.note.measure, e.note.beat),
            .description = fmt::format("One note explained for {} ({}), technique {}: {}", e.singer.name,
                                       to_string(e.singer.voice), e.technique, e.decision.why)};
}

Caption caption(ProbeMap const& p) {
    std::string vowels;
    for (auto const& v : p.vowels) vowels += (vowels.empty() ? "/" : " /") + v.vowel.ipa() + "/";
    return {.title = fmt::format("{}: {}", p.checks.empty() ? "Vowels measured" : "Vowels checked",
                                 p.reference.name),
            .description = fmt::format("Probes of {} on a map of fR1 and fR2", vowels)};
}

Caption caption(plan::Lesson const& lesson) {
    auto const& plan = lesson.plan;
    return {.title = fmt::format("{}: lesson", plan.passage.title.empty() ? "Song" : plan.passage.title),
            .description = fmt::format("Phrases by difficulty and exercises for {} ({}), technique {}. {}",
                                       plan.singer.name, to_string(plan.singer.voice), plan.technique,
                                       lesson.in_brief[1])};
}

Caption caption(SingerSheet const& sheet) {
    return {.title = fmt::format("{}: singer's sheet", sheet.singer.name),
            .description = fmt::format("Resonances and turning points of {} ({}), vowel by vowel",
                                       sheet.singer.name, to_string(sheet.singer.voice))};
}

Caption caption(plan::PlansCompared const& c) {
    auto const& title = c.plans[0].passage.title;
    return {.title = fmt::format("{}: {} and {}", title.empty() ? "Two plans" : title, c.plans[0].singer.name,
                                 c.plans[1].singer.name),
            .description = fmt::format("Where the vowel plans of two singers differ, technique {}",
                                       c.plans[0].technique)};
}

} // namespace vowelway::chart
