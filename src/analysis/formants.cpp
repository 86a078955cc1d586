// SPDX-License-Identifier: MIT
#include "vowelway/analysis/formants.hpp"

#include "analysis/looks.hpp"
#include "analysis/median.hpp"
#include "analysis/pole_matching.hpp"
#include "core/closed_glottis.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace vowelway::analysis {
namespace {

// How the deviation is put together; tuned until the 95 % interval held the truth in 92 to 98 % of
// synthetic probes of each kind (bench/measure_accuracy.cpp).
constexpr double harmonic_share =
    0.10; // of fo at 300 Hz, falling with fo: error from the spacing of harmonics
/// Of fo, where the harmonics rather than the tract made a resonance: of F1, as far as it is narrower than
/// any tract's (a harmonic has no width); of F1 and F2, as far as they lie nearer than two harmonics'
/// distance. Tuned on voices of 80 to 310 Hz (bench/measure_phones.cpp): F1 erred by 0.15 to 0.2 fo in both
/// cases.
constexpr double of_harmonic = 0.2, of_crowded = 0.15;
constexpr double least_share = 0.001;                   // of F: never claimed to be better
constexpr double model_factor = 0.8;                    // of the spread over settings
constexpr double of_zeros = 0.45, most_of_zeros = 0.08; // of what taking them out of a whisper moves
/// Of what the other closures would move: one in six of those chosen among two is wrong (closures.cpp).
constexpr double of_closures = 0.4;

/// One formant under one setting.
struct Vote {
    Pole pole;
    std::optional<double> variance; ///< random part; of every second look
};

template <class Get> double median_of(std::vector<Vote> const& votes, Get get) {
    std::vector<double> values;
    for (auto const& v : votes) values.push_back(get(v));
    return median(std::move(values));
}

double centre_of(Vote const& v) { return in_hertz(v.pole.centre); }

Formant combine(std::vector<Vote> const& votes, FormantOptions const& options) {
    double const centre = median_of(votes, centre_of);
    double const width = median_of(votes, [](Vote const& v) { return in_hertz(v.pole.bandwidth); });
    std::vector<double> variances; // more than half of all looks voted: some of them have one
    for (auto const& v : votes)
        if (v.variance) variances.push_back(*v.variance);
    double const random = variances.empty() ? 0 : median(std::move(variances));
    double const spread = sd_over_median_distance *
                          median_of(votes, [&](Vote const& v) { return std::abs(centre_of(v) - centre); });
    double const fo = is_voiced(options.kind) && options.fo ? in_hertz(*options.fo) : 0;
    double const variance = random + std::pow(model_factor * spread, 2) +
                            std::pow(harmonic_share * fo * fo / 300, 2) + std::pow(least_share * centre, 2);
    return {hertz(centre), hertz(std::sqrt(variance)), hertz(std::max(width, 1.0))};
}

/// What taking the zeros out has moved stays open in part, and what the folds closing otherwise would move.
void widen_by_others(FormantReading& reading, Looks const& looks, Expectation const& expectation,
                     FormantOptions const& options) {
    for (std::size_t k = 0; k < 3; ++k) {
        auto& f = reading.formants[k];
        std::vector<double> centres;
        for (auto const& one : looks.otherwise)
            if (auto const pole =
                    match_poles(one.poles, expectation, widest_formant(options.kind)).formants[k])
                centres.push_back(in_hertz(pole->centre));
        if (!f || centres.empty()) continue;
        double const moved = median(std::move(centres)) - in_hertz(f->centre);
        bool const zeros = options.kind == ProbeKind::whisper;
        double const most = zeros && looks.trusted ? most_of_zeros * in_hertz(f->centre) : std::abs(moved);
        double const open = std::min((zeros ? of_zeros : of_closures) * std::abs(moved), most);
        f->sd = hertz(std::hypot(in_hertz(f->sd), open));
    }
}

void widen_by_harmonics(FormantReading& reading, FormantOptions const& options) {
    auto &f1 = reading.formants[0], &f2 = reading.formants[1];
    if (!is_voiced(options.kind) || !options.fo || !f1) return;
    double const least = in_hertz(closed_glottis_bandwidth(f1->centre));
    double const narrow = std::clamp(1 - in_hertz(f1->bandwidth) / least, 0.0, 1.0);
    double const near = f2 ? std::clamp(2 - (f2->centre - f1->centre) / *options.fo, 0.0, 1.0) : 0;
    double const fo = in_hertz(*options.fo), crowded = of_crowded * near * fo;
    f1->sd = hertz(std::hypot(in_hertz(f1->sd), of_harmonic * narrow * fo, crowded));
    if (f2) f2->sd = hertz(std::hypot(in_hertz(f2->sd), crowded));
}

/// Not asked of F1: it is held without, and the poles that a source in the mouth has below it would leave
/// right values unclear.
void widen_by_choice(Formant& f, std::size_t k, std::vector<Match> const& matches, Looks const& looks,
                     Expectation const& expectation, FormantOptions const& options) {
    double open = 0;
    int voted = 0;
    for (std::size_t i = 0; i < matches.size(); ++i) {
        open +=
            variance_of_choice(matches[i], k, looks.each[i].poles, expectation, widest_formant(options.kind));
        voted += matches[i].formants[k].has_value();
    }
    f.sd = hertz(std::sqrt(in_hertz(f.sd) * in_hertz(f.sd) + open / voted));
}

} // namespace

