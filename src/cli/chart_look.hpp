// SPDX-License-Identifier: MIT
// The options of every command that draws charts: paper, theme, grey.
#pragma once

#include "cli/command.hpp"
#include "vowelway/chart/draw.hpp"

#include <string>

namespace vowelway::cli {

struct ChartLook {
    std::string paper = "a4", theme = "paper";
    bool grey = false;
};

/// The look must outlive the parsing.
void add_chart_look(Command& command, ChartLook& look);

/// Reads the theme. Throws InputError.
chart::ChartOptions chart_options(ChartLook const& look);

} // namespace vowelway::cli
