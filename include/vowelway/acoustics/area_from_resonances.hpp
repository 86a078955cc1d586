// SPDX-License-Identifier: MIT
// From measured resonances back to a shape of the tract that has them.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/acoustics/tract.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/vowel.hpp"

#include <array>
#include <optional>
#include <span>
#include <string>

namespace vowelway::acoustics {

/// The resonances that a shape should have.
struct ResonanceTargets {
    Frequency r1, r2;
    std::optional<Frequency> r3;
};

/// A likely tract with these resonances: ln A(x) = ln A0 + sum of a_m cos(m pi x/L), x from the glottis,
/// m = 1..8, reached by the smallest steps from the mean of published area functions (Story, Titze & Hoffman
/// 1996; Fant 1960), or a quarter of the way from it to that of the vowel; each term is measured by its
/// spread over those vowels. Near a uniform tube the odd terms a1, a3, a5 move fR1, fR2, fR3 alone and the
/// even ones nothing (Schroeder 1967, Mermelstein 1967). One of many tracts with these resonances: they do
/// not tell more.
struct FittedTract {
    AreaFunction tract;
    std::array<double, 8> series{}; ///< a_1 .. a_8
    Length length;                  ///< of the tract found
    double residual = 0;            ///< largest relative error of a resonance
    int steps = 0;                  ///< of Newton's method
    std::string objection;          ///< why this is no human tract; empty: it may be one
    bool human() const { return objection.empty(); }
};

/// Damped Newton's method on the logarithms of the resonances, with the exact derivatives of sensitivity().
/// `length`, glottis to lips, is kept; when it is no more than an estimate, `length_sd` (relative) lets it
/// give way as far as the resonances ask. `like`: the vowel that has these resonances. A0 = 2.1 cm² for 17
/// cm, growing with the square of the length. An objection says which resonances cannot be reached, or what
/// no human tract has: a cross-section below 0.05 or above 20 cm² (for 17 cm). Errors  InputError unless 0 <
/// fR1 < fR2 < fR3 and the length is 5..25 cm.
FittedTract area_from_resonances(ResonanceTargets const& targets, Length length, double length_sd = 0,
                                 std::optional<Vowel> const& like = {},
                                 TractLoss loss = TractLoss::closed_glottis);

/// Length of a tract from its resonances over several vowels: for each vowel
///   L = c/(4 P),  P = 229 Hz + 0.030 F1 + 0.082 F2/3 + 0.124 F3/5 + 0.354 F4/7
/// (Lammert & Narayanan 2015, PLoS ONE 10, e0132193; coefficients from memory), the median taken. Where fR4
/// or fR3 is not known, its share is taken over by those that are: from fR1 and fR2 alone the length is no
/// better than 2 cm. Errors  std::invalid_argument when there is no vowel.
Length estimate_tract_length(std::span<VowelResonances const> vowels);

} // namespace vowelway::acoustics
