// SPDX-License-Identifier: MIT
// One section of a choir: where its notes are heard, and what it could sing instead. Private to the layer.
#pragma once

#include "plan/strategy.hpp"
#include "vowelway/plan/plan.hpp"

#include <cstddef>
#include <vector>

namespace vowelway::plan {

/// A vowel that a section can sing on a note.
struct Option {
    std::size_t shape = 0; ///< of the strategy's grid
    HeardOffset heard;     ///< from its own spoken vowel
    double extra = 0;      ///< what it costs beside the plan, >= 0
};

class SectionVoice {
  public:
    /// The plan must outlive it.
    SectionVoice(Plan const& plan, Technique const& technique, Means const& means);

    /// Where a note with a decision is heard with the plan followed.
    HeardOffset heard(std::size_t note) const;
    /// All shapes within reach.
    std::vector<Option> options(std::size_t note) const;

    /// The letter of a shape, and what leads to it from the vowel's own, in a few words; empty for that.
    Vowel shade_of(std::size_t note, std::size_t shape) const;
    std::string way_to(std::size_t note, std::size_t shape) const;
    /// Whether a shape is the vowel's own.
    bool is_own(std::size_t shape) const { return shape == strategy_.grid().home(); }
    /// The shape of the plan, the nearest of the grid.
    std::size_t planned(std::size_t note) const;

  private:
    VowelModel const& model(std::size_t note) const { return strategy_.models()[*plan_.notes[note].vowel]; }
    Landscape const& land(std::size_t note) const;
    Task task(std::size_t note) const;
    HeardOffset at(std::size_t note, Frequency r1, Frequency r2) const;

    Plan const& plan_;
    Strategy strategy_;
};

} // namespace vowelway::plan
