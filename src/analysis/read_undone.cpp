// SPDX-License-Identifier: MIT
#include "analysis/read_undone.hpp"

#include "analysis/undo.hpp"
#include "core/closed_glottis.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double most_lost = 0.06; // of the power around F1 is left at least: 12 dB

/// A deviation in proportion, of F1 and of the others.
struct Share {
    double first, others;
};

/// Tuned on bench/measure_phones.cpp: of any microphone and small file, and of what the source leaves open
/// (a windpipe behind a creak; a limiter, which cannot be told from an even voice); more for a levelled sound
/// and one whose noise was suppressed.
struct Shares {
    Share any, levelled, suppressed;
};
constexpr Shares shares_of(ProbeKind kind) {
    if (kind == ProbeKind::whisper) return {{0.014, 0.012}, {0.05, 0.028}, {0.035, 0.018}};
    if (kind == ProbeKind::creak) return {{0.033, 0.014}, {0.06, 0.04}, {0.02, 0.015}};
    return {{0.024, 0.018}, {0, 0}, {0.015, 0.012}};
}

/// A whisper that poles alone describe is this white after prediction (cascades of resonators: 0.97 to 0.99);
/// what is `one_misfit` less is not understood at all. Then a wide pole may lie anywhere in its width.
constexpr double understood = 0.972, one_misfit = 0.02, of_width = 0.05, of_misfit = 0.15;

double of_what_is_not_understood(Formant const& f, double whiteness) {
    double const missing = std::max(0.0, understood - whiteness);
    return std::hypot(of_width * std::min(missing / one_misfit, 1.0) * in_hertz(f.bandwidth),
                      of_misfit * missing * in_hertz(f.centre));
}

constexpr double widest =
    2.5; // times a tract's least, of a voice (ours: with losses twice as great, and their error)
double too_wide(Formant const& f) {
    return std::max(0.0, in_hertz(f.bandwidth) - widest * in_hertz(closed_glottis_bandwidth(f.centre)));
}

/// A pole errs alike along the circle and across it: what its bandwidth is too narrow or too wide by for a
/// tract with the glottis closed, its centre may be off by half of (bandwidths are twice the distance from
/// the circle). A limiter does both, an open glottis the latter.
double of_bandwidth(Formant const& f) {
    double const least = in_hertz(closed_glottis_bandwidth(f.centre));
    return std::max(least - in_hertz(f.bandwidth), too_wide(f)) / 2;
}

/// An open glottis makes a whisper's F1 wide by itself. A wider F2 or F3 stands for more than one thing: two
/// formants, or one that a zero of the source hides in part. Tuned on whispers of model tracts as they are
/// (poles wider than a quarter of F2 held in 95 %).
constexpr double of_width_too_much = 0.3;

/// Of what making a low cut good moves. Of pulses half of it: F1 and F2 are held in 94 to 100 %, and a tenth
/// more of them are clear than with all of it. The bottom of a whisper's source is not known as well.
constexpr double of_cut(ProbeKind kind) { return kind == ProbeKind::whisper ? 1 : 0.5; }

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
        auto const of = [&](Share const& s) { return k == 0 ? s.first : s.others; };
        double more = std::hypot(of(shares.any), p.evened() ? of(shares.levelled) : 0,
                                 p.suppressed ? of(shares.suppressed) : 0) *
                      in_hertz(f->centre);
        if (p.kind == ProbeKind::whisper)
            more = std::hypot(more, of_what_is_not_understood(*f, reading.whiteness),
                              k > 0 ? of_width_too_much * too_wide(*f) : 0);
        if (is_voiced(p.kind)) more = std::hypot(more, of_bandwidth(*f));
        if (auto const& r = raw.formants[k]; r && p.changes_spectrum()) {
            double const moved = in_hertz(f->centre - r->centre);
            double const of_reflection = !p.reflection        ? 0
                                         : p.reflection->sure ? p.reflection->gain_sd / p.reflection->gain
                                                              : 1;
            double const open = std::hypot(of_reflection, p.low_cut ? of_cut(p.kind) : 0);
            more = std::hypot(more, std::min(open, 1.0) * moved);
        }
        f->sd = hertz(std::hypot(in_hertz(f->sd), more));
    }
}

