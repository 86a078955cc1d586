// SPDX-License-Identifier: MIT
#include "analysis/learn_from_takes.hpp"
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

} // namespace

void learn_from_takes(Measurements& m, std::vector<Recording> const& recordings,
                      std::vector<std::string> const& taught) {
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
            for (auto const* v : {&w, &other})
                takes_of(*v, [&](std::size_t r) {
                    auto& from = m.learned_from;
                    if (std::find(from.begin(), from.end(), digests[r]) == from.end())
                        from.push_back(digests[r]);
                });
            if (other.kind == ProbeKind::creak) whisper_creak.push_back({w.measured, other.measured});
            if (is_voiced(other.kind)) whisper_sung.push_back({w.measured, other.measured});
        }
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
