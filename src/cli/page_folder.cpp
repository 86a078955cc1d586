// SPDX-License-Identifier: MIT
#include "cli/page_folder.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <cstdlib>

namespace vowelway::cli {

namespace fs = std::filesystem;

fs::path page_folder(std::string const& given) {
    auto const holds_page = [](fs::path const& folder) {
        std::error_code none;
        return fs::is_regular_file(folder / "vowelway.html", none);
    };
    if (auto const* named = std::getenv("VOWELWAY_PAGE"); given.empty() && named && *named)
        return page_folder(named);
    if (!given.empty()) {
        if (holds_page(given)) return given;
        throw InputError(worded("holds no page"), worded("name the folder that sh src/page/make.sh builds"),
                         {given, 0, 0, {}});
    }
    std::error_code none;
    auto const program = fs::read_symlink("/proc/self/exe", none).parent_path();
    for (auto const* place : {"../share/vowelway/page", "../../../page/out"}) // installed; BUILD/NAME/src/cli
        if (holds_page(program / place)) return fs::weakly_canonical(program / place, none);
    throw InputError(worded("the page is not built"),
                     worded("run sh src/page/make.sh, or name its folder with --page"));
}

} // namespace vowelway::cli
