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

/// Pairs of the same vowel probed in two ways, and the recordings that they come from.
class Lessons {
  public:
    Lessons(Measurements& m, std::vector<Recording> const& recordings, MeasureRequest const& request)
        : m_(m), recordings_(recordings), request_(request), digests_(recordings.size()) {}

    void from_now() {
        for (auto const& w : m_.vowels) {
            if (w.kind != ProbeKind::whisper) continue;
            for (auto const& other : m_.vowels) {
                if (!(other.vowel == w.vowel) || other.kind == ProbeKind::whisper) continue;
                if (!fresh(w) || !fresh(other)) {
                    ++left_out;
                    continue;
                }
                count(w), count(other);
                add({w.measured, other.measured}, other.kind == ProbeKind::creak);
            }
        }
    }

    void from_earlier() {
        for (auto const& now : m_.vowels) {
            auto const* then = alone(now) ? first_in_two_ways(now, request_.earlier) : nullptr;
            if (!then || !fresh(now)) continue;
            count(now);
            auto const before = heard_then(*then, now.measured);
            bool const whispers = now.kind == ProbeKind::whisper;
            add({whispers ? now.measured : before, whispers ? before : now.measured},
                now.kind == ProbeKind::creak || then->method == Method::creak);
        }
    }

    int left_out = 0;
    std::vector<ProbePair> whisper_creak, whisper_sung;

  private:
    Measurements& m_;
    std::vector<Recording> const& recordings_;
    MeasureRequest const& request_;
    mutable std::vector<std::string> digests_; // made when asked for: few recordings teach

    std::string const& digest(std::size_t recording) const {
        auto& made = digests_[recording];
        if (made.empty()) made = digest_of(recordings_[recording].heard);
        return made;
    }

    void add(ProbePair pair, bool creaks) {
        (creaks ? whisper_creak : whisper_sung).push_back(std::move(pair));
    }
    std::vector<std::string> recordings_of(MeasuredVowel const& v) const {
        std::vector<std::string> all;
        for (auto const& t : m_.takes)
            if (t.usable() && t.excitation.kind == v.kind && t.vowel.quality() == v.vowel.quality())
                all.push_back(digest(t.recording));
        return all;
    }
    /// Holds a take of a recording that has not taught yet.
    bool fresh(MeasuredVowel const& v) const {
        auto const& taught = request_.taught;
        auto const all = recordings_of(v);
        return std::any_of(all.begin(), all.end(), [&](std::string const& one) {
            return std::find(taught.begin(), taught.end(), one) == taught.end();
        });
    }
    void count(MeasuredVowel const& v) {
        auto& from = m_.learned_from;
        for (auto const& one : recordings_of(v))
            if (std::find(from.begin(), from.end(), one) == from.end()) from.push_back(one);
    }
    /// Probed in this way only.
    bool alone(MeasuredVowel const& v) const {
        return std::none_of(m_.vowels.begin(), m_.vowels.end(), [&](MeasuredVowel const& other) {
            return other.vowel.quality() == v.vowel.quality() && other.kind != v.kind;
        });
    }
};

} // namespace

void learn_from_takes(Measurements& m, std::vector<Recording> const& recordings,
                      MeasureRequest const& request) {
    Lessons pairs(m, recordings, request);
    pairs.from_now();
    pairs.from_earlier();
    if (pairs.left_out > 0)
        m.remarks.push_back(
            {Remark::Kind::caution,
             pairs.left_out == 1
                 ? worded("the singer's shift was already learned from these recordings; 1 vowel "
                          "is not counted again")
                 : worded("the singer's shift was already learned from these recordings; "
                          "{0} vowels are not counted again",
                          pairs.left_out)});
    auto& whisper = m.shifts[index(ProbeKind::whisper)];
    if (!pairs.whisper_creak.empty())
        learn_shifts(whisper, m.shifts[index(ProbeKind::creak)], pairs.whisper_creak);
    else if (!pairs.whisper_sung.empty()) {
        auto sung = m.shifts[index(ProbeKind::sung)]; // what a low sung vowel shows is taken as it is
        learn_shifts(whisper, sung, pairs.whisper_sung);
    }
    m.learned = !pairs.whisper_creak.empty() || !pairs.whisper_sung.empty();
}

} // namespace vowelway::analysis
