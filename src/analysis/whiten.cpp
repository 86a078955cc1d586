// SPDX-License-Identifier: MIT
#include "analysis/whiten.hpp"

#include "analysis/band_lags.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr double half_turn = std::numbers::pi;
constexpr double leak = 0.97;            // of an integration
constexpr double well_described = 0.965; // whiteness from which on no zeros are looked for
/// Share of the power of a frame's bin that the next frame repeats: the square of what two Hamming windows
/// half a frame apart have in common (P. D. Welch, IEEE Trans. Audio Electroacoust. 15, 1967, 70).
constexpr double shared_by_neighbours = 0.0547;
constexpr double worth_it = 1.01; // gain of whiteness for which a pair of zeros is believed
constexpr double nearly = 0.3;    // of what the best way leaves: others this near are as good
/// Gain of whiteness below which the sound stays as it is. Whispers of model tracts from the glottis gain up
/// to 1.022 by chance: there a second integration or a zero put F1 of a close /i/ anywhere.
constexpr double clearly_whiter = 1.025;
constexpr std::size_t most_pairs = 2, most_ways = 2;
constexpr Frequency lowest_zero = hertz(400);
constexpr Frequency lowest_heard =
    hertz(150); // below it two zeros undone would make rumble a line of its own
/// A tract shut behind the noise takes in no air at the resonance of its walls (180 to 200 Hz; K. N. Stevens,
/// Acoustic Phonetics, 1998), not at 0 Hz as one with hard walls does.
constexpr ZeroPair walls{hertz(200), hertz(100)};

/// 1 - 2 r cos(w) + r^2 of a zero of this radius, seen at the angle `w` from it.
double distance_to(double radius, double angle) { return 1 - 2 * radius * std::cos(angle) + radius * radius; }

void integrate(PowerSpectrum& s, Frequency rate) {
    double const step = 2 * half_turn * (s.bin / rate);
    for (std::size_t k = 0; k < s.power.size(); ++k)
        s.power[k] /= distance_to(leak, step * static_cast<double>(k));
}

/// What a pair of zeros lets through where cos(w) is `c`: distance_to(w - at) times distance_to(w + at).
class LetThrough {
  public:
    LetThrough(ZeroPair const& z, Frequency rate) {
        double const at = 2 * half_turn * (z.centre / rate),
                     radius = std::exp(-half_turn * (z.bandwidth / rate)), q = 1 + radius * radius,
                     twice = 2 * radius, sine = std::sin(at);
        none_ = q * q - twice * twice * sine * sine, first_ = -2 * twice * q * std::cos(at),
        second_ = twice * twice;
    }
    double operator()(double c) const { return none_ + c * (first_ + c * second_); }

  private:
    double none_, first_, second_; // powers of c
};

void undo(PowerSpectrum& s, Frequency rate, ZeroPair const& z) {
    LetThrough const through(z, rate);
    double const step = 2 * half_turn * (s.bin / rate);
    for (std::size_t k = 0; k < s.power.size(); ++k)
        s.power[k] /= through(std::cos(step * static_cast<double>(k)));
}

/// Of numbers from 1e-30 to 1e30: the logarithm of a product of eight is one logarithm.
double mean_log(Eigen::ArrayXd const& x) {
    auto const part = x.size() / 8;
    Eigen::ArrayXd product = x.head(part);
    for (Eigen::Index i = 1; i < 8; ++i) product *= x.segment(i * part, part);
    return (product.log().sum() + x.tail(x.size() - 8 * part).log().sum()) / static_cast<double>(x.size());
}

/// The test for whiteness of many spectra of one band.
class Band {
  public:
    Band(PowerSpectrum const& s, Frequency rate, Frequency ceiling, int order)
        : rate_(rate), ceiling_(ceiling), order_(order), lags_(s, ceiling, order),
          of_bins_(lags_.last() + 1) {
        double const step = 2 * half_turn * (s.bin / rate);
        for (Eigen::Index k = 0; k < of_bins_.size(); ++k)
            of_bins_(k) = std::cos(step * static_cast<double>(k));
    }

