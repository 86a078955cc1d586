// SPDX-License-Identifier: MIT
// The chart of new probes: where each lies among the vowels it should be like.
// Threads: as draw.hpp.
#pragma once

#include "vowelway/analysis/check.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/chart/draw.hpp"
#include "vowelway/core/singer.hpp"

#include <string>
#include <vector>

namespace vowelway::chart {

/// Probes as measured and, of a check, what they were compared with.
struct ProbeMap {
    Singer reference; ///< the singer, or the voice type the probes were looked for around
    std::vector<VowelResonances>
        due;          ///< what is drawn behind the probes: the reference's entries of the vowels probed
    std::string who;  ///< whose probes; of a check it is the reference
    std::string date; ///< of the probes, ISO 8601 day, or empty
    std::vector<std::string> files;    ///< the recordings' names
    std::vector<analysis::Take> takes; ///< those not usable are counted, not drawn
    std::vector<analysis::MeasuredVowel> vowels;
    std::vector<analysis::Checked> checks; ///< empty: a measurement only
};

/// One page: the plane of fR1 and fR2 with the reference's vowels, a plan's targets and the probes, and a
/// table of the verdicts (of a measurement: of the resonances). The kind and the pitch in the options are not
/// looked at.
std::vector<Page> lay_out(ProbeMap const& probes, ChartOptions const& options, TextMeasurer const& measurer);
std::vector<Document> draw_svg(ProbeMap const& probes, ChartOptions const& options,
                               TextMeasurer const& measurer);
std::vector<Document> draw(ProbeMap const& probes, ChartOptions const& options, Form form);

} // namespace vowelway::chart
