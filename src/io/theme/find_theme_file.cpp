// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/theme/read_theme.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

Theme find_theme(std::string const& name_or_path) {
    if (auto const known = built_in_theme(name_or_path)) return *known;
    if (std::error_code unknown; !std::filesystem::exists(name_or_path, unknown)) {
        std::string names;
        for (auto const& name : theme_names()) names += (names.empty() ? "" : ", ") + name;
        throw InputError(
            worded("no theme \"{0}\": neither a file nor one that comes with the program", name_or_path),
            worded("name a theme file, or one of {0}", names));
    }
    return parse_theme(files::read_text(name_or_path, yaml::largest_file), name_or_path);
}

} // namespace vowelway::io
