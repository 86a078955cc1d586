// SPDX-License-Identifier: MIT
// The formants of a steady piece of sound: the estimator.
// A formant F is a peak of the radiated sound; what it tells of the tract (fR) is tract_reading.hpp's.
// Threads: plain values; the functions keep nothing between calls.
#pragma once

#include "vowelway/analysis/room.hpp"
#include "vowelway/analysis/spectrum.hpp"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace vowelway::analysis {

/// What excites the tract in a recording meant to show its resonances.
enum class ProbeKind {
    whisper, ///< soft noise
    creak,   ///< separate pulses, about 15 to 70 in a second
    sung,    ///< a steady low pitch
    spoken   ///< a voice whose pitch moves, as in speech
};
/// The folds swing: there is a pitch.
constexpr bool is_voiced(ProbeKind kind) { return kind == ProbeKind::sung || kind == ProbeKind::spoken; }
/// The name, as reports give it and --probe takes it.
std::string_view to_string(ProbeKind kind);
std::optional<ProbeKind> parse_probe_kind(std::string_view name);

/// Where a formant of the vowel is likely to lie: log-normal around `centre`.
struct Expected {
    Frequency centre;
    double spread = 0.15; ///< standard deviation of ln F
};
/// What is known of a vowel before it is measured. It decides which pole is which formant; it does not
/// pull the value.
struct Expectation {
    std::array<Expected, 3> formants; ///< F1 < F2 < F3
    Frequency spacing;                ///< mean distance of the formants, c / 2L: how many lie below a ceiling
};

/// A formant found. `sd` holds the random error and that of the model.
struct Formant {
    Frequency centre;
    Frequency sd;
    Frequency bandwidth; ///< twice as uncertain as the centre, in proportion
};

/// One way of looking at the sound: prediction of `order` on what lies below `ceiling`.
struct LookSetting {
    Frequency ceiling;
    int order = 12;
};

struct FormantReading {
    std::array<std::optional<Formant>, 3> formants; ///< F1..F3; nothing where no pole stood out
    int settings = 0;                               ///< looks that contributed to F1 and F2
    int frames = 0;                                 ///< of spectrum_frame, half overlapping
    double whiteness = 1;                           ///< of what prediction leaves of a whisper, 0..1
    bool noise_in_front = false; ///< a whisper lacks what a tract shut behind its noise takes up
    std::optional<Frequency> fo; ///< pitch or pulse rate used (all but whisper)
};

struct FormantOptions {
    ProbeKind kind = ProbeKind::whisper;
    std::optional<Frequency> fo;           ///< pitch of a voiced probe: the harmonics' share of the error
    std::optional<Frequency> band_limit;   ///< nothing but noise above it in the recording
    std::span<PowerSpectrum const> blocks; ///< block_spectra of the sound, if known already (whisper)
    PowerSpectrum const* noise = nullptr;  ///< of the pauses, same rate: taken off a whisper's spectrum
    std::optional<Room> room;              ///< widens the deviation
    std::vector<LookSetting> settings;     ///< empty: usual_settings
};

/// Ceilings from three and a half to five and a half formants below `top`, four orders each: five ceilings
/// for a whisper; three for pulses, where each costs a sound at a rate of its own and two more tell nothing
/// more.
std::vector<LookSetting> usual_settings(Expectation const& expectation, Frequency top, ProbeKind kind);

/// Shortest piece that is read; a tenth of a second has five frames.
inline constexpr Duration shortest_steady = seconds(0.1);

/// Whisper: linear prediction on the autocorrelation averaged over the frames. Creak and voice: weighted
/// prediction on the samples. Over all settings the poles are matched to the expectation; the answer is the
/// median, its deviation from the spread over settings and over blocks of the sound, the Cramer-Rao bound
/// and (voice) the spacing of the harmonics. `steady` shorter than `shortest_steady` gives an empty reading.
FormantReading read_formants(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                             FormantOptions const& options);

} // namespace vowelway::analysis
