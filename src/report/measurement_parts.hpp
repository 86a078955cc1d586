// SPDX-License-Identifier: MIT
// The JSON of a measurement before it is text: that of a check has more. Private to the layer.
#pragma once

#include "report/json_parts.hpp"
#include "vowelway/analysis/measure.hpp"

namespace vowelway::report {

/// "take.m4a: whisper (99.9 %)", a line for each recording.
std::string kinds_text(analysis::Measurements const& measurements, std::vector<std::string> const& files);

/// What a teacher would say first, a line for each point.
std::string lesson_text(std::vector<analysis::LessonPoint> const& points);

Json measurement_parts(analysis::Measurements const& measurements, std::vector<std::string> const& files);

} // namespace vowelway::report
