// SPDX-License-Identifier: MIT
// The vocal tract as a row of tubes: its resonances, and how it loads the vocal folds.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/units.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace vowelway::acoustics {

/// A short cylindrical piece of the tract.
struct TubeSection {
    Length length;
    Area area;
};

/// Cross-sections from just above the glottis to the lips. Range  1..512 sections, each 0.01..30 cm long and
/// 0.001..100 cm² wide, 100 cm in all; functions that take one throw InputError naming the section otherwise.
using AreaFunction = std::vector<TubeSection>;

Length length_of(AreaFunction const& tract);

/// What the tract loses. The bandwidths are those of a uniform tube of 17.5 cm and 3 cm² for fR1 and fR3.
enum class TractLoss {
    none,           ///< hard walls, ideally open mouth: 0, 0 Hz. For comparison with theory
    radiation,      ///< hard walls, sound leaves the mouth: 2, 46 Hz
    closed_glottis, ///< yielding walls, friction and heat (Sondhi & Schroeter 1987): 34, 98 Hz. Our default
    voiced ///< the same with the friction term of Story, Laukkanen & Titze 2000: 75, 133 Hz, near the average
           ///< over the glottal cycle
};
std::string_view to_string(TractLoss loss);
std::optional<TractLoss> parse_tract_loss(std::string_view name);

struct TractResonance {
    Frequency centre;
    Frequency bandwidth; ///< half-power width
};

/// The poles of the flow at the lips over the flow at the closed glottis, from low to high, below `up_to`.
/// Accuracy of the solution 0.01 Hz. The wall's own resonance at 15 Hz is not one of them.
/// Source  chain matrices of Sondhi & Schroeter 1987 (IEEE Trans. ASSP 35, 955), radiation load of Flanagan
/// 1972:
///         R = 128 rho c/(9 pi² A) parallel to L = 8 rho/(3 pi √(pi A)); c = 350 m/s, rho = 1.14 kg/m³.
std::vector<TractResonance> resonances(AreaFunction const& tract, TractLoss loss = TractLoss::closed_glottis,
                                       Frequency up_to = hertz(5000));

/// Acoustic resistance or reactance, dyn s/cm⁵ (= 1e5 Pa s/m³).
using AcousticOhms = Scale<struct AcousticOhmsKind>;
struct AcousticImpedance {
    AcousticOhms resistance;
    AcousticOhms reactance; ///< + inertive, - compliant (time as e^{+jwt})
};

/// What the vocal folds feel: pressure over flow just above the glottis. Range  f > 0.
AcousticImpedance input_impedance(AreaFunction const& tract, Frequency f,
                                  TractLoss loss = TractLoss::closed_glottis);

struct Band {
    Frequency from, to;
};
/// Where the load is compliant, and harmonics of the voice find little help: bands that begin near each fR.
/// From 60 Hz, below which only the wall resonates, to `up_to`; a band still open there ends there. Bands and
/// gaps narrower than 4 Hz may be overlooked; their edges are exact to 0.1 Hz.
std::vector<Band> compliant_bands(AreaFunction const& tract, TractLoss loss = TractLoss::closed_glottis,
                                  Frequency up_to = hertz(5000));

/// How a resonance answers to small changes: relative change of its frequency for a relative change of each
/// section's area, dF/F = sum of area[i] dA_i/A_i, and of each section's length, likewise.
struct Sensitivity {
    std::vector<double> area, length;
};
/// Exact for the tract with its losses (derivative of the pole); for a lossless one it is (KE - PE)/(KE + PE)
/// of Fant & Pauli 1975. `number` counts from 1. Errors  std::out_of_range if there is no such resonance
/// below 8 kHz.
Sensitivity sensitivity(AreaFunction const& tract, int number, TractLoss loss = TractLoss::closed_glottis);

} // namespace vowelway::acoustics
