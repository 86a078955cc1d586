// SPDX-License-Identifier: MIT
#include "cli/chart_look.hpp"

#include "vowelway/io/theme/read_theme.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace vowelway::cli {

void add_chart_look(CLI::App& command, ChartLook& look) {
    command.add_option("--size", look.paper, "paper of the charts")
        ->check(CLI::IsMember({"a4", "letter", "tablet"}))
        ->capture_default_str();
    command
        .add_option("--theme", look.theme,
                    fmt::format("colours, fonts and size of the type: {}, or a YAML file",
                                fmt::join(io::theme_names(), ", ")))
        ->capture_default_str();
    command.add_flag("--grey", look.grey, "charts without colour");
}

bool is_chart(std::string_view ending) { return ending == ".pdf" || ending == ".svg" || ending == ".png"; }

chart::ChartOptions chart_options(ChartLook const& look) {
    chart::ChartOptions options;
    options.paper = chart::parse_paper(look.paper).value();
    options.theme = io::find_theme(look.theme);
    options.grey = look.grey;
    return options;
}

} // namespace vowelway::cli