std::string_view to_string(ProbeKind kind) {
    switch (kind) {
    case ProbeKind::whisper:
        return to_word("whisper");
    case ProbeKind::creak:
        return to_word("creak");
    case ProbeKind::sung:
        return to_word("sung");
    case ProbeKind::spoken:
        return to_word("spoken");
    }
    return "";
}

std::optional<ProbeKind> parse_probe_kind(std::string_view name) {
    for (auto kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung, ProbeKind::spoken})
        if (to_string(kind) == name) return kind;
    return std::nullopt;
}

std::vector<LookSetting> usual_settings(Expectation const& expectation, Frequency top, ProbeKind kind) {
    std::vector<LookSetting> settings;
    for (double count = 3.5; count <= 5.5; count += kind == ProbeKind::whisper ? 0.5 : 1) {
        auto const ceiling = std::min(expectation.spacing * count, top);
        bool const seen = std::any_of(settings.begin(), settings.end(),
                                      [&](LookSetting const& s) { return s.ceiling == ceiling; });
        if (seen) continue;
        auto const formants = static_cast<int>(std::lround(ceiling / expectation.spacing));
        for (int extra : {0, 1, 2, 4}) settings.push_back({ceiling, 2 * formants + extra});
    }
    return settings;
}

Frequency widest_formant(ProbeKind kind) { return kind == ProbeKind::whisper ? hertz(700) : hertz(450); }

Looks look_usually(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                   FormantOptions const& options, Zeros const& zeros) {
    if (in_seconds(static_cast<double>(steady.size()) / rate) < in_seconds(shortest_steady)) return {};
    auto const top = std::min(options.band_limit.value_or(rate / 2.0), rate / 2.0);
    auto const settings =
        options.settings.empty() ? usual_settings(expectation, top, options.kind) : options.settings;
    return look(steady, rate, settings, options, zeros);
}

FormantReading read_looks(Looks const& looks, Expectation const& expectation, FormantOptions const& options) {
    FormantReading reading;
    if (looks.frames == 0) return reading;
    std::vector<Match> matches;
    for (auto const& one : looks.each)
        matches.push_back(match_poles(one.poles, expectation, widest_formant(options.kind)));
    for (std::size_t k = 0; k < 3; ++k) {
        std::vector<Vote> votes;
        for (std::size_t i = 0; i < matches.size(); ++i)
            if (auto const& pole = matches[i].formants[k])
                votes.push_back(
                    {*pole, variance_of_centre(looks.each[i], *pole, looks.noise_samples, options)});
        if (2 * votes.size() < matches.size() + 1) continue;
        reading.formants[k] = combine(votes, options);
        if (k > 0) widen_by_choice(*reading.formants[k], k, matches, looks, expectation, options);
        if (k < 2) reading.settings = static_cast<int>(votes.size());
    }
    widen_by_others(reading, looks, expectation, options);
    widen_by_harmonics(reading, options);
    // One pole where two are due close together may be both: then neither is known.
    auto const& due = expectation.formants;
    if (!reading.formants[1] && due[1].centre < 2.5 * due[0].centre) reading.formants[0].reset();
    reading.whiteness = looks.whiteness;
    reading.noise_in_front = looks.in_front;
    reading.frames = looks.frames;
    reading.fo = options.fo;
    return reading;
}

FormantReading read_formants(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                             FormantOptions const& options) {
    return read_looks(look_usually(steady, rate, expectation, options), expectation, options);
}

} // namespace vowelway::analysis
