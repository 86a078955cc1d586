// SPDX-License-Identifier: MIT
#include "vowelway/analysis/tract_reading.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>
#include <utility>

namespace vowelway::analysis {
namespace {

Shift shared(double mean, double sd) {
    double const half = sd / std::numbers::sqrt2;
    return {hertz(mean), hertz(half), hertz(half)};
}

double squared(Frequency f) { return in_hertz(f) * in_hertz(f); }

/// Mean and deviation of a normal distribution of which only what lies above `low` is possible.
std::pair<double, double> above(double mean, double sd, double low) {
    double const a = (low - mean) / sd;
    double const density = std::exp(-a * a / 2) / std::sqrt(2 * std::numbers::pi);
    double const left = std::max(0.5 * std::erfc(a / std::numbers::sqrt2), 1e-12);
    double const ratio = density / left;
    return {mean + sd * ratio, sd * std::sqrt(std::max(1 + a * ratio - ratio * ratio, 0.02))};
}

} // namespace

Frequency Shift::sd() const { return hertz(std::sqrt(squared(singer_sd) + squared(vowel_sd))); }

ProbeShifts published_shift(ProbeKind kind) {
    switch (kind) {
    case ProbeKind::whisper:
        return {{shared(255, 90), shared(115, 105), shared(125, 125)}};
    case ProbeKind::creak:
        return {{shared(45, 50), shared(0, 60), shared(65, 120)}};
    case ProbeKind::spoken:
        return {{shared(0, 25), shared(0, 30), shared(0, 40)}};
    case ProbeKind::sung:
        break;
    }
    return {{shared(0, 15), shared(0, 20), shared(0, 30)}};
}

std::array<ProbeShifts, 4> published_shifts() {
    return {published_shift(ProbeKind::whisper), published_shift(ProbeKind::creak),
            published_shift(ProbeKind::sung), published_shift(ProbeKind::spoken)};
}

bool is_close(Vowel const& vowel) { return chart_place(vowel).height <= 1; }

TractReading tract_reading(FormantReading const& measured, Vowel const& vowel, ProbeKind kind,
                           ProbeShifts const& shifts) {
    TractReading reading;
    for (std::size_t k = 0; k < 3; ++k) {
        auto const& formant = measured.formants[k];
        if (!formant) continue;
        auto const& shift = shifts.of[k];
        double centre = in_hertz(formant->centre - shift.mean);
        double sd = std::sqrt(squared(formant->sd) + squared(shift.sd()));
        if (k == 0) std::tie(centre, sd) = above(centre, sd, in_hertz(lowest_first_resonance));
        reading.resonances[k] = Resonance{hertz(centre), hertz(sd), false, std::nullopt};
    }
    if (kind == ProbeKind::whisper && is_close(vowel) && reading.resonances[0]) {
        reading.close_whisper = true;
        auto& r1 = *reading.resonances[0];
        double const reach = in_hertz(r1.centre - lowest_first_resonance);
        r1.sd = hertz(std::max(in_hertz(r1.sd),
                               std::max(reach, in_hertz(measured.formants[0]->centre - r1.centre)) / 2));
        r1.sd = std::min(r1.sd, 0.5 * r1.centre);
    }
    for (std::size_t k = 0; k + 1 < 3; ++k) // the shifts may not turn the order round
        if (reading.resonances[k] && reading.resonances[k + 1] &&
            reading.resonances[k]->centre >= reading.resonances[k + 1]->centre)
            reading.resonances[k + 1].reset();
    return reading;
}

void learn_shifts(ProbeShifts& first, ProbeShifts& second, std::vector<ProbePair> const& pairs) {
    int used = 0;
    for (std::size_t k = 0; k < 3; ++k) {
        auto &sa = first.of[k], &sb = second.of[k];
        double va = squared(sa.singer_sd), vb = squared(sb.singer_sd),
               both = 0; // covariance of the two means
        double const own = squared(sa.vowel_sd) + squared(sb.vowel_sd);
        int here = 0;
        for (auto const& pair : pairs) {
            auto const &a = pair.first.formants[k], &b = pair.second.formants[k];
            if (!a || !b) continue;
            ++here;
            double const surprise = in_hertz((a->centre - b->centre) - (sa.mean - sb.mean));
            double const of_a = va - both, of_b = both - vb; // covariance of each mean with the difference
            double const total = of_a - of_b + own + squared(a->sd) + squared(b->sd);
            sa.mean += hertz(of_a / total * surprise);
            sb.mean += hertz(of_b / total * surprise);
            va -= of_a * of_a / total;
            vb -= of_b * of_b / total;
            both -= of_a * of_b / total;
        }
        sa.singer_sd = hertz(std::sqrt(va));
        sb.singer_sd = hertz(std::sqrt(vb));
        used = std::max(used, here);
    }
    first.pairs += used;
    second.pairs += used;
}

} // namespace vowelway::analysis
