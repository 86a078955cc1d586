// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/technique/read_technique.hpp"
#include "yaml/tree.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace vowelway::io {

Technique find_technique(std::string const& name_or_path) {
    if (auto const known = built_in_technique(name_or_path)) return *known;
    if (std::error_code unknown; !std::filesystem::exists(name_or_path, unknown)) {
        throw InputError(
            worded("no technique \"{0}\": neither a file nor one that comes with the program", name_or_path),
            worded("name a technique file, or one of {0}",
                   fmt::format("{}", fmt::join(technique_names(), ", "))));
    }
    return parse_technique(files::read_text(name_or_path, yaml::largest_file), name_or_path);
}

} // namespace vowelway::io