    Eigen::ArrayXd of(PowerSpectrum const& s) const { return lags_.band(s); }

    /// 0..1: geometric over arithmetic mean of the spectrum that prediction leaves.
    double whiteness(Eigen::ArrayXd const& power) const {
        Eigen::VectorXd const r = lags_.of(Eigen::MatrixXd(power));
        auto const found = predict({r.data(), static_cast<std::size_t>(r.size())}, order_, ceiling_ * 2.0);
        Eigen::VectorXd of_filter = Eigen::VectorXd::Zero(order_ + 1); // its autocorrelation
        for (std::size_t i = 0; i < found.a.size(); ++i)
            for (std::size_t j = 0; j + i < found.a.size(); ++j)
                of_filter(static_cast<Eigen::Index>(i)) += (i == 0 ? 1 : 2) * found.a[j] * found.a[i + j];
        // Not found.error: rounding spoils it where the spectrum spans too much.
        auto const inside = lags_.last() - 1;
        Eigen::ArrayXd const error =
            power.segment(1, inside) * lags_.power(of_filter).segment(1, inside).max(1e-12) + 1e-300;
        return std::exp(mean_log((error / error.mean()).max(1e-30)));
    }

    Eigen::ArrayXd undone(Eigen::ArrayXd const& power, ZeroPair const& z) const {
        return power / of_bins_.unaryExpr(LetThrough(z, rate_));
    }

    /// The pair whose undoing leaves the whitest error, if whiter than `best`: a coarse grid, then a finer
    /// one about the best.
    ZeroPair best_pair(Eigen::ArrayXd const& power, double& best) const {
        ZeroPair found{hertz(0), hertz(0)};
        auto const attempt = [&](double hz, double width) {
            if (hz < in_hertz(lowest_zero) || hz > in_hertz(ceiling_)) return;
            ZeroPair const z{hertz(hz), hertz(width)};
            if (double const w = whiteness(undone(power, z)); w > best) best = w, found = z;
        };
        for (double hz = in_hertz(lowest_zero); hz < in_hertz(ceiling_); hz *= 1.08) attempt(hz, 150);
        if (in_hertz(found.centre) == 0) return found;
        for (double step : {0.04, 0.02, 0.01}) {
            auto const about = found;
            for (double width : {0.6, 1.0, 1.6})
                for (double away : {-step, 0.0, step})
                    if (width != 1 || away != 0)
                        attempt(in_hertz(about.centre) * (1 + away), in_hertz(about.bandwidth) * width);
        }
        return found;
    }

  private:
    Frequency rate_, ceiling_;
    int order_;
    BandLags lags_;
    Eigen::ArrayXd of_bins_; ///< cos of each bin's angle at the sampling rate
};

double score(Whitening const& w) {
    return w.whiteness / std::pow(worth_it, static_cast<double>(w.zeros.size()));
}

/// Beginning with this, more pairs of zeros while they are worth it; `power` is made so white.
Whitening with_zeros(Band const& band, Eigen::ArrayXd power, Whitening found) {
    auto const first = found.zeros.size();
    while (found.zeros.size() - first < most_pairs && found.whiteness < well_described) {
        double white = found.whiteness;
        auto const pair = band.best_pair(power, white);
        if (white < worth_it * found.whiteness) break;
        found.zeros.push_back(pair), found.whiteness = white;
        power = band.undone(power, pair);
    }
    return found;
}

/// What a bin that is all noise misses in ln when as much is taken off: the means of 30 to 60 frames less
/// their own expectation, a twentieth of them at least (looks.cpp), have a geometric mean that much lower.
constexpr double missed_by_noise = 0.3;

