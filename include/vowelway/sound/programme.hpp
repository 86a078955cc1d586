// SPDX-License-Identifier: MIT
// What sounds when: a list of things to hear, and the stream of samples it makes. Nothing is kept but what
// sounds at the moment, so an hour takes the memory of a second.
// Threads: a programme and a part belong to one thread at a time; different ones do not touch each other.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/units.hpp"

#include <functional>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace vowelway::sound {

/// Of every stream. The filters of BS.1770 are published for this rate.
inline constexpr Frequency sample_rate = hertz(48000);

/// One thing that sounds. Its samples are pressures over that of 0 dB (20 µPa), 1 m from the mouth in the
/// open, so that levels are the planner's. The same thing always makes the same samples.
class Part {
  public:
    virtual ~Part() = default;
    /// Adds its next samples.
    virtual void add(std::span<double> block) = 0;
};

struct Item {
    std::string what; ///< for the list of what is heard; empty: not worth a line
    Duration start, length;
    std::function<std::unique_ptr<Part>()> make; ///< a fresh one, at its beginning
    Decibels level{0};                           ///< change of its own level
    Duration fade = seconds(0.015);              ///< smooth rise and fall at its ends, within `length`
};

struct Programme {
    std::vector<Item> items; ///< in any order
    Remarks remarks;
};

/// To the end of what ends last.
Duration length_of(Programme const& programme);

/// Called with successive samples, 1 being full scale.
using Sink = std::function<void(std::span<float const>)>;

/// Plays it from its beginning to its end, every sample times `gain`.
void play(Programme const& programme, double gain, Sink const& sink);

} // namespace vowelway::sound
