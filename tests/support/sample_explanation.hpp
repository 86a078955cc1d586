// SPDX-License-Identifier: MIT
// Views that need more than a plan, made by hand: two voices compared, and one note explained. Simple
// formulas stand in for the planner and the acoustics; believable, repeatable, and of no authority.
#pragma once

#include "support/sample_plan.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/plan/explain.hpp"

namespace vowelway::sample {

/// The first singer's vowels of `singers`, in their order.
inline plan::Comparison comparison_of(std::vector<Singer> singers) {
    plan::Comparison c;
    c.singers = std::move(singers);
    for (std::size_t v = 0; v < c.singers.front().vowels.size(); ++v) {
        plan::ComparedRow row{.vowel = c.singers.front().vowels[v].vowel, .of = {}, .differences = {}};
        for (auto const& s : c.singers) {
            auto const& own = s.vowels[v];
            auto const at = [&](int n) {
                return plan::Crossing{Harmonic{n}, ResonanceNumber{1}, Pitch(own.r1.centre / double(n)),
                                      own.r1.sd_cents()};
            };
            row.of.push_back(plan::ComparedVowel{own, at(2), at(1)});
        }
        auto const& a = c.singers[0].vowels[v];
        auto const& b = c.singers[1].vowels[v];
        auto const joint = [](Resonance const& x, Resonance const& y) {
            return Cents{std::hypot(x.sd_cents().value, y.sd_cents().value)};
        };
        plan::Difference d{.first = 0,
                           .second = 1,
                           .r1 = interval(a.r1.centre, b.r1.centre),
                           .r2 = interval(a.r2.centre, b.r2.centre),
                           .r1_sd = joint(a.r1, b.r1),
                           .r2_sd = joint(a.r2, b.r2)};
        d.p_r1_higher = normal_below(d.r1.value / d.r1_sd.value);
        d.p_r2_higher = normal_below(d.r2.value / d.r2_sd.value);
        row.differences.push_back(d);
        c.rows.push_back(std::move(row));
    }
    return c;
}

/// Two peaks of 20 dB on a slope of -6 dB an octave.
inline Decibels level_at(double hz, double r1, double r2) {
    auto const peak = [&](double fr) { return 20 / (1 + std::pow((hz - fr) / 80, 2)); };
    return Decibels{70 - 6 * std::log2(hz / 100) + peak(r1) + peak(r2)};
}

/// A tube of 17 sections of a centimetre, wide in front of the place `narrow` (cm above the glottis).
inline acoustics::AreaFunction tube(double narrow) {
    acoustics::AreaFunction tract;
    for (int i = 0; i < 17; ++i)
        tract.push_back(
            {.length = centimetres(1), .area = square_centimetres(1 + 0.3 * std::abs(i - narrow))});
    return tract;
}

/// The note of a plan made by hand, which must be one to modify.
inline plan::NoteExplanation explanation_of(plan::Plan const& plan, std::size_t note) {
    auto const& planned = plan.notes[note];
    auto const& vowel = plan.vowels[*planned.vowel].resonances;
    plan::NoteExplanation e{.singer = plan.singer,
                            .technique = plan.technique,
                            .title = plan.passage.title,
                            .composer = plan.passage.composer,
                            .tuning = plan.passage.tuning,
                            .note = plan.passage.notes[note],
                            .syllable = plan.passage.notes[note].text(),
                            .vowel = vowel,
                            .decision = *planned.decision,
                            .harmonics = {},
                            .grid = {},
                            .kept = {},
                            .changed = {},
                            .shares = {.hold = 0.02, .migrate = 0.08, .modify = 0.9},
                            .draws = 50,
                            .remarks = {}};
    double const fo = in_hertz(e.note.pitch.frequency());
    for (int n = 1; n * fo <= 5000; ++n) e.harmonics.push_back(hertz(n * fo));
    for (double f = 50; f <= 5000; f += 50) e.grid.push_back(hertz(f));
    auto const shape = [&](Resonance const& r1, Resonance const& r2, double narrow,
                           plan::CostTerms const& cost) {
        plan::ShapeExplained s{.r1 = r1,
                               .r2 = r2,
                               .harmonics = {},
                               .curve = {},
                               .tract = tube(narrow),
                               .tract_objection = {},
                               .cost = cost};
        for (auto const& f : e.harmonics)
            s.harmonics.push_back(level_at(in_hertz(f), in_hertz(r1.centre), in_hertz(r2.centre)));
        for (auto const& f : e.grid)
            s.curve.push_back(level_at(in_hertz(f), in_hertz(r1.centre), in_hertz(r2.centre)));
        return s;
    };
    e.kept = shape(vowel.r1, vowel.r2, 12, {.text = 0.8, .ring = 1.1, .stability = 0.4, .line = 0.1});
    auto const& target = e.decision.target;
    e.changed = shape(target.r1, target.r2, 10,
                      {.text = 0.3, .ring = 0.2, .effort = 0.25, .attention = 0.1, .line = 0.2});
    return e;
}

} // namespace vowelway::sample
