// SPDX-License-Identifier: MIT
// The whole passage at once: the best course for the resonances as measured, and again for draws over their
// deviations. Private to the layer.
#pragma once

#include "plan/cost.hpp"
#include "plan/course.hpp"
#include "plan/landscape.hpp"
#include "plan/reach.hpp"
#include "vowelway/acoustics/reachable.hpp"
#include "vowelway/plan/plan.hpp"

#include <map>
#include <memory>
#include <vector>

namespace vowelway::plan {

/// A vowel as the planner uses it.
struct VowelModel {
    VowelResonances resonances;
    std::size_t in_space = 0; ///< index in the vowel space
    Home home;                ///< as measured
    std::shared_ptr<acoustics::ReachableSet const> reach;
    ShapeCosts efforts; ///< of the grid; out_of_reach where no gesture leads
};

/// One note to decide on.
struct Task {
    std::size_t vowel = 0; ///< index of the model
    Pitch pitch;
    Decibels loudness;
    Duration length;
    double line = 1; ///< stretches the technique's cost of moving from the note before; 0 starts anew
};

/// What was found for one note.
struct Choice {
    std::size_t shape = 0; ///< index of the grid
    Advice advice = Advice::hold;
    acoustics::HeardPlace heard, heard_kept;
    Decibels gain;
    double certainty = 1;
};

class Strategy {
  public:
    /// Plans for the singer with these vowels; at least one.
    Strategy(Singer const& singer, Technique technique, std::vector<VowelResonances> const& vowels,
             PitchRange const& range);

    ShapeGrid const& grid() const { return grid_; }
    Aim const& aim() const { return aim_; }
    acoustics::VowelSpace const& space() const { return space_; }
    acoustics::Source const& source() const { return source_; }
    std::vector<VowelModel> const& models() const { return models_; }
    Landscape const& landscape(Pitch pitch, Decibels loudness);

    /// How much what is heard of a note counts: with the root of its length, one second being 1.
    static double benefit(Duration length);
    /// What moving to this task from the one before it costs.
    StepCost step_cost(Task const& task) const;

    /// The best course through the tasks, with the certainty of each advice over `draws` draws.
    std::vector<Choice> decide(std::vector<Task> const& tasks, int draws);

    /// The advice on each task in each draw of the last decide(), draw by draw.
    std::vector<std::vector<Advice>> const& drawn() const { return drawn_; }

  private:
    struct Prepared;
    Prepared prepare(std::vector<Task> const& tasks);
    std::vector<Choice> solve(std::vector<Task> const& tasks, Prepared const& prepared,
                              std::vector<Home> const& homes) const;
    std::vector<Home> draw_homes(int draw) const;
    Home home_at(VowelModel const& model, Frequency r1, Frequency r2) const;
    Decibels level_at_ease(Frequency r1, Frequency r2) const;

    ShapeGrid grid_;
    Aim aim_;
    acoustics::Source source_;
    Length tract_;
    Frequency quarter_;
    acoustics::VowelSpace space_;
    std::vector<Landscape> ease_; ///< around the pitch of ease
    std::vector<VowelModel> models_;
    std::map<std::pair<int, int>, std::unique_ptr<Landscape>>
        landscapes_; // by cents of key number and half decibels
    std::vector<std::vector<Advice>> drawn_;
};

/// How far the heard vowel must be from the intended one for the ear to take it as drifted.
inline constexpr Bark drift_noticed{0.5};

} // namespace vowelway::plan
