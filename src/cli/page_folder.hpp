// SPDX-License-Identifier: MIT
// Where the page lies that src/page/make.sh builds.
#pragma once

#include <filesystem>
#include <string>

namespace vowelway::cli {

/// The folder with vowelway.html and folder/: `given`, else what VOWELWAY_PAGE names, else the one installed
/// beside the program, else that of the build the program belongs to. Throws InputError that says how to
/// build it.
std::filesystem::path page_folder(std::string const& given);

} // namespace vowelway::cli
