// SPDX-License-Identifier: MIT
// From what was heard to resonances per take and vowel: the whole way, without files.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/lesson_point.hpp"
#include "vowelway/analysis/listen.hpp"
#include "vowelway/analysis/processing_found.hpp"
#include "vowelway/analysis/quality.hpp"
#include "vowelway/analysis/tract_reading.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/core/singer.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::analysis {

/// Rate at which recordings are read for measuring: resonances up to 8 kHz.
inline constexpr Frequency measuring_rate = hertz(16000);

struct Recording {
    std::string name;             ///< for messages
    Heard heard;                  ///< at measuring_rate
    Frequency band = hertz(8000); ///< half the file's own rate, if lower
    std::vector<TimeSpan> clipped;
    std::vector<Vowel> cued; ///< one for each stretch, when the recording came with cues; else empty
};

struct MeasureRequest {
    Singer reference;                                       ///< the singer, or the average of the voice type
    std::vector<Vowel> vowels;                              ///< in the order they were spoken
    int repeat = 0;                                         ///< times the list is gone through; 0: found out
    std::optional<ProbeKind> kind;                          ///< nothing: recognised for each recording
    std::array<ProbeShifts, 4> shifts = published_shifts(); ///< in the order of ProbeKind
    std::vector<std::string>
        taught; ///< digests of the recordings that these shifts were learned from: none counts twice
    std::vector<Measurement>
        earlier; ///< the profile's history: a vowel first probed in a second way teaches too
};

/// Another order of the labels than the one listed.
struct OrderFound {
    std::vector<Vowel> listed,
        better;             ///< of the same length: what is listed as listed[i] sounds like better[i]
    double probability = 0; ///< of `better` against `listed`, 0..1
    bool sure = false;      ///< so sure that the takes whose labels differ give no number
};

/// One vowel said once.
struct Take {
    std::size_t recording = 0;
    TimeSpan span; ///< of the sound, in the recording
    SteadyPart steady;
    Decibels movement; ///< from the first third to the last, where less than a third is steady; else 0
    Vowel vowel;
    Excitation excitation;
    Expectation expected;
    FormantReading measured;
    TractReading tract;
    ProbeQuality quality;
    std::string refused; ///< empty: good for a number; else why not
    bool unlike = false; ///< refused because it does not sound like the vowel it is listed as, held still
    bool usable() const { return refused.empty(); }
};

/// All usable takes of a vowel with one kind of probe. Deviations: within and between takes; the shift's own
/// is not made smaller by repeating.
struct MeasuredVowel {
    Vowel vowel;
    ProbeKind kind = ProbeKind::whisper;
    int takes = 0;
    FormantReading measured;
    TractReading tract;
    std::array<std::optional<Cents>, 3> repeat_spread; ///< standard deviation between takes, from two on
    std::vector<Finding> findings;                     ///< of the repeats together
};

struct Measurements {
    std::vector<Take> takes;
    std::vector<MeasuredVowel> vowels;
    std::vector<KindOfRecording> kinds;                   ///< of each recording
    std::vector<std::vector<ProcessingFound>> processing; ///< of each recording
    std::array<ProbeShifts, 4> shifts; ///< as used: learned further where a vowel came in two kinds
    bool learned = false;              ///< this time
    std::vector<std::string>
        learned_from; ///< digests of the recordings it was learned from, 16 hexadecimal digits each
    std::optional<OrderFound> order; ///< of the vowels, where another than the listed one fits better
    std::vector<LessonPoint> lesson; ///< lesson_points: by measure() without a comparison
    Remarks remarks;
};

/// Throws InputError when nothing stands out, when the sounds cannot be matched to the list (it says what was
/// found with times), or when no take is usable.
Measurements measure(std::vector<Recording> const& recordings, MeasureRequest const& request);

} // namespace vowelway::analysis
