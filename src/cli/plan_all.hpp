// SPDX-License-Identifier: MIT
// plan --all: every part that is sung, each by the voice it is for.
#pragma once

#include "cli/plan_request.hpp"
#include "vowelway/core/executor.hpp"
#include "vowelway/plan/choir.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

/// Who sings which part.
struct NamedVoice {
    std::string part; ///< the beginning of its name or of its voice's, or its number
    std::string singer;
};
/// "S=soprano, Alto=me.yaml, 3=tenor". Throws as bad_command_line does.
std::vector<NamedVoice> parse_voices(std::string const& list);

struct AllParts {
    plan::Choir choir;
    std::vector<io::ScoreOptions> read_with; ///< parallel to its parts: how each was read
};

/// The plans of all parts. Parts that `voices` does not name are sung by the average voice that name, order
/// and range speak for, with a remark; parts without words by those of a part they sing with. Without a
/// technique three parts or more are planned in the choral one, and a remark says so. Throws InputError.
AllParts plan_all(PlanOptions options, std::vector<NamedVoice> const& voices, Executor& executor);

} // namespace vowelway::cli
