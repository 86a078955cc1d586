// SPDX-License-Identifier: MIT
#include "cli/write_manual.hpp"

#include "cli/app.hpp"
#include "cli/help/man_page.hpp"
#include "vowelway/files/write.hpp"

namespace vowelway::cli {

void write_manual(std::filesystem::path const& folder) {
    std::filesystem::create_directories(folder);
    auto const program = all_commands();
    for (auto const& page : man_pages(program, VOWELWAY_VERSION)) files::write(folder / page.name, page.text);
    for (auto const& script : completions(program)) files::write(folder / script.name, script.text);
}

} // namespace vowelway::cli
