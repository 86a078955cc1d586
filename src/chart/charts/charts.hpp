// SPDX-License-Identifier: MIT
// The charts: each one file, or a room of its own; plan and paper in, pages out.
#pragma once

#include "vowelway/chart/draw_probes.hpp"
#include "vowelway/chart/draw_studio.hpp"
#include "vowelway/chart/drawing.hpp"
#include "vowelway/core/sung_text.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/plan/compare_plans.hpp"
#include "vowelway/plan/explain.hpp"
#include "vowelway/plan/keys.hpp"
#include "vowelway/plan/lesson.hpp"
#include "vowelway/plan/overview.hpp"
#include "vowelway/plan/plan.hpp"

#include <vector>

namespace vowelway::chart {

std::vector<Page> pencil_view(plan::Plan const& plan, Size paper, TextMeasurer const& measurer);
std::vector<Page> passage_sheet(plan::Plan const& plan, Size paper, TextMeasurer const& measurer,
                                bool numbers);
std::vector<Page> pitch_by_vowel(plan::Plan const& plan, Size paper, TextMeasurer const& measurer);

std::vector<Page> resonance_map(plan::Plan const& plan, Pitch pitch, Size paper,
                                TextMeasurer const& measurer);
Page singer_sheet(Singer const& singer, Size paper, TextMeasurer const& measurer);
Page studio_page(StudioPage const& page, Size paper, TextMeasurer const& measurer);
std::vector<Page> text_sheet(SungText const& text, Size paper, TextMeasurer const& measurer);
Page lesson_sheet(plan::Lesson const& lesson, Size paper, TextMeasurer const& measurer);
Page note_explained(plan::NoteExplanation const& explanation, Size paper, TextMeasurer const& measurer);
std::vector<Page> plans_compared(plan::PlansCompared const& compared, Size paper,
                                 TextMeasurer const& measurer);
std::vector<Page> keys_compared(std::vector<plan::KeysPlan> const& singers, Size paper,
                                TextMeasurer const& measurer);
std::vector<Page> survey_overview(plan::Overview const& overview, Size paper, TextMeasurer const& measurer);
std::vector<Page> probe_map(ProbeMap const& probes, Size paper, TextMeasurer const& measurer);
std::vector<Page> voices_compared(plan::Comparison const& comparison, Size paper,
                                  TextMeasurer const& measurer);

} // namespace vowelway::chart
