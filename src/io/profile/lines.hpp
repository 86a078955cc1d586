// SPDX-License-Identifier: MIT
// The lines of a profile as they are written. Private to the library.
#pragma once

#include "vowelway/io/profile/read_profile.hpp"

#include <array>
#include <optional>
#include <string>

namespace vowelway::io::profile {

/// With its deviation, even where that is only assumed.
std::string full(Resonance r);

std::array<std::optional<Resonance>, 4> all(Resonance const& r1, Resonance const& r2,
                                            std::optional<Resonance> const& r3,
                                            std::optional<Resonance> const& r4);

/// "fR1: 540 Hz ± 25, fR2: .., BR1: .."
std::string fields(std::array<std::optional<Resonance>, 4> const& rs, bool deviations_always);

/// An entry of the history, and a shift between probes and singing.
std::string line(Measurement const& m);
std::string line(ProbeShift const& shift);

} // namespace vowelway::io::profile
