// SPDX-License-Identifier: MIT
// The options of every command that draws charts: paper, theme, grey.
#pragma once

#include "vowelway/chart/draw.hpp"

#include <string>
#include <string_view>

namespace CLI {
class App;
}

namespace vowelway::cli {

struct ChartLook {
    std::string paper = "a4", theme = "paper";
    bool grey = false;
};

/// The look must outlive the parsing.
void add_chart_look(CLI::App& command, ChartLook& look);

/// Whether a file with this ending (".pdf") is a chart.
bool is_chart(std::string_view ending);

/// Reads the theme. Throws InputError.
chart::ChartOptions chart_options(ChartLook const& look);

} // namespace vowelway::cli
