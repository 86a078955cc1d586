// SPDX-License-Identifier: MIT
#include "analysis/settle_processing.hpp"

#include "analysis/limited_voice.hpp"
#include "analysis/read_undone.hpp"
#include "analysis/undo.hpp"

#include <algorithm>

namespace vowelway::analysis {
namespace {

constexpr double restless = 0.85; // Heard::pause_unrest from which on noise suppression is thought of: ours

Frequency band_of_recording(Recording const& r) { return std::min(r.band, 0.5 * measuring_rate); }

void remark_on(ProcessingFound const& p, Recording const& r, Remarks& remarks) {
    remarks.push_back({Remark::Kind::caution, r.name + ": " + p.says + "; " + p.tries});
}

template <class Each> void takes_of(std::vector<Take>& takes, std::size_t recording, Each const& each) {
    for (std::size_t i = 0; i < takes.size(); ++i)
        if (takes[i].recording == recording && takes[i].usable()) each(i);
}

} // namespace

std::vector<std::optional<Reflection>> settle_reflections(std::vector<Take>& takes,
                                                          std::vector<Recording> const& recordings,
                                                          std::vector<HeardTake> const& heard) {
    std::vector<std::optional<Reflection>> all;
    for (std::size_t r = 0; r < recordings.size(); ++r) {
        std::vector<HeardTake> these;
        takes_of(takes, r, [&](std::size_t i) { these.push_back(heard[i]); });
        all.push_back(reflection_in(these, band_of_recording(recordings[r])));
        if (!all.back()) continue;
        Processing without;
        without.reflection = all.back();
        auto const& noise = recordings[r].heard.noise;
        takes_of(takes, r, [&](std::size_t i) {
            auto const samples = undone(heard[i].samples, measuring_rate, without);
            auto const spectrum = undone(*heard[i].spectrum, without);
            takes[i].excitation =
                recognise_excitation(samples, measuring_rate, &spectrum, noise ? &*noise : nullptr);
        });
    }
    return all;
}

std::vector<Processing> settle_processing(Measurements& m, std::vector<Recording> const& recordings,
                                          std::vector<HeardTake> const& heard,
                                          std::vector<std::optional<Reflection>> const& reflections) {
    std::vector<Processing> all;
    for (std::size_t r = 0; r < recordings.size(); ++r) {
        std::vector<HeardTake> these;
        auto kind = m.kinds[r].kind;
        takes_of(m.takes, r, [&](std::size_t i) {
            these.push_back(heard[i]);
            kind = m.takes[i].excitation.kind;
        });
        auto const& noise = recordings[r].heard.noise;
        all.push_back(processing_of(these, noise ? &*noise : nullptr, kind, band_of_recording(recordings[r]),
                                    reflections[r]));
        all.back().suppressed = recordings[r].heard.pause_unrest > restless;
        m.processing.push_back(told(all.back()));
        for (auto const& p : m.processing.back()) remark_on(p, recordings[r], m.remarks);
    }
    return all;
}

void tell_limited_voices(Measurements& m, std::vector<Recording> const& recordings) {
    for (std::size_t r = 0; r < recordings.size(); ++r) {
        std::vector<FormantReading const*> of_voice;
        for (auto const& t : m.takes)
            if (t.recording == r && is_voiced(t.excitation.kind)) of_voice.push_back(&t.measured);
        if (!looks_limited(of_voice)) continue;
        m.processing[r].push_back(told_of_limited_voice());
        remark_on(m.processing[r].back(), recordings[r], m.remarks);
    }
}

} // namespace vowelway::analysis
