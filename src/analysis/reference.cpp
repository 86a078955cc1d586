// SPDX-License-Identifier: MIT
#include "vowelway/analysis/reference.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace vowelway::analysis {

Singer reference_singer(Singer const& own, Singer const& average) {
    auto reference = own;
    double sum = 0;
    int count = 0;
    for (auto const& v : own.vowels)
        if (auto const* a = average.find(v.vowel)) sum += std::log(v.r2.centre / a->r2.centre), ++count;
    double const scale = count > 0 ? std::exp(sum / count) : 1;
    for (auto v : average.vowels) {
        if (own.find(v.vowel)) continue;
        for (auto* r : {&v.r1, &v.r2}) r->centre *= scale;
        if (v.r3) v.r3->centre *= scale;
        reference.vowels.push_back(v);
    }
    if (!reference.tract_length && average.tract_length)
        reference.tract_length = *average.tract_length / scale;
    if (own.vowels.empty()) reference.average = true;
    return reference;
}

void use_shifts(MeasureRequest& request, Profile const& profile) {
    request.earlier = profile.history;
    for (auto const& learned : profile.shifts) {
        auto const kind = learned.method == Method::creak ? ProbeKind::creak : ProbeKind::whisper;
        auto& shifts = request.shifts[static_cast<std::size_t>(kind)];
        for (std::size_t k = 0; k < 3; ++k)
            if (learned.of[k]) {
                shifts.of[k].mean = learned.of[k]->mean;
                shifts.of[k].singer_sd = learned.of[k]->sd;
            }
        shifts.pairs = learned.pairs;
        request.taught.insert(request.taught.end(), learned.recordings.begin(), learned.recordings.end());
    }
}

void add_remarks(Measurements& m, Remarks before, Singer const& reference) {
    if (reference.average)
        before.push_back({Remark::Kind::assumed,
                          worded("the resonances are expected near those of the {0}", reference.name)});
    m.remarks.insert(m.remarks.begin(), before.begin(), before.end());
    m.remarks.push_back(
        {Remark::Kind::caution,
         worded("whisper or creak softly and briefly; stop if it tires you; this is not medical advice")});
}

Frequency band_of(Frequency rate) { return 0.95 * std::min(rate / 2.0, measuring_rate / 2.0); }

void warn_of_band(std::string const& name, Frequency rate, Remarks& remarks) {
    if (rate >= hertz(11000)) return;
    auto const highest = std::to_string(static_cast<int>(std::nearbyint(in_hertz(rate) / 2)));
    remarks.push_back(
        {Remark::Kind::caution, worded("{0} has nothing above {1} Hz; fR3 may be missing", name, highest)});
}

} // namespace vowelway::analysis
