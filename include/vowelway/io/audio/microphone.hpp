// SPDX-License-Identifier: MIT
// Sound from a microphone, through ALSA (which PipeWire and PulseAudio serve too).
// Threads: one at a time.
#pragma once

#include "vowelway/core/units.hpp"

#include <memory>
#include <span>
#include <string>

namespace vowelway::io {

/// Samples of a microphone, as a stream of one channel.
class Microphone {
  public:
    /// The library is loaded now. `device` is a name of ALSA, "default" the one that the system uses. Throws
    /// InputError where there is no such library or no such device, with what to do instead.
    Microphone(std::string const& device, Frequency rate);
    ~Microphone();
    Microphone(Microphone const&) = delete;
    Microphone& operator=(Microphone const&) = delete;

    /// Fills all of it (-1..1), waiting as long as that takes. What was lost because nobody read is left
    /// out. Throws InputError when the device is gone.
    void read(std::span<float> samples);

  private:
    struct Open;
    std::unique_ptr<Open> open_;
};

} // namespace vowelway::io
