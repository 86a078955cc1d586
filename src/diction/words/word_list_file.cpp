// SPDX-License-Identifier: MIT
#include "vowelway/diction/word_list.hpp"
#include "vowelway/files/read.hpp"
#include "yaml/tree.hpp"

namespace vowelway::diction {

WordList read_word_list(std::string const& path) {
    return parse_word_list(files::read_text(path, yaml::largest_file), path);
}

} // namespace vowelway::diction
