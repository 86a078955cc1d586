// SPDX-License-Identifier: MIT
#include "analysis/processing.hpp"

#include "analysis/band_lags.hpp"
#include "analysis/decibels.hpp"
#include "analysis/levelled.hpp"
#include "analysis/undo.hpp"
#include "analysis/whiten.hpp"
#include "vowelway/analysis/linear_prediction.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace vowelway::analysis {
namespace {

constexpr int order = 18;                  // two for each formant below 7 kHz, and four more
constexpr int order_above = 12;            // of lower_formants
constexpr Frequency highest = hertz(7000); // files and resampling cut what lies above
constexpr std::size_t takes_looked_at = 8; // are looked at: they all say the same
constexpr double shortest_delay = 7, longest_delay = 32, delay_step = 0.5; // of a delay, samples at 16 kHz
constexpr double seen = 0.009, seen_in_few = 0.03; // least gain of ln(error) by undoing a reflection
constexpr double suspected = 0.005;                // and above which there may be one
constexpr double not_weak = 0.2; // strength of that: a weaker one moves little, and tracts look like it
constexpr std::size_t fewest = 3, few = 4;           // takes
constexpr double more_than_a_tract = 0.013;          // gain: model tracts have up to 0.012
constexpr double seen_above = 0.0015, agreed = 1.45; // gain above, and both shares of takes that gain
constexpr double least_suspected = 8.5;              // of a delay: noise suppression looks like less
/// To the lips of a tract of 12 to 18.5 cm and back: its own modes come again after as long.
constexpr double shortest_round = 11, longest_round = 17;
constexpr Frequency lower_formants = hertz(3000), enough_above = hertz(5000);
constexpr double above_others = 2, just_above = 1.05;    // times the gain of delays farther away
constexpr double least_gain_sd = 0.04, of_pulses = 0.08; // those hide a part of it

double ln_error_of(std::span<double const> lags) {
    int const all = static_cast<int>(lags.size()) - 1;
    return std::log(std::max(predict(lags, all, measuring_rate).error, 1e-300));
}
double ln_error(PowerSpectrum const& s, Frequency band) {
    return ln_error_of(band_autocorrelation(s, band, order));
}

/// Of unit mean, with a floor 70 dB down, below which rounding spoils the prediction.
PowerSpectrum floored(PowerSpectrum s, Frequency band) {
    double const mean = std::max(s.mean(hertz(0), band), 1e-300);
    for (auto& v : s.power) v = v / mean + 1e-7;
    return s;
}

/// Mean of ln of what whitening has divided out of the band.
double ln_divided_out(PowerSpectrum const& before, PowerSpectrum const& after, Frequency band) {
    auto const bins = static_cast<std::size_t>(std::lround(band / before.bin));
    double sum = 0;
    for (std::size_t k = 0; k <= bins; ++k) sum += std::log(before.power[k] / after.power[k]);
    return sum / static_cast<double>(bins + 1);
}

/// As it is, or without the zeros at the bottom that its source and the lips have, whichever is predicted
/// best: what those leave unexplained hides a short delay.
PowerSpectrum without_source(PowerSpectrum const& heard, Frequency band) {
    auto const plain = floored(heard, band);
    auto best = plain;
    double least = ln_error(plain, band);
    for (auto const& way : bottom_of_source()) {
        auto now = plain;
        whiten(now, measuring_rate, way);
        double const scale = std::log(std::max(now.mean(hertz(0), band), 1e-300)),
                     divided = ln_divided_out(plain, now, band);
        now = floored(std::move(now), band);
        if (double const left = ln_error(now, band) + scale + divided; left < least)
            least = left, best = std::move(now);
    }
    return best;
}

/// What lies above `from`, as if that were 0 Hz (selective prediction: Makhoul 1975).
PowerSpectrum from_bin(PowerSpectrum s, Frequency from) {
    s.power.erase(s.power.begin(), s.power.begin() + std::lround(from / s.bin));
    return s;
}

/// The mean gain over the takes when each spectrum is divided by `h`, and the share of takes that gain.
struct Gain {
    double mean = 0, share = 0;
};

class UndoSearch {
  public:
    UndoSearch(std::vector<HeardTake> const& takes, Frequency band, Frequency from = hertz(0))
        : lags_(from_bin(*takes.front().spectrum, from), band - from,
                in_hertz(from) > 0 ? order_above : order),
          from_(from), bin_(takes.front().spectrum->bin) {
        auto const every = (takes.size() + takes_looked_at - 1) / takes_looked_at;
        std::vector<Eigen::ArrayXd> all;
        for (std::size_t i = 0; i < takes.size(); i += std::max<std::size_t>(1, every))
            all.push_back(lags_.band(from_bin(without_source(*takes[i].spectrum, band), from)));
        spectra_.resize(lags_.last() + 1, static_cast<Eigen::Index>(all.size()));
        for (std::size_t i = 0; i < all.size(); ++i)
            spectra_.col(static_cast<Eigen::Index>(i)) = all[i].matrix();
        plain_ = ln_errors(spectra_);
    }
    std::size_t size() const { return plain_.size(); }

