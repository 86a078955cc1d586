// SPDX-License-Identifier: MIT
// What the commands measure and check share: from the command line and files to measurements, and their
// forms.
#pragma once

#include "cli/chart_look.hpp"
#include "cli/command.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/chart/draw_probes.hpp"
#include "vowelway/core/profile.hpp"
#include "vowelway/core/singer.hpp"

#include <string>
#include <vector>

namespace vowelway::cli {

struct MeasuringOptions {
    std::vector<std::string> audio;
    std::string vowels, cues, probe, singer, voice;
    int repeat = 0;
    ChartLook look;
};
/// All but --singer and --voice, and the look of charts.
void add_measuring_options(Command& command, MeasuringOptions& options);
/// The files that the options may name.
std::vector<std::string> inputs_of(MeasuringOptions const& options);

/// The recordings as heard; the memory used does not grow with their length.
std::vector<analysis::Recording> read_recordings(MeasuringOptions const& options, Remarks& remarks);

/// Their names, as the reports give them.
std::vector<std::string> names_of(std::vector<analysis::Recording> const& recordings);

/// The singer's own vowels and, for those the profile lacks, the average of the voice type scaled to this
/// singer.
Singer reference_for(Singer const& singer);

analysis::MeasureRequest request_for(MeasuringOptions const& options, Singer const& reference,
                                     Profile const& profile);

/// The map of what was measured; `date` may be empty.
chart::ProbeMap probe_map(analysis::Measurements const& m, std::vector<analysis::Recording> const& recordings,
                          Singer const& reference, std::string const& date);

} // namespace vowelway::cli
