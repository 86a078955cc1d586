// SPDX-License-Identifier: MIT
#include "vowelway/analysis/quality.hpp"

#include "analysis/decibels.hpp"
#include "analysis/with_unit.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

// Limits of the findings: our judgement.
constexpr double barely_audible = 6; // dB above the floor
constexpr double most_balance = 30;  // dB between the low and the high resonance
constexpr double least_filled = 0.6;
constexpr double most_unsteady = 3.5; // dB
constexpr double short_steady = 0.3;  // s
constexpr double clearly_high = 1.3;  // spreads of the expectation
constexpr double clearly_back = -1.5;
constexpr std::size_t scanned_bands = 16;

double level_decibels(double power) { return decibels(power, floor_of_band); }

/// Level around a frequency, of a band a fifth of an octave to each side.
double level_around(PowerSpectrum const& s, Frequency f) {
    return level_decibels(s.mean(0.87 * f, 1.15 * f));
}

void judge_levels(ProbeQuality& q, ProbeEvidence const& e, PowerSpectrum const& spectrum) {
    auto const low = e.reading.formants[0] ? e.reading.formants[0]->centre : e.expectation.formants[0].centre;
    auto const high =
        e.reading.formants[1] ? e.reading.formants[1]->centre : e.expectation.formants[1].centre;
    double const low_level = level_around(spectrum, low), high_level = level_around(spectrum, high);
    q.balance = {low_level - high_level};
    if (e.noise) {
        q.low_above_floor = Decibels{low_level - level_around(*e.noise, low)};
        q.high_above_floor = Decibels{high_level - level_around(*e.noise, high)};
    }
    std::array<double, scanned_bands> levels{};
    double const highest = 1.15 * in_hertz(e.expectation.formants[2].centre);
    double filled = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
    double const top = level_decibels(*std::max_element(spectrum.power.begin(), spectrum.power.end()));
    for (std::size_t b = 0; b < scanned_bands; ++b) {
        auto const edge = [&](std::size_t k) {
            return hertz(200 * std::pow(highest / 200, static_cast<double>(k) / scanned_bands));
        };
        levels[b] = level_decibels(spectrum.mean(edge(b), edge(b + 1)));
        double const floor =
            e.noise ? level_decibels(e.noise->mean(edge(b), edge(b + 1))) + barely_audible : top - 60;
        filled += levels[b] > floor;
        auto const x = static_cast<double>(b);
        sx += x, sy += levels[b], sxx += x * x, sxy += x * levels[b];
    }
    q.filled = filled / scanned_bands;
    double const slope = (scanned_bands * sxy - sx * sy) / (scanned_bands * sxx - sx * sx);
    for (std::size_t b = 0; b < scanned_bands; ++b) levels[b] -= slope * static_cast<double>(b);
    auto const [least, most] = std::minmax_element(levels.begin(), levels.end());
    q.relief = {*most - *least};
}

/// Power of even noise from the glottis, heard through formants with these bandwidths and those above them in
/// their usual distances, radiated from the lips.
double expected_power(std::array<Formant, 3> const& formants, Frequency spacing, double f) {
    double power = f * f;
    auto const through = [&](double centre, double width) {
        double const c = centre * centre, d = c - f * f;
        power *= c * c / (d * d + f * f * width * width);
    };
    for (auto const& one : formants) through(in_hertz(one.centre), in_hertz(one.bandwidth));
    double const step = in_hertz(spacing);
    for (double higher = in_hertz(formants[2].centre) + step; higher < 8000; higher += step)
        through(higher, 0.05 * higher);
    return power;
}

/// How the source of a whisper is balanced: the level measured around F1 and F2, less that expected there.
void judge_source(ProbeQuality& q, ProbeEvidence const& e) {
    auto const& f = e.reading.formants;
    if (e.excitation.kind != ProbeKind::whisper || !f[0] || !f[1] || !f[2]) return;
    auto const expected = [&](Frequency around) {
        double sum = 0;
        int count = 0;
        for (double at = 0.87 * in_hertz(around); at <= 1.15 * in_hertz(around); at += 20, ++count)
            sum += expected_power({*f[0], *f[1], *f[2]}, e.expectation.spacing, at);
        return level_decibels(sum / count * 1e-6);
    };
    q.source_balance = Decibels{q.balance.value - (expected(f[0]->centre) - expected(f[1]->centre))};
}

