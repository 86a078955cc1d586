// SPDX-License-Identifier: MIT
#include "vowelway/analysis/excitation.hpp"

#include "analysis/epochs.hpp"
#include "analysis/fft.hpp"
#include "analysis/resample.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

namespace vowelway::analysis {
namespace {

constexpr Frequency looked_at = hertz(16000);
constexpr double frame_length = 0.060, frame_hop = 0.060; // s
constexpr double lowest_pitch = 70, highest_pitch = 1000; // Hz
constexpr double regular = 0.45;                          // at least, for a pitch
constexpr double lasting =
    0.6; // of the sound itself, in every period from 15 to 40 ms: a pitch whose fundamental lies on F1
constexpr double peaked = 6.0;      // at least, for a creak
constexpr double odd_rise = 4;      // dB
constexpr double nearly_best = 0.8; // a shorter period this good is preferred: no octave too low

struct Period {
    double samples = 0, likeness = 0;
};

/// The autocorrelation of a frame, normalised, tapering undone, lags up to `lags`.
std::vector<double> likeness_of(std::vector<double> const& x, std::size_t from, std::size_t length,
                                std::size_t lags, RealFft& fft, std::vector<double>& frame) {
    std::fill(frame.begin(), frame.end(), 0.0);
    std::copy_n(x.begin() + static_cast<std::ptrdiff_t>(from), length, frame.begin());
    auto bins = fft.forward(frame);
    for (auto& b : bins) b = std::norm(b);
    auto const& r = fft.inverse(bins, frame.size());
    std::vector<double> likeness(lags + 1, 0.0);
    if (r[0] <= 0) return likeness;
    for (std::size_t lag = 0; lag <= lags; ++lag)
        likeness[lag] = r[lag] / r[0] * static_cast<double>(length) / static_cast<double>(length - lag);
    return likeness;
}

/// The shortest lag of a pitch that is nearly as good as the best.
Period period_of(std::vector<double> const& likeness, double rate) {
    auto const from = static_cast<std::size_t>(rate / highest_pitch),
               to = static_cast<std::size_t>(rate / lowest_pitch);
    Period best;
    std::vector<Period> peaks;
    for (std::size_t lag = from; lag <= to; ++lag) {
        double const left = likeness[lag - 1], here = likeness[lag], right = likeness[lag + 1];
        if (here < left || here < right) continue;
        double const bend = left - 2 * here + right, shift = bend < 0 ? 0.5 * (left - right) / bend : 0;
        peaks.push_back({static_cast<double>(lag) + shift, here - 0.25 * (left - right) * shift});
        if (peaks.back().likeness > best.likeness) best = peaks.back();
    }
    for (auto const& p : peaks)
        if (p.likeness >= nearly_best * best.likeness) return p;
    return {};
}

double median(std::vector<double> values);

/// How alike the sound stays in every period from lag `from` on: a tone does, the ringing between the pulses
/// of a creak dies.
double throughout(std::vector<double> const& likeness, std::size_t from, double period) {
    auto const width = static_cast<std::size_t>(std::ceil(1.2 * period));
    if (width == 0) return 0;
    double least = 1;
    for (std::size_t lag = from; lag + width <= likeness.size(); lag += width)
        least =
            std::min(least, *std::max_element(likeness.begin() + static_cast<std::ptrdiff_t>(lag),
                                              likeness.begin() + static_cast<std::ptrdiff_t>(lag + width)));
    return least;
}

/// Whether there is sound at 1, 3, 5 and 7 times `pitch`, above what lies halfway to the next multiples: if
/// not, the true pitch is twice as high.
bool odd_harmonics(PowerSpectrum const& spectrum, double pitch) {
    std::vector<double> rise;
    for (int k = 1; k <= 7; k += 2) {
        auto const around = [&](double multiple) {
            return spectrum.mean(hertz(pitch * (multiple - 0.12)), hertz(pitch * (multiple + 0.12)));
        };
        double const between = std::sqrt(around(k - 0.5) * around(k + 0.5));
        rise.push_back(10 * std::log10((around(k) + 1e-16) / (between + 1e-16)));
    }
    return median(rise) > odd_rise;
}

double median(std::vector<double> values) {
    auto const middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

} // namespace

Excitation recognise_excitation(std::span<float const> steady, Frequency rate,
                                PowerSpectrum const* spectrum) {
    Excitation found;
    auto const sound = resample(steady, rate, looked_at);
    auto const e = residual(sound.samples, sound.rate);
    double second = 0, fourth = 0;
    for (double v : e) second += v * v, fourth += v * v * v * v;
    if (second <= 0) return found;
    found.peakedness = fourth / (second * second) * static_cast<double>(e.size());

    double const hz = in_hertz(sound.rate);
    auto const length = static_cast<std::size_t>(frame_length * hz),
               hop = static_cast<std::size_t>(frame_hop * hz);
    auto& fft = frame_fft();
    auto const lags = static_cast<std::size_t>(0.040 * hz);
    std::vector<double> frame(fast_length(length + lags + 1)); // so long that the lags used are not folded
    auto const late = static_cast<std::size_t>(0.015 * hz);
    std::vector<double> of_error, of_sound, lasts, error_periods, sound_periods;
    for (std::size_t from = 0; from + length <= e.size(); from += hop) {
        auto const error = period_of(likeness_of(e, from, length, lags, fft, frame), hz);
        of_error.push_back(error.likeness);
        if (error.samples > 0) error_periods.push_back(error.samples);
    }
    if (of_error.empty()) return found;
    found.regularity = median(of_error);
    bool const repeats = found.regularity >= regular && !error_periods.empty();
    // Where the error does not repeat, the sound itself may.
    for (std::size_t from = 0; !repeats && from + length <= e.size(); from += 2 * hop) {
        auto const likeness = likeness_of(sound.samples, from, length, lags, fft, frame);
        auto const heard = period_of(likeness, hz);
        of_sound.push_back(heard.likeness);
        if (heard.samples > 0) sound_periods.push_back(heard.samples);
        lasts.push_back(throughout(likeness, late, heard.samples));
    }
    double const tone = repeats ? 0 : std::min(median(of_sound), median(lasts));
    if (repeats) {
        found.kind = ProbeKind::sung;
        found.rate = hertz(hz / median(error_periods));
    } else if (tone >= lasting && !sound_periods.empty()) {
        found.kind = ProbeKind::sung;
        found.regularity = tone;
        found.rate = hertz(hz / median(sound_periods));
    }
    if (found.rate) {
        double const pitch = in_hertz(*found.rate); // what is taken for a usable pitch is looked at twice
        if (pitch > 120 && pitch <= in_hertz(highest_sung_probe) * 1.2 &&
            !odd_harmonics(spectrum ? *spectrum : average_spectrum(steady, rate), pitch))
            found.rate = 2.0 * *found.rate;
    } else if (found.peakedness >= peaked) {
        found.kind = ProbeKind::creak;
        auto const epochs = find_epochs(sound.samples, sound.rate, std::nullopt);
        if (epochs.size() > 2)
            found.rate = hertz(static_cast<double>(epochs.size() - 1) * hz /
                               static_cast<double>(epochs.back() - epochs.front()));
    }
    return found;
}

} // namespace vowelway::analysis