    std::vector<double> gains(std::function<double(Frequency)> const& h) const {
        Eigen::ArrayXd const through = Eigen::ArrayXd::NullaryExpr(spectra_.rows(), [&](Eigen::Index k) {
            return std::max(h(from_ + bin_ * static_cast<double>(k)), 1e-9);
        });
        double const ln = through.log().mean();
        auto all = ln_errors((spectra_.array().colwise() / through).matrix());
        for (std::size_t i = 0; i < all.size(); ++i) all[i] = plain_[i] - all[i] - ln;
        return all;
    }
    Gain gain(std::function<double(Frequency)> const& h) const {
        Gain g;
        for (double v : gains(h)) g.mean += v, g.share += v > 0;
        g.mean /= static_cast<double>(size()), g.share /= static_cast<double>(size());
        return g;
    }

  private:
    BandLags lags_;
    Frequency from_, bin_;
    Eigen::MatrixXd spectra_; ///< bins of the band by takes
    std::vector<double> plain_;

    std::vector<double> ln_errors(Eigen::MatrixXd const& spectra) const {
        Eigen::MatrixXd const r = lags_.of(spectra);
        std::vector<double> all;
        for (Eigen::Index i = 0; i < r.cols(); ++i)
            all.push_back(ln_error_of({r.col(i).data(), static_cast<std::size_t>(r.rows())}));
        return all;
    }
};

Duration samples(double n) { return seconds(n / 16000); }

/// The gain of each delay with the best strength for it.
struct Candidate {
    double delay = 0, strength = 0;
    Gain gain;
};

Candidate best_of(UndoSearch const& search, double delay, std::vector<double> const& strengths) {
    Candidate best{delay, 0, {}};
    for (double s : strengths) {
        auto const g = search.gain([&](Frequency f) { return response({samples(delay), s}, f); });
        if (g.mean > best.gain.mean) best = {delay, s, g};
    }
    return best;
}

/// A comb goes on to the top; what a tract itself makes look like one (zeros of the part behind a whisper's
/// noise, which lie as far apart as its formants) does not. So a gain that a tract may have is believed only
/// if the part above the lower formants gains too, and the takes agree on both; never after the time that the
/// sound takes through the tract and back.
bool shows_above(Candidate const& c, std::vector<HeardTake> const& takes, Frequency top) {
    if (c.gain.mean >= more_than_a_tract) return true;
    if (top < enough_above || c.delay < least_suspected) return false;
    if (c.delay >= shortest_round && c.delay <= longest_round) return false;
    auto const above = UndoSearch(takes, top, lower_formants).gain([&](Frequency f) {
        return response({samples(c.delay), c.strength}, f);
    });
    return above.mean >= seen_above && c.gain.share + above.share > agreed;
}

std::optional<Reflection> reflection_of(std::vector<HeardTake> const& takes, Frequency top) {
    UndoSearch const search(takes, top);
    std::vector<Candidate> all;
    for (double d = shortest_delay; d <= longest_delay; d += delay_step)
        all.push_back(best_of(search, d, {0.15, 0.25, 0.45}));
    auto best = all[1];
    for (std::size_t i = 1; i + 1 < all.size(); ++i) // inside the range: its ends take up what else is there
        if (all[i].gain.mean > best.gain.mean && all[i].gain.mean >= all[i - 1].gain.mean &&
            all[i].gain.mean >= all[i + 1].gain.mean)
            best = all[i];
    double others = 0;
    for (auto const& c : all)
        if (std::abs(c.delay - best.delay) > 3.5 && std::abs(c.delay - 2 * best.delay) > 2.5)
            others = std::max(others, c.gain.mean);
    bool const not_few = search.size() >= few;
    bool const sure =
        best.gain.mean >= (not_few ? seen : seen_in_few) && best.gain.mean >= above_others * others;
    bool const perhaps = not_few && best.strength > not_weak && best.gain.mean >= suspected &&
                         best.gain.mean >= just_above * others;
    if ((!sure && !perhaps) || best.gain.share < 0.59) return std::nullopt;
    bool const up_to_top = shows_above(best, takes, top);
    for (double d = best.delay - 0.4; d <= best.delay + 0.41; d += 0.1)
        if (auto const c = best_of(search, d, {best.strength}); c.gain.mean > best.gain.mean) best = c;
    std::vector<double> strengths;
    for (double s = 0.06; s < 0.8; s += 0.04) strengths.push_back(s);
    best = best_of(search, best.delay, strengths);
    // How the takes scatter about the common strength: each has its own best one.
    std::vector<double> most(search.size(), -1e9), own(search.size(), 0.0);
    for (double s : strengths) {
        auto const gains = search.gains([&](Frequency f) { return response({samples(best.delay), s}, f); });
        for (std::size_t i = 0; i < gains.size(); ++i)
            if (gains[i] > most[i]) most[i] = gains[i], own[i] = s;
    }
    double squares = 0;
    for (double s : own) squares += (s - best.strength) * (s - best.strength);
    double const sd = std::sqrt(squares) / static_cast<double>(search.size());
    return Reflection{samples(best.delay), best.strength, std::hypot(sd, least_gain_sd), sure, up_to_top};
}

constexpr double least_fall = 5; // dB towards low frequencies: rooms have more noise there, not less
constexpr double low_seen = 0.015;

double noise_decibels(double power) { return decibels(power, floor_of_bin); }

/// Whether the noise falls towards low frequencies from the octave where it is strongest.
bool noise_falls(PowerSpectrum const* noise) {
    if (!noise) return true; // others decide
    double most = 0;
    for (double f : {100, 150, 200, 300, 400, 600})
        most = std::max(most, noise->mean(hertz(f), hertz(2 * f)));
    return noise_decibels(most) - noise_decibels(noise->mean(hertz(45), hertz(85))) > least_fall;
}

/// How badly a smooth slope times this low cut describes the noise below 1500 Hz, dB; and the noise is not
/// thought to rise by itself.
double misfit(PowerSpectrum const& noise, LowCut const& cut) {
    double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0, syy = 0;
    for (std::size_t k = 2; k < noise.power.size(); ++k) {
        auto const f = noise.bin * static_cast<double>(k);
        if (f < hertz(50) || f > hertz(1500)) continue;
        double const x = std::log2(in_hertz(f)),
                     y = noise_decibels(noise.power[k]) -
                         (cut.order > 0 ? noise_decibels(1 / (1 + std::pow(cut.corner / f, 2 * cut.order)))
                                        : 0),
                     w = 1 / in_hertz(f); // the same for each octave
        n += w, sx += w * x, sy += w * y, sxx += w * x * x, sxy += w * x * y, syy += w * y * y;
    }
    double const slope = std::clamp((sxy - sx * sy / n) / (sxx - sx * sx / n), -9.0, 0.5);
    double const level = (sy - slope * sx) / n;
    return std::sqrt(std::max(0.0, (syy - 2 * slope * sxy - 2 * level * sy + slope * slope * sxx +
                                    2 * slope * level * sx + level * level * n) /
                                       n));
}

std::optional<LowCut> low_cut_of(std::vector<HeardTake> const& takes, Frequency band,
                                 PowerSpectrum const* noise, ProbeKind kind) {
    if (!noise_falls(noise) || (!noise && kind != ProbeKind::whisper)) return std::nullopt;
    std::optional<UndoSearch> search;
    if (!noise) search.emplace(takes, band);
    std::optional<LowCut> best;
    double most = low_seen, least = noise ? 0.6 * misfit(*noise, {hertz(100), 0}) : 0;
    for (double corner = 100; corner <= 480; corner += 20)
        for (int n : {2, 4}) {
            LowCut const cut{hertz(corner), n};
            if (!noise) {
                auto const g = search->gain([&](Frequency f) { return response(cut, f); });
                if (g.mean > most && g.share > 0.7) most = g.mean, best = cut;
            } else if (double const bad = misfit(*noise, cut); bad < least) {
                least = bad, best = cut;
            }
        }
    return best;
}

} // namespace

std::optional<Reflection> reflection_in(std::vector<HeardTake> const& takes, Frequency band) {
    if (takes.size() < fewest) return std::nullopt; // one vowel, or one note, may look like that by itself
    return reflection_of(takes, std::min(band, highest));
}

Processing processing_of(std::vector<HeardTake> const& takes, PowerSpectrum const* noise, ProbeKind kind,
                         Frequency band, std::optional<Reflection> const& reflection) {
    Processing found;
    found.kind = kind;
    found.reflection = reflection;
    if (takes.empty()) return found;
    if (reflection && kind == ProbeKind::whisper && !reflection->up_to_top) found.reflection.reset();
    if (reflection && kind != ProbeKind::whisper)
        found.reflection->gain_sd = std::hypot(reflection->gain_sd, of_pulses);
    found.low_cut = low_cut_of(takes, std::min(band, highest), noise, kind);
    found.evenness = evenness_of(takes, kind);
    return found;
}

} // namespace vowelway::analysis
