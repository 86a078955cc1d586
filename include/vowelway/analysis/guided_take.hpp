// SPDX-License-Identifier: MIT
// A vowel being recorded: when it begins and ends, and whether it should be said again.
// Threads: plain values; the class keeps what it was fed.
#pragma once

#include "vowelway/core/units.hpp"

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// The level of a piece of sound above 100 Hz, decibels below full scale; -120 for silence.
Decibels level_of(std::span<float const> samples, Frequency rate);

/// Feed it the microphone until it is done. It waits for a sound 10 dB above the room, and ends half a second
/// after the sound has ended, or after 3 s of it.
class GuidedTake {
  public:
    /// `room`: level of the pauses. Rate 16 kHz.
    explicit GuidedTake(Decibels room) : room_(room) {}

    void hear(std::span<float const> samples);
    bool done() const { return done_; }
    bool sounding() const { return begun_; }
    Decibels level() const { return level_; } ///< of the last tenth of a second

    /// Why it should be said again, with what to do; empty when it is good.
    std::string again() const;

    /// From a quarter second before the sound begins.
    std::vector<float> const& samples() const { return samples_; }

  private:
    void step(std::span<float const> tenth);

    Decibels room_, level_{-120};
    std::vector<float> samples_, waiting_;
    std::size_t quiet_ = 0, loud_ = 0, steps_ = 0; // tenths of a second
    bool begun_ = false, done_ = false;
};

} // namespace vowelway::analysis
