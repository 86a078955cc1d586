// SPDX-License-Identifier: MIT
// The options of every command that draws charts: paper, theme, grey.
#pragma once

#include "cli/outputs.hpp"
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

/// Draws what a command has found; `found` must outlive the writing.
template <class Found> Writer chart_writer(Found const& found, chart::ChartOptions const& options) {
    return {Form::chart, [&found, options](std::string const& ending) {
                return draw(found, options, chart::parse_form(ending).value());
            }};
}

} // namespace vowelway::cli
