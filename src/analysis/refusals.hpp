// SPDX-License-Identifier: MIT
// Why a take gives no number. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/measure.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// Empty: nothing speaks against it. Looks at the take alone, once it is measured and judged.
struct Refusal {
    std::string why;
    bool unlike = false; ///< not for noise, level or length, but because it is not that vowel
};
Refusal why_refused(Take const& take, Recording const& recording);

/// Where most takes of a recording are unlike their vowels, it is speech, music or another list: the few that
/// happen to pass are refused too.
void refuse_with_the_others(std::vector<Take>& takes, std::size_t recordings);

} // namespace vowelway::analysis