/// Whiteness that white noise itself has in a mean of so few frames: each bin is the mean of this many
/// squares of complex Gaussian numbers, whose geometric mean is exp(psi(n)) / n of it. Where noise was taken
/// off, what is left scatters more by as much as there was more before.
double whiteness_of_noise(Eigen::ArrayXd const& left, Eigen::ArrayXd const& before, int frames) {
    double const n = std::max(frames, 1) / (1 + 2 * shared_by_neighbours);
    Eigen::ArrayXd const of_bin = (before / (left + 1e-300)).square() / (2 * n);
    return std::exp(-of_bin.min(std::max(missed_by_noise, 1 / (2 * n))).mean() -
                    1 / (12 * n * n)); // Abramowitz & Stegun 6.3.18
}

PowerSpectrum whitened(PowerSpectrum s, Frequency rate, Whitening const& w) {
    whiten(s, rate, w);
    return s;
}

/// None, the lips' zero, and the other bottoms, each with its whiteness.
std::vector<Whitening> all_bottoms(Band const& band, PowerSpectrum const& spectrum, Frequency rate) {
    std::vector<Whitening> all{{}};
    for (auto& way : bottom_of_source()) all.push_back(std::move(way));
    for (auto& w : all) w.whiteness = band.whiteness(band.of(whitened(spectrum, rate, w)));
    return all;
}

/// The lips' zero at most.
Whitening plain_of(std::vector<Whitening> const& bottoms) {
    return bottoms[1].whiteness > bottoms[0].whiteness ? bottoms[1] : bottoms[0];
}

Whitening best_of(std::vector<Whitening> const& all) {
    return *std::max_element(all.begin(), all.end(), [](Whitening const& a, Whitening const& b) {
        return a.whiteness < b.whiteness;
    });
}

} // namespace

std::vector<Whitening> bottom_of_source() { return {{1, {}}, {2, {}}, {1, {walls}}}; }

Whitenings find_whitenings(PowerSpectrum const& spectrum, PowerSpectrum const& before, Frequency rate,
                           Frequency ceiling, int order) {
    Band const band(spectrum, rate, ceiling, order);
    auto all = all_bottoms(band, spectrum, rate);
    auto const plain = plain_of(all);
    // Where even white noise is not white enough, what is missing is no evidence of zeros.
    if (whiteness_of_noise(band.of(spectrum), band.of(before), spectrum.frames) < well_described)
        return {{plain}, true, {}};
    auto const bottom = best_of(all);
    Whitenings found{{plain}, true, {}};
    if (bottom.whiteness > plain.whiteness) found.other = bottom;
    if (plain.whiteness > well_described) return found;
    if (bottom.whiteness < well_described)
        for (auto& w : all) w = with_zeros(band, band.of(whitened(spectrum, rate, w)), w);
    std::stable_sort(all.begin(), all.end(),
                     [](Whitening const& a, Whitening const& b) { return score(a) > score(b); });
    for (auto& w : all) w.gain = w.whiteness / plain.whiteness;
    if (all[0].gain < clearly_whiter) return found;
    double const least = score(all[0]) - nearly * std::max(0.0, 1 - all[0].whiteness);
    while (score(all.back()) < least || all.back().gain < clearly_whiter || all.size() > most_ways)
        all.pop_back();
    return {std::move(all), false, plain};
}

Whitenings whitenings_as_it_is(PowerSpectrum const& spectrum, Frequency rate, Frequency ceiling, int order) {
    Band const band(spectrum, rate, ceiling, order);
    return {{plain_of(all_bottoms(band, spectrum, rate))}, true, {}};
}

void whiten(PowerSpectrum& spectrum, Frequency rate, Whitening const& w) {
    for (int times = 0; times < w.integrations; ++times) integrate(spectrum, rate);
    for (auto const& z : w.zeros) undo(spectrum, rate, z);
    if (w.integrations < 2 && w.zeros.empty()) return;
    auto const low =
        std::min(static_cast<std::size_t>(lowest_heard / spectrum.bin), spectrum.power.size() - 1);
    std::fill_n(spectrum.power.begin(), low, spectrum.power[low]);
}

} // namespace vowelway::analysis
