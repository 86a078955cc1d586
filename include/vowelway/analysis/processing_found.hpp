// SPDX-License-Identifier: MIT
// What a phone, a program or a desk did to a recording before it was saved.
// Threads: plain values; the function keeps nothing between calls.
#pragma once

#include <string>
#include <string_view>

namespace vowelway::analysis {

struct ProcessingFound {
    enum class Kind {
        reflection, ///< the sound came a second time, from a desk or a wall nearby; undone
        low_cut,    ///< the low frequencies were cut; undone as far as 20 dB
        suppressed, ///< the pauses are not even: noise suppression was at work; the deviations are wider for
                    ///< it
        levelled,   ///< the peaks are all alike, as after a limiter or a fast gain control (or of a very even
                    ///< creak): the deviations are wider for it
        even,       ///< a whisper's level is as even as a gain control leaves it, and as breath seldom is
        limited     ///< bandwidths of a voice scatter as a limiter makes them (or a reflection that was not
                    ///< found): the deviations are wider for it
    };
    Kind kind;
    std::string says, tries;
};
std::string_view to_string(ProcessingFound::Kind kind);

} // namespace vowelway::analysis
