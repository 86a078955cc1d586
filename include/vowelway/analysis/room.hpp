// SPDX-License-Identifier: MIT
// How a room rings after a sound, and how far that blurs a spectrum.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/core/units.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace vowelway::analysis {

/// A room as heard in a recording. `share` is the part of the steady sound's energy that comes from the
/// walls, 0..1: with a direct-to-reverberant ratio of d dB it is 1 / (1 + 10^(d/10)).
struct Room {
    Duration reverberation; ///< T60, over all frequencies
    double share = 0;

    /// So much noise, in a dry room, would show a resonance as uncertainly as endless noise in this one.
    /// The direct sound with a diffuse field has a power response whose relative covariance over a distance d
    /// of frequency is c / (1 + (2 pi d tau)^2) with c = 1 - (1 - share)^2 and tau = T60 / (6 ln 10) (M. R.
    /// Schroeder, J. Acoust. Soc. Am. 34, 1962, 1819, for the field alone; from memory). Its integral is c /
    /// (2 tau). The periodogram of T seconds of noise has relative variance 1 at each of the frequencies 1 /
    /// T apart, integral 1 / T. A resonance much wider than 1 / (2 pi tau) cannot tell them apart, so T = 2
    /// tau / c. A pitch `fo` shows the response at its harmonics only: fo times the sum of the covariance
    /// over them is c / (2 tau) coth(1 / (2 fo tau)), so T = 2 tau / c tanh(1 / (2 fo tau)).
    Duration like_noise_of(std::optional<Frequency> fo = std::nullopt) const;
};

/// How one sound died away, from its samples: the energy falls by the direct sound's part, then by 60 dB in
/// T60. `end` is where it sank towards the background, `quiet` the last sample before something else begins.
/// A share of 0: it stopped at once. Nothing where too little of the decay stands above the background or the
/// decay is no straight line down.
std::optional<Room> dying_away(std::span<float const> samples, Frequency rate, std::size_t begin,
                               std::size_t end, std::size_t quiet);

/// Several endings in one room: the median of the shares, with the median time of those that rang. A voice
/// that ends slowly passes for a ringing room: what is measured then claims less than it could.
std::optional<Room> room_of(std::vector<Room> endings);

} // namespace vowelway::analysis
