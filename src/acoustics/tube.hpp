// SPDX-License-Identifier: MIT
// The mathematics of a row of tubes, on plain numbers in cm, s, g. Private to the library.
#pragma once

#include "vowelway/acoustics/tract.hpp"

#include <complex>
#include <optional>
#include <vector>

namespace vowelway::acoustics::tube {

using Complex = std::complex<double>;

inline constexpr double c = 35000, rho = 0.00114; // cm/s, g/cm³

/// Sections from glottis to lips.
struct Tube {
    std::vector<double> length, area; // cm, cm²
    TractLoss loss = TractLoss::closed_glottis;
    std::size_t size() const { return area.size(); }
};

/// Throws InputError unless the sections are in the range of AreaFunction.
Tube checked(AreaFunction const& tract, TractLoss loss);

/// A pole s = -pi B + j 2 pi F.
double frequency_of(Complex pole);
double bandwidth_of(Complex pole);
Complex pole_at(double frequency, double bandwidth);

/// A - C Z of the whole chain, whose zeros are the poles of lip flow over glottal flow.
Complex denominator(Tube const& t, Complex s);

/// n-th resonance (from 1) of the same tube without losses: hard walls, the load at the lips a mere inertia.
/// Found by its phase, which only grows with frequency, so none is ever missed.
double lossless_resonance(Tube const& t, int n);
/// Which of those resonances lies at f: n there, n +- 1/2 half a turn of phase away.
double mode_at(Tube const& t, double f);

/// Follows the pole from a guess, keeping off those already known; nothing if it does not settle.
std::optional<Complex> find_pole(Tube const& t, Complex guess, std::vector<Complex> const& known = {});
/// The first `count` poles, from low to high; fewer if losses have swallowed one.
std::vector<Complex> first_poles(Tube const& t, int count);
/// All whose lossless resonance lies below `up_to`.
std::vector<Complex> poles_below(Tube const& t, double up_to);

Complex input_impedance(Tube const& t, double f);

/// [P U]lipward = [a b; c d] [P U]glottisward over the sections `from` .. `to` - 1.
struct TwoPort {
    Complex a, b, c, d;
};
TwoPort two_port(Tube const& t, Complex s, std::size_t from, std::size_t to);
/// What the lips feel of the air outside.
Complex radiation_load(Tube const& t, Complex s);

/// d ln F / d ln area and d ln F / d ln length of every section at a pole.
void sensitivities(Tube const& t, Complex pole, std::vector<double>& by_area, std::vector<double>* by_length);

} // namespace vowelway::acoustics::tube
