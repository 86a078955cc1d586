// SPDX-License-Identifier: MIT
#include "vowelway/plan/sung_source.hpp"

#include "vowelway/acoustics/area_from_resonances.hpp"

namespace vowelway::plan {

acoustics::Source source_of(Technique const& t) {
    acoustics::Source source;
    source.slope = t.source_slope;
    source.upper_slope = t.upper_slope;
    source.upper_begins = t.upper_begins;
    source.upper_complete = t.upper_complete;
    return source;
}

Decibels loudness_of(SungNote const& note) { return {3.5 * note.dynamic.value_or(0)}; }

Length tract_length_of(Singer const& singer, std::span<VowelResonances const> planned) {
    if (singer.tract_length) return *singer.tract_length;
    return acoustics::estimate_tract_length(singer.vowels.empty() ? planned : std::span(singer.vowels));
}

} // namespace vowelway::plan
