// SPDX-License-Identifier: MIT
#include "vowelway/analysis/excitation.hpp"

#include "analysis/epochs.hpp"
#include "analysis/filter.hpp"
#include "analysis/periodicity.hpp"
#include "analysis/pitch_path.hpp"
#include "analysis/resample.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr Frequency looked_at = hertz(16000);
constexpr double shortest_of_error = 1.0 / 1000, shortest_of_sound = 1.0 / 400; // s
constexpr double odd_rise = 4;                                                  // dB
constexpr double level_block = 0.2;  // s: slower changes of level do not count as peaks
constexpr double noise_weight = 1.5; // times the noise of the pauses is taken for noise
constexpr double least_noise = 1e-3; // of the sound's power: less needs no weighting
constexpr std::size_t half_taps = 32, grid = 128;
constexpr double surest = 7;                            // ln of odds, no more from one look
constexpr double followed = 0.6, surely_followed = 0.8; // share of the looks of a pitch's path
constexpr double same_pitch = 0.12;                     // in proportion
constexpr double most_drift = 1;                        // semitones

double odds(double value, double limit, double step) {
    return std::clamp((value - limit) / step, -surest, surest);
}
/// ln of the probability with these odds.
double ln_probability(double odds) { return -std::log1p(std::exp(-odds)); }

/// The error where it stands above the noise of the pauses: a filter of linear phase whose gain is the
/// share of the sound in each band.
std::vector<double> above_noise(std::vector<double> error, PowerSpectrum const& sound,
                                PowerSpectrum const& noise) {
    std::array<double, grid / 2 + 1> gain{};
    bool needed = false;
    for (std::size_t k = 0; k <= grid / 2; ++k) {
        auto const at = looked_at * (static_cast<double>(k) / grid);
        auto const low = std::max(at - hertz(90), hertz(0)), high = at + hertz(90);
        double const all = sound.mean(low, high), still = noise.mean(low, high);
        gain[k] = all > 0 && at >= hertz(100) ? std::max(0.0, 1 - noise_weight * still / all) : 0;
        needed = needed || (at >= hertz(100) && still > least_noise * all);
    }
    if (!needed) return error;
    static auto const cosines = [] {
        std::array<double, grid> all{};
        for (std::size_t k = 0; k < grid; ++k)
            all[k] = std::cos(2 * std::numbers::pi * static_cast<double>(k) / grid);
        return all;
    }();
    std::array<double, half_taps + 1> half{};
    for (std::size_t t = 0; t <= half_taps; ++t) {
        double sum = 0;
        for (std::size_t k = 0; k <= grid / 2; ++k)
            sum += (k == 0 || k == grid / 2 ? 1 : 2) * gain[k] * cosines[k * t % grid];
        half[t] =
            sum / grid * (0.5 + 0.5 * std::cos(std::numbers::pi * static_cast<double>(t) / (half_taps + 1)));
    }
    std::vector<double> kept(error.size() > 2 * half_taps ? error.size() - 2 * half_taps : 0, 0.0);
    filter_even(error, half, kept);
    return kept;
}

/// Fourth moment over the square of the second, in blocks so that slow changes of level do not count.
double peakedness_of(std::vector<double> const& e, double rate) {
    auto const block = std::min(e.size(), static_cast<std::size_t>(level_block * rate));
    double sum = 0;
    std::size_t count = 0;
    for (std::size_t from = 0; block > 0 && from + block <= e.size(); from += block) {
        double second = 0, fourth = 0;
        for (std::size_t n = from; n < from + block; ++n)
            second += e[n] * e[n], fourth += e[n] * e[n] * e[n] * e[n];
        if (second <= 0) continue;
        sum += fourth / (second * second) * static_cast<double>(block);
        ++count;
    }
    return count > 0 ? sum / static_cast<double>(count) : 3;
}

/// Whether there is sound at 1, 3, 5 and 7 times `pitch`, above what lies halfway to the next multiples: if
/// not, the true pitch is twice as high.
bool odd_harmonics(PowerSpectrum const& spectrum, double pitch) {
    std::array<double, 4> rise{};
    for (std::size_t i = 0; i < rise.size(); ++i) {
        auto const k = static_cast<double>(2 * i + 1);
        auto const around = [&](double multiple) {
            return spectrum.mean(hertz(pitch * (multiple - 0.12)), hertz(pitch * (multiple + 0.12)));
        };
        double const between = std::sqrt(around(k - 0.5) * around(k + 0.5));
        rise[i] = 10 * std::log10((around(k) + 1e-16) / (between + 1e-16));
    }
    std::sort(rise.begin(), rise.end());
    return rise[2] > odd_rise;
}

std::optional<Frequency> pulse_rate(std::vector<double> const& error, Frequency rate) {
    auto const epochs = pulses_in(error, rate);
    if (epochs.size() < 3) return std::nullopt;
    return static_cast<double>(epochs.size() - 1) * rate /
           static_cast<double>(epochs.back() - epochs.front());
}

