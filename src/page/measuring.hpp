// SPDX-License-Identifier: MIT
// A recording measured.
#pragma once

#include "page/request.hpp"

#include <span>
#include <string>

namespace vowelway::page {

/// The measurement as JSON; samples at 16 kHz, one channel. With request["into"] also the profile that it
/// goes into. Throws InputError.
std::string measurement_of(Json const& request, std::span<float const> samples);

} // namespace vowelway::page
