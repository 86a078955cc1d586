// SPDX-License-Identifier: MIT
#include "cli/chart_look.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/io/theme/read_theme.hpp"

#include <fmt/format.h>

namespace vowelway::cli {

void add_chart_look(Command& command, ChartLook& look) {
    command.value("--size", look.paper, "paper size of the charts")
        .one_of({"a4", "letter", "tablet"})
        .shows_default();
    command
        .value("--theme", look.theme,
               worded("colours, fonts and type size: {0}, or a YAML file",
                      fmt::format("{}", fmt::join(io::theme_names(), ", "))))
        .shows_default();
    command.flag("--grey", look.grey, "charts without colour");
}

chart::ChartOptions chart_options(ChartLook const& look) {
    chart::ChartOptions options;
    options.paper = chart::parse_paper(look.paper).value();
    options.theme = io::find_theme(look.theme);
    options.grey = look.grey;
    return options;
}

} // namespace vowelway::cli
