// SPDX-License-Identifier: MIT
// What phone and desk did to each recording of a measurement. Private to the analysis layer.
#pragma once

#include "analysis/processing.hpp"

#include <optional>
#include <vector>

namespace vowelway::analysis {

/// The reflection of each recording. What excites its takes is recognised again without it.
std::vector<std::optional<Reflection>> settle_reflections(std::vector<Take>& takes,
                                                          std::vector<Recording> const& recordings,
                                                          std::vector<HeardTake> const& heard);

/// Everything, when the kinds are known; said in the measurements, once for each recording.
std::vector<Processing> settle_processing(Measurements& measurements,
                                          std::vector<Recording> const& recordings,
                                          std::vector<HeardTake> const& heard,
                                          std::vector<std::optional<Reflection>> const& reflections);

/// Of voices (looks_limited), when their takes are read; said likewise.
void tell_limited_voices(Measurements& measurements, std::vector<Recording> const& recordings);

} // namespace vowelway::analysis
