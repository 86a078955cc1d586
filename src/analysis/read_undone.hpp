// SPDX-License-Identifier: MIT
// A take read after what phone and desk did to it was undone. Private to the analysis layer.
#pragma once

#include "analysis/looks.hpp"
#include "analysis/processing.hpp"

#include <span>
#include <string>
#include <vector>

namespace vowelway::analysis {

struct ReadUndone {
    Looks looks;
    FormantReading reading;
};

/// As read_looks(look_usually()), from the undone sound, the deviations widened by what undoing leaves open.
ReadUndone read_undone(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                       FormantOptions const& options, Processing const& processing);

/// Why a reading is not to be trusted under this processing; else empty.
std::string why_not_heard(FormantReading const& reading, Processing const& processing);

/// In words.
std::vector<ProcessingFound> told(Processing const& processing);
ProcessingFound told_of_limited_voice();

} // namespace vowelway::analysis
