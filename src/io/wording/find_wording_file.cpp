// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/wording/read_wording.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

Wording find_wording(std::string const& code_or_path) {
    if (auto const known = built_in_wording(code_or_path)) return *known;
    if (std::error_code unknown; !std::filesystem::exists(code_or_path, unknown)) {
        std::string codes;
        for (auto const& code : wording_codes()) codes += (codes.empty() ? "" : ", ") + code;
        throw InputError(worded("\"{0}\" is no language that the program speaks", code_or_path),
                         worded("name one of {0}, or a file of your own", codes));
    }
    return parse_wording(files::read_text(code_or_path, yaml::largest_file), code_or_path);
}

} // namespace vowelway::io
