// SPDX-License-Identifier: MIT
#include "vowelway/plan/explain.hpp"

#include "plan/decided.hpp"
#include "plan/read_all.hpp"
#include "plan/reading.hpp"
#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <stdexcept>
#include <utility>

namespace vowelway::plan {

namespace {

constexpr Frequency grid_step = hertz(10), grid_from = hertz(50), grid_to = hertz(5000);

std::vector<Frequency> frequency_grid() {
    std::vector<Frequency> out;
    for (auto f = grid_from; f <= grid_to; f += grid_step) out.push_back(f);
    return out;
}

// The tract's gain with the resonances as wide as the planner takes them.
std::vector<Decibels> curve_of(acoustics::ResonanceSet shape, std::vector<Frequency> const& grid,
                               Frequency quarter) {
    for (auto& peak : shape.peaks) peak.bandwidth = acoustics::Blur{}.widened(peak);
    std::vector<Decibels> out;
    for (auto const& f : grid) out.push_back(tract_gain(shape, f, quarter));
    return out;
}

// The bound of area_from_resonances: 20 cm² for a tract of 17 cm, growing with the square of the length.
std::string objection_to(acoustics::AreaFunction const& tract) {
    double widest = 0;
    for (auto const& section : tract) widest = std::max(widest, in_square_centimetres(section.area));
    double const size = in_centimetres(length_of(tract)) / 17;
    return widest > 20 * size * size ? worded("wider than a human mouth: trust the direction, not the size")
                                     : "";
}

Resonance moved(Resonance resonance, int by_semitones) {
    resonance.centre *= std::exp2(by_semitones / 12.0);
    resonance.sd *= std::exp2(by_semitones / 12.0);
    return resonance;
}

// The cheapest shape but the vowel's own.
std::optional<std::size_t> best_other(Decided const& decided, std::size_t index) {
    auto const& grid = decided.strategy.grid();
    auto const& efforts = decided.strategy.models()[decided.work.tasks[index].vowel].efforts;
    std::optional<std::size_t> best;
    double least = 0;
    for (std::size_t s = 0; s < grid.size(); ++s) {
        if (s == grid.home() || efforts[s] >= out_of_reach) continue;
        double const cost = cost_beside(decided, index, s).total();
        if (best && cost >= least) continue;
        best = s;
        least = cost;
    }
    return best;
}

void refuse_unexplainable(Passage const& passage, std::size_t note) {
    if (note >= passage.notes.size()) throw std::out_of_range("the passage has no such note");
    if (auto const& sung = passage.notes[note]; !sung.vowel)
        throw InputError(sung.hummed ? worded("the note is hummed: there is no vowel to explain")
                                     : worded("the vowel of the note is not known"),
                         worded("ask for a note with a vowel"),
                         {.file = {}, .musical = worded("bar {0}", sung.measure)});
}

ShapeExplained explained(Decided const& decided, std::size_t index, std::size_t shape, Resonance const& r1,
                         Resonance const& r2, acoustics::NoteSpectrum const& spectrum,
                         std::vector<Frequency> const& grid) {
    auto const& strategy = decided.strategy;
    auto const& reach = *strategy.models()[decided.work.tasks[index].vowel].reach;
    auto const quarter = strategy.space().quarter();
    auto const set = acoustics::resonance_set(r1.centre, r2.centre, quarter);
    auto const gesture = shape == strategy.grid().home() ? acoustics::GestureVector{}
                                                         : gesture_of(strategy.grid(), shape, reach);
    auto tract = reach.tract(gesture);
    auto objection = objection_to(tract);
    return {r1,
            r2,
            spectrum.harmonic_levels(set),
            curve_of(set, grid, quarter),
            std::move(tract),
            std::move(objection),
            cost_beside(decided, index, shape)};
}

AdviceShares shares_of(std::vector<std::vector<Advice>> const& drawn, std::size_t index) {
    AdviceShares out;
    for (auto const& advice : drawn) {
        double& share = advice[index] == Advice::hold      ? out.hold
                        : advice[index] == Advice::migrate ? out.migrate
                                                           : out.modify;
        share += 1.0 / static_cast<double>(drawn.size());
    }
    return out;
}

} // namespace

NoteExplanation explain_note(PlanRequest request, std::size_t note, Means const& means) {
    refuse_unexplainable(request.passage, note);
    auto const decided = decide_all(std::move(request), means);
    auto const& work = decided.work;
    auto const at = std::find(work.note_of.begin(), work.note_of.end(), note) - work.note_of.begin();
    std::size_t const index = work.strips() + static_cast<std::size_t>(at);
    auto const& task = work.tasks[index];
    auto const& choice = decided.choices[index];
    auto const& strategy = decided.strategy;
    auto const& model = strategy.models()[task.vowel];
    auto const& passage = decided.plan.passage;

    NoteExplanation out{.singer = decided.plan.singer,
                        .technique = decided.plan.technique,
                        .title = passage.title,
                        .composer = passage.composer,
                        .tuning = passage.tuning,
                        .note = passage.notes[note],
                        .syllable = {},
                        .vowel = model.resonances,
                        .decision = read_all(decided)[index],
                        .harmonics = {},
                        .grid = frequency_grid(),
                        .kept = {},
                        .changed = {},
                        .shares = shares_of(decided.drawn, index),
                        .draws = static_cast<int>(decided.drawn.size()),
                        .remarks = decided.plan.remarks};
    for (std::size_t i = note + 1; out.syllable.empty() && i-- > 0;) out.syllable = passage.notes[i].text();
    acoustics::NoteSpectrum const spectrum(task.pitch, strategy.space().quarter(), strategy.source(),
                                           task.loudness);
    for (int n = 1; n <= spectrum.size(); ++n) out.harmonics.push_back(frequency_of({n}, task.pitch));
    auto const explain = [&](std::size_t shape, Resonance const& r1, Resonance const& r2) {
        return explained(decided, index, shape, r1, r2, spectrum, out.grid);
    };
    out.kept = explain(strategy.grid().home(), model.resonances.r1, model.resonances.r2);
    if (out.decision.advice == Advice::modify)
        out.changed = explain(choice.shape, out.decision.target.r1, out.decision.target.r2);
    if (out.decision.advice != Advice::modify)
        if (auto const other = best_other(decided, index))
            out.not_chosen = explain(*other, moved(model.resonances.r1, strategy.grid().d1(*other)),
                                     moved(model.resonances.r2, strategy.grid().d2(*other)));
    return out;
}

} // namespace vowelway::plan
