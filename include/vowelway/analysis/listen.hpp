// SPDX-License-Identifier: MIT
// Which parts of a recording sound, and which are pauses: in one pass, in bounded memory.
// Threads: any number at once, each with a Listener of its own.
#pragma once

#include "vowelway/analysis/room.hpp"
#include "vowelway/analysis/spectrum.hpp"

#include <optional>
#include <span>
#include <vector>

namespace vowelway::analysis {

/// What was heard. Levels are decibels below full scale, above 100 Hz.
struct Heard {
    std::vector<Sound> stretches;       ///< each one unbroken sound, with its time in the recording
    std::optional<PowerSpectrum> noise; ///< of the pauses; nothing when there are less than 0.1 s of them
    double pause_unrest = 0;  ///< of the most even pause (analysis/unrest.hpp): 0.4 to 0.7 for a room, more
                              ///< where the noise is suppressed; 0 where that cannot be told
    std::optional<Room> room; ///< from how the sounds die away; nothing when that cannot be told
    Decibels floor;           ///< level of the pauses, or of the softest tenth where there are none
    Decibels loudest{-120};   ///< level exceeded for half a second within a page
    Duration length;          ///< of the whole recording
    bool stands_out = false;  ///< something rises at least `least_contrast` above a background
};

inline constexpr Decibels least_contrast{6};
inline constexpr Decibels silence{-75};
inline constexpr Duration shortest_stretch = seconds(0.12); ///< shorter sounds are clicks
inline constexpr Duration longest_gap = seconds(0.10);      ///< a shorter gap does not end a stretch
inline constexpr Duration most_sound = seconds(180);        ///< kept in all; more is not a set of probes

/// Feed it the recording, then ask for what was heard. Works in pages of 30 s, cut where it is softest, so
/// the threshold follows slow changes of the background; memory: a page and the sounding parts.
class Listener {
  public:
    /// With cues the stretches are the cued spans, whatever their level. Cues in order, not overlapping.
    explicit Listener(Frequency rate, std::vector<TimeSpan> cues = {});

    /// Returns false when more than `most_sound` has been kept: the rest is not listened to.
    bool hear(std::span<float const> samples);
    Heard finish();
    bool overfull() const { return overfull_; }

  private:
    void turn_page(bool last);
    void keep(std::size_t from, std::size_t to);

    Frequency rate_;
    std::vector<TimeSpan> cues_;
    std::vector<float> page_;
    std::size_t page_start_ = 0; // in samples of the recording
    std::size_t kept_ = 0;
    bool overfull_ = false;
    Heard heard_;
    std::vector<Room> endings_;
    std::vector<int> histogram_; // of frame levels, a half decibel each
};

} // namespace vowelway::analysis