/// Whether this pitch, or a half or a third of it, is the one that was followed: of octaves others decide.
bool as_followed(double pitch, PitchPath const& path) {
    double const times = pitch / in_hertz(path.pitch), whole = std::round(times);
    return whole >= 1 && whole <= 3 && std::abs(times / whole - 1) < same_pitch;
}

std::optional<Frequency> pitch_of(Periodicity const& p, PitchPath const& path, std::span<float const> steady,
                                  Frequency rate, PowerSpectrum const* spectrum) {
    if (p.period <= 0) return std::nullopt;
    double pitch = in_hertz(looked_at) / p.period; // what is taken for a usable pitch is looked at again
    bool const moves =
        std::abs(path.movement.drift) > most_drift; // its harmonics blur, and so do longer looks
    if (path.share >= followed && (moves || !as_followed(pitch, path))) return path.pitch;
    if (p.agreement > 0.7 && std::abs(p.movement.drift) > most_drift) return hertz(pitch);
    for (int look = 0; look < 2 && pitch > 120 && pitch <= in_hertz(highest_sung_probe) * 1.2; ++look) {
        if (odd_harmonics(spectrum ? *spectrum : average_spectrum(steady, rate), pitch)) break;
        pitch *= 2;
    }
    return hertz(pitch);
}

/// ln of odds that there is a pitch, that there are pulses, and that the pitch moves as in speech. The
/// limits are our choice.
struct Odds {
    double voice, pulses, moving;
};

Odds odds_of(Periodicity const& of_error, Periodicity const& of_sound, PitchPath const& path,
             double peakedness) {
    Odds o{};
    o.voice =
        std::max({odds(of_error.likeness, 0.45, 0.04), odds(of_sound.likeness, 0.82, 0.03),
                  odds(of_sound.lasting, 0.60, 0.04), odds(path.share, followed, 0.05),
                  of_error.likeness > 0.2 && of_error.each.size() >= 4 ? odds(of_error.agreement, 0.60, 0.06)
                                                                       : -surest});
    o.pulses = odds(peakedness, 4.4, 0.25);
    auto const& pitch = of_error.agreement >= of_sound.agreement ? of_error : of_sound;
    bool const by_path = path.share >= surely_followed;
    double const drift = by_path ? path.movement.drift : pitch.movement.drift,
                 swing = by_path ? path.movement.swing : pitch.movement.swing;
    o.moving = std::clamp(std::max((std::abs(drift) - 0.75) / 0.2, (swing - 0.8) / 0.2), -3.0, 3.0);
    return o;
}

void weigh_odds(Excitation& found, Odds const& o) {
    found.evidence = {ln_probability(-o.voice) + ln_probability(-o.pulses),
                      ln_probability(-o.voice) + ln_probability(o.pulses),
                      ln_probability(o.voice) + ln_probability(-o.moving),
                      ln_probability(o.voice) + ln_probability(o.moving)};
    auto const best = std::max_element(found.evidence.begin(), found.evidence.end());
    found.kind = static_cast<ProbeKind>(best - found.evidence.begin());
    found.probability = std::exp(*best); // the four add up to 1
}

} // namespace

Excitation recognise_excitation(std::span<float const> steady, Frequency rate, PowerSpectrum const* spectrum,
                                PowerSpectrum const* noise) {
    Excitation found;
    auto const sound = resample(steady, rate, looked_at);
    auto const* const known = rate == looked_at ? spectrum : nullptr; // of the sound as it is looked at
    auto error = residual(sound.samples, sound.rate, known);
    auto const of_error = periodicity_of(error, sound.rate, shortest_of_error, false);
    if (known && noise && noise->power.size() == known->power.size())
        error = above_noise(std::move(error), *known, *noise);
    found.peakedness = peakedness_of(error, in_hertz(sound.rate));
    auto const of_sound = periodicity_of(sound.samples, sound.rate, shortest_of_sound, true);
    if (of_error.each.empty()) return found;
    found.regularity = std::max(of_error.likeness, std::min(of_sound.likeness, of_sound.lasting));
    auto const path = follow_pitch(error, sound.rate);
    weigh_odds(found, odds_of(of_error, of_sound, path, found.peakedness));
    // An error that repeats every second period only, while the sound repeats every one, is an octave low.
    bool const octave_low = of_sound.likeness > 0.9 && of_sound.agreement > 0.7 &&
                            std::abs(of_error.period / (2 * of_sound.period) - 1) < 0.06;
    bool const error_repeats =
        !octave_low && (of_error.likeness >= 0.45 || of_error.agreement >= of_sound.agreement);
    auto const& pitch = error_repeats ? of_error : of_sound;
    found.drift = path.share >= surely_followed ? path.movement.drift : pitch.movement.drift;
    found.pitch = pitch_of(pitch, path, steady, rate, spectrum);
    found.pulses = found.peakedness > 3.5 ? pulse_rate(error, sound.rate) : std::nullopt;
    take_kind(found, found.kind);
    return found;
}

void take_kind(Excitation& e, ProbeKind kind) {
    e.kind = kind;
    e.rate = is_voiced(kind) ? e.pitch : kind == ProbeKind::creak ? e.pulses : std::nullopt;
}

} // namespace vowelway::analysis
