// SPDX-License-Identifier: MIT
#include "vowelway/files/read.hpp"
#include "vowelway/io/plan/read_targets.hpp"

namespace vowelway::io {

std::vector<PlanTarget> read_plan_targets(std::filesystem::path const& path) {
    return parse_plan_targets(files::read_text(path, largest_plan), path.string());
}

} // namespace vowelway::io
