// SPDX-License-Identifier: MIT
// The line while other voices are woven into it. Private to the library.
#pragma once

#include "io/score/voice_line.hpp"
#include "io/score/voices.hpp"

#include <string>
#include <vector>

namespace vowelway::io {

class Weaver {
  public:
    /// The lines of the verse and of its sounds; both must outlive it.
    Weaver(std::string const& verse, std::string const& phonetic) : verse_(verse), phonetic_(phonetic) {}

    /// What a voice has in a bar.
    std::vector<LineEvent> own_line(PartMeasure const& measure, std::string const& voice) const;

    /// Syllables of the verse that begin in a run: those of the line, those of the line once the run is woven
    /// in, and those of the run itself.
    struct Count {
        int line = 0, other = 0, own = 0;
    };
    Count count(std::vector<LineEvent>& line, Run const& run) const;

    /// Puts the runs of one other voice into the line where they carry the verse better than the line does.
    void weave(std::vector<LineEvent>& line, std::vector<Run> const& runs) const;

  private:
    LineEvent line_event(PartEvent const& event) const;
    void lend(std::vector<LineEvent>& line, Run const& run, bool take, std::vector<LineEvent>& fresh) const;

    std::string const& verse_;
    std::string const& phonetic_;
};

} // namespace vowelway::io