void judge_height(ProbeQuality& q, ProbeEvidence const& e) {
    for (std::size_t k = 0; k < 3; ++k)
        if (auto const& f = e.reading.formants[k]) {
            auto const& due = e.expectation.formants[k];
            q.height[k] = std::log(f->centre / due.centre) / due.spread;
        }
}

} // namespace

std::string_view to_string(Finding::Kind kind) {
    switch (kind) {
    case Finding::Kind::noisy:
        return "noisy";
    case Finding::Kind::low_missing:
        return "low missing";
    case Finding::Kind::high_missing:
        return "high missing";
    case Finding::Kind::narrow:
        return "narrow";
    case Finding::Kind::unsteady:
        return "unsteady";
    case Finding::Kind::short_:
        return "short";
    case Finding::Kind::clipped:
        return "clipped";
    case Finding::Kind::all_high:
        return "all high";
    case Finding::Kind::tongue_back:
        return "tongue back";
    case Finding::Kind::close_whisper:
        return "close whisper";
    case Finding::Kind::scattered:
        return "scattered";
    case Finding::Kind::noise_in_front:
        return "noise in front";
    }
    return "";
}

ProbeQuality judge(ProbeEvidence const& e) {
    ProbeQuality q;
    q.unsteadiness = e.part.unsteadiness;
    q.length = e.part.span.length();
    judge_levels(q, e, e.spectrum);
    judge_height(q, e);
    judge_source(q, e);

    using K = Finding::Kind;
    auto const tell = [&](K kind, std::string says, std::string tries) {
        q.findings.push_back({kind, std::move(says), std::move(tries)});
    };
    if (e.clipped)
        tell(K::clipped, worded("the recording is clipped here"),
             worded("move the phone away or turn the level down"));
    bool const low_weak = q.low_above_floor && q.low_above_floor->value < barely_audible;
    bool const high_weak = q.high_above_floor && q.high_above_floor->value < barely_audible;
    if (low_weak && high_weak)
        tell(K::noisy,
             worded("the sound hardly rises above the background ({0})",
                    with_unit(q.low_above_floor->value, "dB")),
             worded("a quieter room, the phone at a hand's width beside the mouth"));
    else if (!e.reading.formants[0] || low_weak)
        tell(K::low_missing, worded("the low resonance does not stand out"),
             e.excitation.kind == ProbeKind::whisper
                 ? worded("whisper on an easy, slower breath, or creak instead")
                 : worded("a softer, lower creak with the jaw as for singing"));
    else if (!e.reading.formants[1] || high_weak || q.balance.value > most_balance)
        tell(K::high_missing,
             e.reading.formants[1] ? worded("the high resonance is weak ({0} below the low one)",
                                            with_unit(q.balance.value, "dB"))
                                   : worded("the high resonance is weak"),
             worded("keep the sides of the tongue at the upper teeth and the sound forward, as in a clear "
                    "spoken vowel"));
    if (q.filled < least_filled)
        tell(K::narrow, worded("only {0} of the spectrum is excited", with_unit(100 * q.filled, "%")),
             e.excitation.kind == ProbeKind::sung ? worded("creak on the vowel instead of singing it")
                                                  : worded("more breath, open lips, no hissing"));
    if (q.unsteadiness.value > most_unsteady)
        tell(K::unsteady,
             worded("the vowel moves ({0} from moment to moment)", with_unit(q.unsteadiness.value, "dB")),
             worded("hold jaw, lips and tongue still for a second"));
    if (in_seconds(q.length) < short_steady)
        tell(K::short_, worded("only {0} are steady", with_unit(1000 * in_seconds(q.length), "ms")),
             worded("hold it for a second"));
    auto const high = [&](std::size_t k) { return q.height[k] && *q.height[k] > clearly_high; };
    if (high(0) && high(1) && (high(2) || !q.height[2]))
        tell(K::all_high, worded("all resonances lie high"),
             worded("let the larynx rest low, with tongue and lips less far forward, as for singing"));
    if (q.height[1] && *q.height[1] < clearly_back && (q.balance.value > 20 || !e.reading.formants[2]))
        tell(K::tongue_back, worded("the second resonance lies low and the high band is weak"),
             worded("bring the tongue forward: it seems drawn back"));
    if (e.reading.noise_in_front)
        tell(K::noise_in_front, worded("the noise is made in the mouth"),
             worded("make it low in the throat, with the mouth open as for the vowel"));
    if (e.excitation.kind == ProbeKind::whisper && is_close(e.vowel))
        tell(K::close_whisper, worded("the low resonance of a whispered close vowel is unreliable"),
             worded("creak on this vowel"));
    return q;
}

} // namespace vowelway::analysis
