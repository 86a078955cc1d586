// SPDX-License-Identifier: MIT
#include "chart/charts.hpp"
namespace vowelway::chart {
std::vector<Page> pitch_by_vowel(Plan const&, Size, TextMeasurer const&) { return {}; }
} // namespace vowelway::chart