ReadUndone read_undone(std::span<float const> steady, Frequency rate, Expectation const& expectation,
                       FormantOptions const& options, Processing const& p) {
    // Both fill and empty a spectrum, which passes for zeros.
    Zeros const zeros{!p.evened(), !p.suppressed, {}};
    ReadUndone out;
    FormantReading raw;
    if (p.changes_spectrum()) {
        auto const samples = undone(steady, rate, p);
        std::vector<PowerSpectrum> blocks;
        for (auto const& b : options.blocks) blocks.push_back(undone(b, p));
        std::optional<PowerSpectrum> noise;
        if (options.noise) noise = undone(*options.noise, p);
        auto now = options;
        now.blocks = blocks;
        now.noise = noise ? &*noise : nullptr;
        out.looks = look_usually(samples, rate, expectation, now, zeros);
        out.reading = read_looks(out.looks, expectation, now);
        // The source's zeros are those of the undone sound: only what undoing moved is asked for.
        raw = read_looks(
            look_usually(steady, rate, expectation, options, {true, zeros.trusted, out.looks.whitenings}),
            expectation, options);
    } else {
        out.looks = look_usually(steady, rate, expectation, options, zeros);
        out.reading = read_looks(out.looks, expectation, options);
    }
    if (p.evened() || p.suppressed) out.reading.noise_in_front = false;
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
    case ProcessingFound::Kind::suppressed:
        return "suppressed";
    case ProcessingFound::Kind::levelled:
        return "levelled";
    case ProcessingFound::Kind::even:
        return "even";
    case ProcessingFound::Kind::limited:
        return "limited";
    }
    return "";
}

std::vector<ProcessingFound> told(Processing const& p) {
    using Kind = ProcessingFound::Kind;
    std::vector<ProcessingFound> all;
    if (p.reflection) {
        auto const later = text("%.1f ms", 1000 * in_seconds(p.reflection->delay)),
                   strong = text("%.0f %%", 100 * p.reflection->gain);
        all.push_back(
            {Kind::reflection,
             p.reflection->sure
                 ? worded("a reflection from a table or a wall is heard ({0} later, {1} as strong) and was "
                          "taken out",
                          later, strong)
                 : worded("there may be a reflection from a table or a wall ({0} later, {1} as strong); the "
                          "deviations are wider for it",
                          later, strong),
             worded("hold the phone closer to the mouth and away from the table")});
    }
    if (p.low_cut)
        all.push_back({Kind::low_cut,
                       worded("the phone cuts what lies below {0}; this was made good as far as can be",
                              text("%.0f Hz", in_hertz(p.low_cut->corner))),
                       worded("switch off voice enhancement, or use another program to record")});
    if (p.suppressed)
        all.push_back(
            {Kind::suppressed,
             worded("the pauses are not even, as where noise is suppressed; the deviations are wider for it"),
             worded("switch off noise suppression and voice enhancement")});
    if (p.evenness == Evenness::levelled)
        all.push_back({Kind::levelled,
                       worded("its peaks are all alike, as where a phone evens out the level; the deviations "
                              "are wider for it"),
                       worded("if it does, switch off automatic level and voice enhancement")});
    if (p.evenness == Evenness::like_levelled)
        all.push_back({Kind::even,
                       worded("the level is as even as a gain control leaves it; the deviations are wider "
                              "for it"),
                       worded("if voice enhancement or automatic level is on, switch it off")});
    return all;
}

ProcessingFound told_of_limited_voice() {
    return {
        ProcessingFound::Kind::limited,
        worded("the resonances are far wider and narrower by turns, as where a limiter evens out each "
               "pulse of the voice, or a table close by reflects it; the deviations are wider for it"),
        worded("switch off automatic level and voice enhancement, and hold the phone away from the table")};
}

} // namespace vowelway::analysis
