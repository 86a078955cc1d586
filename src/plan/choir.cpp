// SPDX-License-Identifier: MIT
#include "vowelway/plan/choir.hpp"

#include "plan/executor_of.hpp"
#include "plan/shared_words.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::plan {

namespace {

Remarks remarks_of(std::vector<ChoirPart> const& parts) {
    Remarks out;
    auto const says = [](ChoirPart const& part, Remark const& remark) {
        return std::find(part.plan.remarks.begin(), part.plan.remarks.end(), remark) !=
               part.plan.remarks.end();
    };
    for (auto const& part : parts)
        for (auto const& remark : part.plan.remarks) {
            bool const common = std::all_of(parts.begin(), parts.end(),
                                            [&](ChoirPart const& other) { return says(other, remark); });
            Remark told{remark.kind, common ? remark.text : worded("{0}: {1}", part.name, remark.text)};
            if (std::find(out.begin(), out.end(), told) == out.end()) out.push_back(std::move(told));
        }
    return out;
}

/// The same vowel on the same pitches of the same parts.
bool same_chord(SharedWord const& a, SharedWord const& b, std::vector<ChoirPart> const& parts) {
    if (!(a.vowel == b.vowel)) return false;
    auto const pitch = [&](SungTogether const& s) {
        auto const& plan = parts[s.part].plan;
        return plan.passage.notes[plan.notes[s.note].note].pitch;
    };
    return std::equal(a.sections.begin(), a.sections.end(), b.sections.begin(), b.sections.end(),
                      [&](SungTogether const& x, SungTogether const& y) {
                          return x.part == y.part && std::abs(in_semitones(pitch(x) - pitch(y))) < 0.1;
                      });
}

/// Homophonic words first, then those that can be mended, then by weight; a chord that comes again stands
/// once.
void choose_what_to_rehearse(Choir& choir) {
    auto& words = choir.words;
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < words.size(); ++i)
        if (words[i].parts_company()) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (words[a].homophonic != words[b].homophonic) return words[a].homophonic;
        if (words[a].has_common != words[b].has_common) return words[a].has_common;
        return words[a].weight > words[b].weight;
    });
    for (auto const i : order) {
        auto const same = std::find_if(choir.rehearse.begin(), choir.rehearse.end(), [&](std::size_t before) {
            return same_chord(words[before], words[i], choir.parts);
        });
        if (same == choir.rehearse.end())
            choir.rehearse.push_back(i);
        else
            words[*same].also.push_back(i);
    }
    for (auto const i : choir.rehearse) std::sort(words[i].also.begin(), words[i].also.end());
}

} // namespace

Choir choir_of(std::vector<ChoirPart> parts, Technique const& technique, Means const& means) {
    Choir out;
    out.remarks = remarks_of(parts);
    out.parts = std::move(parts);
    out.words = shared_words(out.parts);
    std::vector<SectionVoice> voices;
    voices.reserve(out.parts.size());
    for (auto const& part : out.parts) voices.emplace_back(part.plan, technique, means);
    executor_of(means).run(out.words.size(), [&](std::size_t i) {
        listen(out.words[i], voices);
        out.words[i].why = why_apart(out.words[i], out.parts);
    });
    choose_what_to_rehearse(out);
    for (std::size_t i = 0; i < out.words.size(); ++i)
        if (out.words[i].sections.size() > 2) out.chords.push_back(chord_of(out.words[i], i, out.parts));
    return out;
}

} // namespace vowelway::plan
