// SPDX-License-Identifier: MIT
#include "analysis/learn_from_takes.hpp"

#include "vowelway/analysis/history.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>

namespace vowelway::analysis {
namespace {

/// FNV-1a (G. Fowler, L. C. Noll & K.-P. Vo, 1991) over what sounds, to 16 bits.
std::string digest_of(Heard const& heard) {
    std::uint64_t hash = 14695981039346656037U;
    for (auto const& s : heard.stretches)
        for (float x : s.samples) {
            auto const value = static_cast<std::uint16_t>(
                static_cast<std::int16_t>(std::lround(std::clamp(x, -1.0F, 1.0F) * 32767)));
            for (unsigned const byte : {value & 0xffU, static_cast<unsigned>(value) >> 8U})
                hash = (hash ^ byte) * 1099511628211U;
        }
    char text[20];
    std::snprintf(text, sizeof text, "%016llx", static_cast<unsigned long long>(hash));
    return text;
}

/// A vowel repeats on another day within this share of F (our judgement).
constexpr double from_day_to_day = 0.015;

/// As it was heard on an earlier day; as sure as `now` is, and the days apart.
FormantReading heard_then(Measurement const& then, FormantReading const& now) {
    FormantReading reading;
    for (std::size_t k = 0; k < 3; ++k)
        if (then.heard[k] && now.formants[k]) {
            auto const& f = *now.formants[k];
            double const share = std::hypot(f.sd / f.centre, from_day_to_day);
            reading.formants[k] = Formant{*then.heard[k], share * *then.heard[k], f.bandwidth};
        }
    return reading;
}

/// The last earlier probe of the vowel in another way, if there was none in this one.
Measurement const* first_in_two_ways(MeasuredVowel const& now, std::vector<Measurement> const& earlier) {
    Measurement const* other = nullptr;
    auto const how = method_of(now.kind);
    for (auto const& then : earlier) {
        if (!(then.vowel.quality() == now.vowel.quality()) || !then.heard[0]) continue;
        if (then.method == how) return nullptr;
        bool const teaches = how == Method::whisper
                                 ? then.method == Method::creak || then.method == Method::sung
                                 : then.method == Method::whisper;
        if (teaches) other = &then;
    }
    return other;
}

} // namespace

void learn_from_takes(Measurements& m, std::vector<Recording> const& recordings,
                      MeasureRequest const& request) {
    auto const& taught = request.taught;
    std::vector<std::string> digests;
    for (auto const& r : recordings) digests.push_back(digest_of(r.heard));
    auto const known = [&](std::size_t recording) {
        auto const& all = digests[recording];
        return std::find(taught.begin(), taught.end(), all) != taught.end();
    };
    auto const takes_of = [&](MeasuredVowel const& v, auto&& each) {
        for (auto const& t : m.takes)
            if (t.usable() && t.excitation.kind == v.kind && t.vowel.quality() == v.vowel.quality())
                each(t.recording);
    };
    auto const teach = [&](MeasuredVowel const& v) {
        takes_of(v, [&](std::size_t r) {
            auto& from = m.learned_from;
            if (std::find(from.begin(), from.end(), digests[r]) == from.end()) from.push_back(digests[r]);
        });
    };
    int left_out = 0;
    std::vector<ProbePair> whisper_creak, whisper_sung;
    for (auto const& w : m.vowels) {
        if (w.kind != ProbeKind::whisper) continue;
        for (auto const& other : m.vowels) {
            if (!(other.vowel == w.vowel) || other.kind == ProbeKind::whisper) continue;
            bool new_whisper = false, new_other = false;
            takes_of(w, [&](std::size_t r) { new_whisper = new_whisper || !known(r); });
            takes_of(other, [&](std::size_t r) { new_other = new_other || !known(r); });
            if (!new_whisper || !new_other) {
                ++left_out;
                continue;
            }
            teach(w), teach(other);
            if (other.kind == ProbeKind::creak) whisper_creak.push_back({w.measured, other.measured});
            if (is_voiced(other.kind)) whisper_sung.push_back({w.measured, other.measured});
        }
    }
    auto const alone = [&](MeasuredVowel const& v) {
        return std::none_of(m.vowels.begin(), m.vowels.end(), [&](MeasuredVowel const& other) {
            return other.vowel.quality() == v.vowel.quality() && other.kind != v.kind;
        });
    };
    for (auto const& now : m.vowels) {
        auto const* then = alone(now) ? first_in_two_ways(now, request.earlier) : nullptr;
        bool fresh = false;
        if (then) takes_of(now, [&](std::size_t r) { fresh = fresh || !known(r); });
        if (!fresh) continue;
        teach(now);
        auto const before = heard_then(*then, now.measured);
        bool const whispers = now.kind == ProbeKind::whisper;
        ProbePair pair{whispers ? now.measured : before, whispers ? before : now.measured};
        bool const creaks = now.kind == ProbeKind::creak || then->method == Method::creak;
        (creaks ? whisper_creak : whisper_sung).push_back(std::move(pair));
    }
    if (left_out > 0)
        m.remarks.push_back(
            {Remark::Kind::caution,
             left_out == 1 ? worded("the singer's shift was already learned from these recordings; 1 vowel "
                                    "is not counted again")
                           : worded("the singer's shift was already learned from these recordings; "
                                    "{0} vowels are not counted again",
                                    left_out)});
    auto& whisper = m.shifts[index(ProbeKind::whisper)];
    if (!whisper_creak.empty())
        learn_shifts(whisper, m.shifts[index(ProbeKind::creak)], whisper_creak);
    else if (!whisper_sung.empty()) {
        auto sung = m.shifts[index(ProbeKind::sung)]; // what a low sung vowel shows is taken as it is
        learn_shifts(whisper, sung, whisper_sung);
    }
    m.learned = !whisper_creak.empty() || !whisper_sung.empty();
}

} // namespace vowelway::analysis
