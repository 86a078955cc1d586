// SPDX-License-Identifier: MIT
// The whole passage at once: the best course for the resonances as measured, and again for draws over their
// deviations. Private to the layer.
#pragma once

#include "plan/cost.hpp"
#include "plan/course.hpp"
#include "plan/landscape.hpp"
#include "plan/reach.hpp"
#include "plan/shelves.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/plan/plan.hpp"

#include <cstdint>
#include <memory>
#include <string_view>
#include <vector>

namespace vowelway::plan {

/// A vowel as the planner uses it.
struct VowelModel {
    VowelResonances resonances;
    std::size_t in_space = 0; ///< index in the vowel space
    Home home;                ///< as measured
    std::shared_ptr<acoustics::ReachableSet const> reach;
    ShapeCosts efforts; ///< of the grid; out_of_reach where no gesture leads
    ShapeGrid within;   ///< around those within reach
};

/// One note to decide on.
struct Task {
    std::size_t vowel = 0; ///< index of the model
    Pitch pitch;
    Decibels loudness;
    Duration length;
    double line = 1; ///< stretches the technique's cost of moving from the note before; 0 starts anew
    double stay = 0; ///< share of the technique's attention that staying in another shape than home takes
    bool goes_on = false; ///< the vowel of the task before sounds on, with no consonant between
};

/// What was found for one note.
struct Choice {
    std::size_t shape = 0; ///< index of the grid
    Advice advice = Advice::hold;
    acoustics::HeardPlace heard, heard_kept;
    Decibels gain;
    double certainty = 1;
    AdviceShares shares; ///< of the draws; nominal alone without them
};

/// What was found for all tasks.
struct Decisions {
    std::vector<Choice> choices;
    std::vector<std::vector<Advice>> drawn; ///< the advice on each task, draw by draw
    std::size_t strip_draws = 0;            ///< how many of them decided on the strips too
};

/// Threads  once made, any number at once.
class Strategy {
  public:
    /// Plans for the singer with these vowels; at least one. What `means` lends must outlive it.
    Strategy(Singer const& singer, Technique technique, std::vector<VowelResonances> const& vowels,
             PitchRange const& range, Means const& means = {}, std::string_view language = "");

    ShapeGrid const& grid() const { return grid_; }
    Aim const& aim() const { return aim_; }
    acoustics::VowelSpace const& space() const { return space_; }
    acoustics::Source const& source() const { return source_; }
    std::vector<VowelModel> const& models() const { return models_; }
    Landscape const& landscape(Pitch pitch, Decibels loudness) const;

    /// How much what is heard of a note counts: with the root of its length, one second being 1.
    static double benefit(Duration length);
    /// What moving to this task from the one before it costs.
    StepCost step_cost(Task const& task) const;

    /// What a shape costs on a task for the vowels as measured, term by term, for a note of one second.
    HeardCost cost_of(Task const& task, std::size_t shape) const;

    /// The best course through the tasks. With draws the advice is the likeliest over them. On the first
    /// `strips` tasks, which show a vowel and are not sung, 50 draws decide, or a quarter of more than 200.
    Decisions decide(std::vector<Task> const& tasks, int draws, std::size_t strips = 0) const;

  private:
    struct Prepared;
    struct LandIndex;
    Landscape const& landscape(LandIndex at) const;
    std::vector<Landscape const*> landscapes_of(std::vector<Task> const& tasks) const;
    Prepared prepare(std::vector<Task> const& tasks) const;
    std::vector<Advice> advise(std::vector<Task> const& tasks, Prepared const& prepared,
                               std::vector<Home> const& homes, std::vector<std::uint16_t>* shapes) const;
    std::size_t middle_shape(std::size_t task, std::vector<std::vector<std::uint16_t>> const& shapes) const;
    void follow(Choice& choice, Landscape const& land, Home const& home) const;
    std::vector<std::size_t> course(Prepared const& prepared, std::vector<Home> const& homes) const;
    std::vector<Home> draw_homes(int draw) const;
    Home home_at(VowelModel const& model, Frequency r1, Frequency r2) const;
    Decibels level_at_ease(Frequency r1, Frequency r2) const;

    Executor* executor_;
    std::shared_ptr<PlanCache> cache_; // lent or its own
    ShapeGrid grid_;
    Aim aim_;
    acoustics::Source source_;
    Length tract_;
    Frequency quarter_;
    acoustics::VowelSpace space_;
    std::vector<Landscape const*> ease_; ///< around the pitch of ease
    std::vector<VowelModel> models_;
    bool mans_voice_ = false;
    double shared_ = 0; ///< share of the variance of a draw that all vowels have in common
};

/// How far the heard vowel must be from the intended one for the ear to take it as drifted.
inline constexpr Bark drift_noticed{0.5};

} // namespace vowelway::plan
