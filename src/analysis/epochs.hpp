// SPDX-License-Identifier: MIT
// The moments when the folds close. Private to the analysis layer.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <cstddef>
#include <span>
#include <vector>

namespace vowelway::analysis {

/// Prediction error of a plain prediction over the whole piece, signed so that its peaks point up: what
/// excites the tract, roughly.
/// `spectrum`, where it is known: the average of this sound's frames, which saves looking through it again.
std::vector<double> residual(std::span<double const> sound, Frequency rate,
                             PowerSpectrum const* spectrum = nullptr);

/// Where an error peaks upwards, in order: one in a period of `fo`.
std::vector<std::size_t> peaks_of_periods(std::vector<double> const& error, Frequency rate, Frequency fo);

/// The peaks of an error that stand out from their surroundings, 8 ms apart at least: the pulses of a creak.
std::vector<std::size_t> pulses_in(std::vector<double> const& error, Frequency rate);

/// A weight for each sample: the energy of the 1.3 ms before it, kept only in the closed phase, from just
/// after an epoch to `closed` of the way to the next (at most 12 ms). Without epochs, the energy alone.
/// Energy: stabilised weighted linear prediction (C. Magi, J. Pohjalainen, T. Backstrom & P. Alku, Speech
/// Communication 51, 2009, 401). Closed phase: M. Airaksinen, T. Raitio, B. Story & P. Alku, IEEE/ACM Trans.
/// Audio Speech Lang. Process. 22 (2014) 596.
std::vector<double> closed_phase_weights(std::span<double const> sound, Frequency rate,
                                         std::vector<std::size_t> const& epochs, double closed);

} // namespace vowelway::analysis
