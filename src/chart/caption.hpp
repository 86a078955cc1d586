// SPDX-License-Identifier: MIT
// What a chart's file says of itself. Private to the layer.
#pragma once

#include "vowelway/chart/draw_card.hpp"
#include "vowelway/chart/draw_choir.hpp"
#include "vowelway/chart/draw_keys.hpp"
#include "vowelway/chart/draw_lesson.hpp"
#include "vowelway/chart/draw_overview.hpp"
#include "vowelway/chart/draw_plans.hpp"
#include "vowelway/chart/draw_probes.hpp"
#include "vowelway/chart/draw_singer.hpp"
#include "vowelway/chart/draw_studio.hpp"
#include "vowelway/chart/draw_text.hpp"

#include <string>

namespace vowelway::chart {

struct Caption {
    std::string title;
    std::string description;
};

Caption caption(plan::Plan const& plan);
Caption caption(plan::Choir const& choir);
Caption caption(ChoirSheet const& sheet);
Caption caption(plan::Comparison const& comparison);
Caption caption(plan::NoteExplanation const& e);
Caption caption(ProbeMap const& p);
Caption caption(plan::PlansCompared const& c);
Caption caption(plan::Lesson const& lesson);
Caption caption(SungText const& text);
Caption caption(SingerSheet const& sheet);
Caption caption(analysis::RecordingCard const& card);
Caption caption(StudioPage const& page);
Caption caption(plan::Overview const& overview);
Caption caption(std::vector<plan::KeysPlan> const& singers);

} // namespace vowelway::chart
