// SPDX-License-Identifier: MIT
// The JSON of a measurement before it is text: that of a check has more. Private to the layer.
#pragma once

#include "report/json_parts.hpp"
#include "vowelway/analysis/measure.hpp"

namespace vowelway::report {

Json measurement_parts(analysis::Measurements const& measurements, std::vector<std::string> const& files);

} // namespace vowelway::report
