// SPDX-License-Identifier: MIT
#include "analysis/read_undone.hpp"

#include "analysis/undo.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double most_lost = 0.06; // of the power around F1 is left at least: 12 dB

/// Deviations in proportion for F1 and the others, tuned on bench/measure_phones.cpp: of any microphone and
/// small file, of a levelled sound, and of what undoing a low cut moves.
struct Shares {
    double first, others, first_levelled, others_levelled, of_low_cut;
};
constexpr Shares shares_of(ProbeKind kind) {
    if (kind == ProbeKind::whisper) return {0.012, 0.010, 0.012, 0.006, 1};
    if (kind == ProbeKind::creak) return {0.018, 0.009, 0.05, 0.025, 1};
    return {0.016, 0.009, 0, 0, 1};
}

template <class... Values> std::string text(char const* form, Values... values) {
    char all[300];
    std::snprintf(all, sizeof all, form, values...);
    return all;
}

} // namespace

void widen(FormantReading& reading, FormantReading const& raw, Processing const& p) {
    auto const shares = shares_of(p.kind);
    for (std::size_t k = 0; k < reading.formants.size(); ++k) {
        auto& f = reading.formants[k];
        if (!f) continue;
        double share = k == 0 ? shares.first : shares.others;
        if (p.levelled) share = std::hypot(share, k == 0 ? shares.first_levelled : shares.others_levelled);
        double more = share * in_hertz(f->centre);
        if (auto const& r = raw.formants[k]; r && p.changes_spectrum()) {
            double const moved = in_hertz(f->centre - r->centre);
            double const open = std::hypot(p.reflection ? p.reflection->gain_sd / p.reflection->gain : 0,
                                           p.low_cut ? shares.of_low_cut : 0);
            more = std::hypot(more, std::min(open, 1.0) * moved);
        }
        f->sd = hertz(std::hypot(in_hertz(f->sd), more));
    }
}

ReadUndone read_undone(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                       FormantOptions const& options, Processing const& p) {
    ReadUndone out{look_usually(steady, rate, expectation, options), {}};
    out.reading = read_looks(out.looks, expectation, options);
    auto const raw = out.reading;
    if (p.changes_spectrum()) {
        auto const samples = undone(steady, rate, p);
        std::vector<PowerSpectrum> blocks;
        for (auto const& b : options.blocks) blocks.push_back(undone(b, p));
        std::optional<PowerSpectrum> noise;
        if (options.noise) noise = undone(*options.noise, p);
        auto now = options;
        now.blocks = blocks;
        now.noise = noise ? &*noise : nullptr;
        out.looks = look_usually(samples, rate, expectation, now);
        out.reading = read_looks(out.looks, expectation, now);
    }
    widen(out.reading, raw, p);
    return out;
}

std::string why_not_heard(FormantReading const& reading, Processing const& p) {
    if (!p.low_cut || !reading.formants[0]) return {};
    if (response(*p.low_cut, reading.formants[0]->centre) > most_lost) return {};
    return worded(
        "the phone cuts what lies below {0}, and F1 with it: switch off voice enhancement, or use another "
        "program to record",
        text("%.0f Hz", in_hertz(p.low_cut->corner)));
}

std::string_view to_string(ProcessingFound::Kind kind) {
    switch (kind) {
    case ProcessingFound::Kind::reflection:
        return "reflection";
    case ProcessingFound::Kind::low_cut:
        return "low cut";
    case ProcessingFound::Kind::levelled:
        return "levelled";
    }
    return "";
}

std::vector<ProcessingFound> told(Processing const& p) {
    using Kind = ProcessingFound::Kind;
    std::vector<ProcessingFound> all;
    if (p.reflection)
        all.push_back(
            {Kind::reflection,
             worded(
                 "a reflection from a table or a wall is heard ({0} later, {1} as strong) and was taken out",
                 text("%.1f ms", 1000 * in_seconds(p.reflection->delay)),
                 text("%.0f %%", 100 * p.reflection->gain)),
             worded("hold the phone closer to the mouth and away from the table")});
    if (p.low_cut)
        all.push_back({Kind::low_cut,
                       worded("the phone cuts what lies below {0}; this was made good as far as can be",
                              text("%.0f Hz", in_hertz(p.low_cut->corner))),
                       worded("switch off voice enhancement, or use another program to record")});
    if (p.levelled)
        all.push_back({Kind::levelled,
                       worded("its peaks are all alike, as where a phone evens out the level; the deviations "
                              "are wider for it"),
                       worded("if it does, switch off automatic level and voice enhancement")});
    return all;
}

} // namespace vowelway::analysis
