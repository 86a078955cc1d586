// SPDX-License-Identifier: MIT
#include "vowelway/analysis/expectation.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr double sound_speed = 350; // m/s, warm and moist
constexpr double of_average = 0.10, of_own = 0.05;
constexpr double least_spread = 0.08, most_spread = 0.35;
constexpr double close_whisper_share = 0.6; // of the mean shift: a close fR1 is shifted less

VowelResonances const& nearest(Singer const& singer, Vowel const& vowel) {
    if (singer.vowels.empty())
        throw InputError(worded("the profile of {0} has no vowels to look for", singer.name),
                         worded("name a voice type instead, such as --voice tenor"));
    return *std::min_element(singer.vowels.begin(), singer.vowels.end(), [&](auto const& a, auto const& b) {
        return chart_distance(a.vowel, vowel) < chart_distance(b.vowel, vowel);
    });
}

Expected shifted(Frequency centre, Frequency sd, Frequency mean, Frequency shift_sd, double scale) {
    auto const there = std::max(centre + mean, hertz(120));
    double const own = sd / there, of_shift = shift_sd / there;
    double const spread = std::sqrt(own * own + of_shift * of_shift + scale * scale);
    return {there, std::clamp(spread, least_spread, most_spread)};
}

} // namespace

Frequency resonance_spacing(Singer const& singer) {
    if (singer.tract_length) return hertz(sound_speed / (2 * in_centimetres(*singer.tract_length) / 100));
    double sum = 0;
    int count = 0;
    for (auto const& v : singer.vowels)
        if (v.r3) sum += in_hertz(v.r3->centre) / 2.5, ++count;
    if (count >= 2) return hertz(sum / count);
    switch (singer.voice) {
    case VoiceType::bass:
    case VoiceType::baritone:
        return hertz(1000);
    case VoiceType::tenor:
        return hertz(1040);
    case VoiceType::countertenor:
        return hertz(1050);
    case VoiceType::alto:
        return hertz(1180);
    case VoiceType::mezzo:
        return hertz(1210);
    case VoiceType::soprano:
        return hertz(1240);
    case VoiceType::treble:
        return hertz(1400);
    case VoiceType::other:
        break;
    }
    return hertz(1130);
}

VowelExpectation expect(Singer const& singer, Vowel const& vowel, ProbeKind kind, ProbeShifts const& shifts) {
    auto const* const own = singer.find(vowel);
    auto const& known = own ? *own : nearest(singer, vowel);
    double const scale = std::hypot(singer.average ? of_average : of_own,
                                    own ? 0.0 : 0.06 * std::min(3.0, chart_distance(known.vowel, vowel)));
    auto const spacing = resonance_spacing(singer);
    bool const close = kind == ProbeKind::whisper && is_close(vowel);
    auto const first_mean = shifts.of[0].mean * (close ? close_whisper_share : 1.0);
    auto const third = known.r3 ? known.r3->centre : std::max(2.5 * spacing, 1.25 * known.r2.centre);
    auto const third_sd = known.r3 ? known.r3->sd : 0.1 * third;
    VowelExpectation found;
    found.formants.formants = {
        shifted(known.r1.centre, known.r1.sd, first_mean, shifts.of[0].sd(), scale),
        shifted(known.r2.centre, known.r2.sd, shifts.of[1].mean, shifts.of[1].sd(), scale),
        shifted(third, third_sd, shifts.of[2].mean, shifts.of[2].sd(), scale)};
    found.formants.spacing = spacing;
    found.taken_from = known.vowel;
    found.neighbour = own == nullptr;
    return found;
}

} // namespace vowelway::analysis
