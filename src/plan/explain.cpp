// SPDX-License-Identifier: MIT
#include "vowelway/plan/explain.hpp"

#include "plan/decided.hpp"
#include "plan/reading.hpp"
#include "vowelway/acoustics/note_spectrum.hpp"

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
    return widest > 20 * size * size ? "wider than a human mouth: it tells the direction, not the size" : "";
}

// What the shape of one task costs beside the neighbours as they were decided.
double line_cost(Decided const& decided, std::size_t index, std::size_t shape) {
    auto const& grid = decided.strategy.grid();
    auto const step = [&](std::size_t to, std::size_t from_shape, std::size_t to_shape) {
        auto const cost = decided.strategy.step_cost(decided.work.tasks[to]);
        return double{cost.per_r1} * std::abs(grid.d1(to_shape) - grid.d1(from_shape)) +
               double{cost.per_r2} * std::abs(grid.d2(to_shape) - grid.d2(from_shape));
    };
    double sum = 0;
    if (index > 0) sum += step(index, decided.choices[index - 1].shape, shape);
    if (index + 1 < decided.choices.size()) sum += step(index + 1, shape, decided.choices[index + 1].shape);
    return sum;
}

CostTerms cost_of(Decided const& decided, std::size_t index, std::size_t shape) {
    auto const& strategy = decided.strategy;
    auto const& task = decided.work.tasks[index];
    auto const& model = strategy.models()[task.vowel];
    auto const& grid = strategy.grid();
    auto const heard =
        heard_cost(grid, shape, strategy.landscape(task.pitch, task.loudness), model.home, strategy.aim());
    double const benefit = Strategy::benefit(task.length);
    CostTerms out{.text = benefit * heard.text,
                  .ring = benefit * heard.ring,
                  .stability = benefit * heard.stability,
                  .relation = benefit * heard.relation};
    if (shape != grid.home()) {
        out.attention = strategy.aim().technique.attention;
        out.effort = double{model.efforts[shape]} - out.attention;
    }
    out.line = line_cost(decided, index, shape);
    return out;
}

void refuse_unexplainable(Passage const& passage, std::size_t note) {
    if (note >= passage.notes.size()) throw std::out_of_range("the passage has no such note");
    if (auto const& sung = passage.notes[note]; !sung.vowel)
        throw InputError(sung.hummed ? "the note is hummed: there is no vowel to explain"
                                     : "the vowel of the note is not known",
                         "ask for a note with a vowel", {.file = {}, .musical = "bar " + sung.measure});
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
            cost_of(decided, index, shape)};
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

double AdviceShares::of(Advice advice) const {
    switch (advice) {
    case Advice::hold:
        return hold;
    case Advice::migrate:
        return migrate;
    case Advice::modify:
        return modify;
    }
    return 0;
}

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
                        .decision = read_decision(strategy, task, choice),
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
    return out;
}

} // namespace vowelway::plan
