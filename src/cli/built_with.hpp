// SPDX-License-Identifier: MIT
// The libraries the program was built with; the table is made by cmake/bill_of_materials.cmake.
#pragma once

#include <span>

namespace vowelway::cli {
struct Material {
    char const *name, *version, *licence, *use;
};
std::span<Material const> built_with();
} // namespace vowelway::cli
