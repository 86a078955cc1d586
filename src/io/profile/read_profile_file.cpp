// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "yaml/tree.hpp"

namespace vowelway::io {

Profile read_whole_profile(std::filesystem::path const& path) {
    return parse_profile(files::read_text(path, yaml::largest_file), path.string());
}

Singer read_profile(std::filesystem::path const& path) { return read_whole_profile(path).singer; }

} // namespace vowelway::io
