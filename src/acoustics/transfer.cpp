// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/transfer.hpp"

#include "vowelway/acoustics/source.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::acoustics {

Frequency quarter_wave(Length tract) { return hertz(speed_of_sound_m_s / (4 * tract.value())); }

Length tract_of(Frequency quarter) {
    return speed_of_sound_m_s / (4 * quarter.value()) * boost::units::si::metres;
}

namespace {

ResonanceSet complete(std::array<std::optional<Resonance>, 4> const& known, Frequency quarter,
                      BandwidthModel model) {
    ResonanceSet out;
    double const beyond = std::max(known[1]->centre.value() / quarter.value() - 3, 0.0);
    double const guess[] = {4.83 + 0.51 * beyond, 6.91 + 0.29 * beyond};
    for (int k = 0; k < 4; ++k) {
        auto& peak = out.peaks[k];
        // A guess stays above the resonance below it, which a very short tract of another's profile may
        // cross.
        peak.centre = known[k] ? known[k]->centre
                               : std::max(guess[k - 2] * quarter, out.peaks[k - 1].centre + 0.6 * quarter);
        peak.bandwidth =
            known[k] && known[k]->bandwidth ? *known[k]->bandwidth : bandwidth(model, peak.centre);
    }
    return out;
}

} // namespace

ResonanceSet resonance_set(VowelResonances const& v, Frequency quarter, BandwidthModel model) {
    return complete({v.r1, v.r2, v.r3, v.r4}, quarter, model);
}

ResonanceSet resonance_set(Frequency r1, Frequency r2, Frequency quarter, BandwidthModel model) {
    Resonance first, second;
    first.centre = r1;
    second.centre = r2;
    return complete({first, second, std::nullopt, std::nullopt}, quarter, model);
}

Decibels resonance_gain(ResonancePeak const& peak, Frequency f) {
    double const centre = peak.centre.value(), half = peak.bandwidth.value() / 2, hz = f.value();
    return {20 * std::log10((centre * centre + half * half) /
                            (std::hypot(hz - centre, half) * std::hypot(hz + centre, half)))};
}

Decibels tract_gain(ResonanceSet const& shape, Frequency f, Frequency quarter) {
    auto gain = higher_pole_correction(4, f, quarter);
    for (auto const& peak : shape.peaks) gain = gain + resonance_gain(peak, f);
    return gain;
}

} // namespace vowelway::acoustics
