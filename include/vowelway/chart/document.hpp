// SPDX-License-Identifier: MIT
// What drawing gives: bytes, to be saved or sent by whoever asked.
// Threads: plain values.
#pragma once

#include <string>

namespace vowelway::chart {

/// One file of a chart.
struct Document {
    std::string
        suffix; ///< "-1", "-2", .. of several pages in files of their own; empty when it is the only one
    std::string bytes;
};

} // namespace vowelway::chart
