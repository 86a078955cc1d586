// SPDX-License-Identifier: MIT
// The single values of a profile: resonances with deviations, lengths, days. Private to the library.
#pragma once

#include "vowelway/core/profile.hpp"
#include "vowelway/core/resonance.hpp"
#include "yaml/tree.hpp"

#include <optional>
#include <string>

namespace vowelway::io::profile {

/// "300 Hz ± 15", "F5 +20c ± 30c", "540": a resonance fRk within what voices have. A missing deviation is
/// the default of the method, and marked as assumed.
Resonance resonance(yaml::Node const& node, int k, Tuning const& tuning, Method method);

/// fR1.. (and BR1..) of a map that holds a vowel; checks that they rise. The place of a missing one is the
/// map's.
struct Resonances {
    Resonance r1, r2;
    std::optional<Resonance> r3, r4;
};
Resonances resonances(yaml::Node const& map, std::string const& vowel, Tuning const& tuning, Method method);

/// "210 Hz ± 60": a shift, which may be negative; the deviation must be there.
ShiftOfResonance shift(yaml::Node const& node);

Frequency plain_frequency(yaml::Node const& node, std::string const& what, double low, double high,
                          Tuning const& tuning);
Length tract_length(yaml::Node const& node);
std::string day(yaml::Node const& node); ///< ISO 8601
Method method(yaml::Node const& node);
bool truth(yaml::Node const& node, std::string_view what);
int count(yaml::Node const& node, std::string_view what, int most);
Vowel vowel(yaml::Node const& key);

/// How a frequency is written: "300 Hz", "612.5 Hz".
std::string written(Frequency f);
/// "300 Hz ± 15"; no deviation when it was assumed.
std::string written(Resonance const& r);

} // namespace vowelway::io::profile
