// SPDX-License-Identifier: MIT
// Who does the work where nobody was lent. Private to the layer.
#pragma once

#include "vowelway/plan/means.hpp"

namespace vowelway::plan {

inline Executor& executor_of(Means const& means) {
    static InlineExecutor inline_; // has no state
    return means.executor ? *means.executor : inline_;
}

} // namespace vowelway::plan
