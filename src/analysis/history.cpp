// SPDX-License-Identifier: MIT
#include "vowelway/analysis/history.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {

namespace {

constexpr double clear_deviations = 2;
constexpr double as_written = 0.1; // Hz: what writing a profile may round off

Change change(Measurement const& from, Measurement const& to) {
    auto const joint = [](Resonance const& a, Resonance const& b) {
        return Cents{std::hypot(a.sd_cents().value, b.sd_cents().value)};
    };
    Change out;
    out.r1 = interval(from.r1.centre, to.r1.centre);
    out.r2 = interval(from.r2.centre, to.r2.centre);
    out.r1_sd = joint(from.r1, to.r1);
    out.r2_sd = joint(from.r2, to.r2);
    out.r1_clear = std::abs(out.r1 / out.r1_sd) > clear_deviations;
    out.r2_clear = std::abs(out.r2 / out.r2_sd) > clear_deviations;
    return out;
}

} // namespace

Method method_of(ProbeKind kind) {
    switch (kind) {
    case ProbeKind::whisper:
        return Method::whisper;
    case ProbeKind::creak:
        return Method::creak;
    case ProbeKind::sung:
    case ProbeKind::spoken: // the folds swing in both: the same shift
        return Method::sung;
    }
    return Method::whisper;
}

std::vector<Measurement> measured_history(Measurements const& m, std::string const& date,
                                          std::string const& note) {
    std::vector<Measurement> all;
    for (auto const& v : m.vowels) {
        auto const& r = v.tract.resonances;
        if (!r[0] || !r[1]) continue;
        Measurement one;
        one.date = date;
        one.method = method_of(v.kind);
        one.vowel = v.vowel.quality();
        one.probes = v.takes;
        one.r1 = *r[0];
        one.r2 = *r[1];
        one.r3 = r[2];
        for (std::size_t k = 0; k < 3; ++k)
            if (v.measured.formants[k]) one.heard[k] = v.measured.formants[k]->centre;
        one.note = note;
        all.push_back(std::move(one));
    }
    // What is appended last becomes the vowel's current value: of several probes the surest.
    auto const sureness = [](Method how) { return how == Method::sung ? 2 : how == Method::creak ? 1 : 0; };
    std::stable_sort(all.begin(), all.end(), [&](Measurement const& a, Measurement const& b) {
        return sureness(a.method) < sureness(b.method);
    });
    return all;
}

std::vector<ProbeShift> learned_shifts(Measurements const& m, std::vector<ProbeShift> const& known,
                                       std::string const& date) {
    std::vector<ProbeShift> all;
    for (auto kind : {ProbeKind::whisper, ProbeKind::creak}) {
        auto const& learned = m.shifts[static_cast<std::size_t>(kind)];
        if (!m.learned || learned.pairs == 0) continue;
        ProbeShift shift;
        shift.method = method_of(kind);
        for (std::size_t k = 0; k < 3; ++k)
            shift.of[k] = ShiftOfResonance{learned.of[k].mean, learned.of[k].singer_sd};
        shift.pairs = learned.pairs;
        shift.date = date;
        for (auto const& old : known)
            if (old.method == shift.method) shift.recordings = old.recordings;
        for (auto const& digest : m.learned_from)
            if (std::find(shift.recordings.begin(), shift.recordings.end(), digest) == shift.recordings.end())
                shift.recordings.push_back(digest);
        all.push_back(shift);
    }
    return all;
}

Profile begin_profile(std::string const& name, VoiceType voice, Tuning const& tuning,
                      std::vector<Measurement> history, std::vector<ProbeShift> shifts) {
    Profile made;
    made.singer.name = name;
    made.singer.voice = voice;
    made.singer.tuning = tuning;
    for (auto const& h : history) {
        made.singer.provenance.date = h.date;
        made.singer.provenance.method = h.method;
        VowelResonances v;
        v.vowel = h.vowel;
        v.r1 = h.r1, v.r2 = h.r2, v.r3 = h.r3;
        std::erase_if(made.singer.vowels, [&](auto const& old) { return old.vowel == v.vowel; });
        made.singer.vowels.push_back(v);
    }
    made.history = std::move(history);
    made.shifts = std::move(shifts);
    return made;
}

std::vector<Measurement> sources_of(Profile const& profile) {
    auto const near = [](Resonance const& a, Resonance const& b) {
        return std::abs(in_hertz(a.centre - b.centre)) < as_written;
    };
    std::vector<Measurement> all;
    for (auto const& v : profile.singer.vowels) {
        if (v.estimated) continue;
        auto const found =
            std::find_if(profile.history.rbegin(), profile.history.rend(), [&](Measurement const& m) {
                return m.vowel.quality() == v.vowel.quality() && near(m.r1, v.r1) && near(m.r2, v.r2);
            });
        if (found != profile.history.rend()) all.push_back(*found);
    }
    return all;
}

std::vector<HistoryEntry> history_of(Profile const& profile, std::vector<Vowel> const& only) {
    std::vector<HistoryEntry> out;
    for (auto const& m : profile.history)
        if (only.empty() || std::any_of(only.begin(), only.end(),
                                        [&](Vowel const& v) { return v.quality() == m.vowel.quality(); }))
            out.push_back({m, std::nullopt});
    std::stable_sort(out.begin(), out.end(), [](HistoryEntry const& a, HistoryEntry const& b) {
        auto const& x = a.measurement;
        auto const& y = b.measurement;
        if (x.vowel != y.vowel) return before_on_the_rim(x.vowel, y.vowel);
        return x.date < y.date;
    });
    for (std::size_t i = 1; i < out.size(); ++i)
        if (out[i].measurement.vowel == out[i - 1].measurement.vowel)
            out[i].change = change(out[i - 1].measurement, out[i].measurement);
    return out;
}

} // namespace vowelway::analysis
