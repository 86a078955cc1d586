// SPDX-License-Identifier: MIT
#include "vowelway/plan/zones.hpp"
#include "vowelway/core/wording.hpp"

#include <cmath>
#include <numbers>

namespace vowelway::plan {

namespace {
double normal_cdf(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }
} // namespace

std::string_view to_string(Zone zone) {
    switch (zone) {
    case Zone::open:
        return to_word("open");
    case Zone::turning:
        return to_word("turning");
    case Zone::close:
        return to_word("close");
    case Zone::meeting:
        return to_word("meeting");
    case Zone::above:
        return to_word("above");
    }
    return "";
}

ZoneReading read_zone(Pitch fo, Resonance const& r1) {
    double const z1 = (fo.frequency() - r1.centre) / r1.sd;       // the fundamental, in deviations above fR1
    double const z2 = (2.0 * fo.frequency() - r1.centre) / r1.sd; // the second harmonic
    ZoneReading reading;
    reading.p_turned = normal_cdf(z2);
    reading.p_above = normal_cdf(z1);
    reading.zone = std::abs(z1) <= 1   ? Zone::meeting
                   : z1 > 1            ? Zone::above
                   : std::abs(z2) <= 1 ? Zone::turning
                   : z2 > 1            ? Zone::close
                                       : Zone::open;
    return reading;
}

} // namespace vowelway::plan
