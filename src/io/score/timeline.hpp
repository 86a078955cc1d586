// SPDX-License-Identifier: MIT
// Bars and tempo: from a place in the score to seconds. Private to the library.
#pragma once

#include "io/score/part_events.hpp"
#include "vowelway/core/units.hpp"

#include <string>
#include <vector>

namespace vowelway::io {

/// Quarter notes a minute where a score gives no tempo: a calm walk. Our choice.
inline constexpr double default_tempo = 72;

class Timeline {
  public:
    /// The bars' lengths and tempo marks of all parts; `own` is the part that is sung.
    Timeline(XmlSource const& source, std::vector<Part> const& parts, std::size_t own);

    double length(std::size_t measure) const { return lengths_.at(measure); } ///< quarter notes
    double start(std::size_t measure) const {
        return starts_.at(measure);
    } ///< quarter notes from the beginning
    Duration at(std::size_t measure, double onset) const { return at(starts_.at(measure) + onset); }
    Duration at(double quarters) const;
    bool has_tempo() const { return has_tempo_; } ///< false: default_tempo throughout
    /// The bar of the first tempo where that is not the first; empty where it is, or there is none.
    std::string const& first_tempo_bar() const { return first_tempo_bar_; }

  private:
    void set_tempo(double at, double per_minute);
    struct Tempo {
        double from;       ///< quarter notes
        double per_minute; ///< quarter notes a minute
        double seconds;    ///< at `from`
    };
    std::vector<double> lengths_, starts_;
    std::vector<Tempo> tempos_;
    bool has_tempo_ = false;
    std::string first_tempo_bar_;
};

/// Length in quarter notes of a note value named as in MusicXML ("eighth"); 0 for an unknown name.
double quarters_of(std::string_view note_type);

} // namespace vowelway::io
