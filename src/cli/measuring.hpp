// SPDX-License-Identifier: MIT
// What the commands measure and check share: from the command line and files to measurements, and their
// forms.
#pragma once

#include "cli/chart_look.hpp"
#include "cli/command.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/chart/draw_probes.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/io/profile/measurement.hpp"

#include <nlohmann/json_fwd.hpp>

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

/// The singer's own vowels and, for those the profile lacks, the average of the voice type scaled to this
/// singer.
Singer reference_for(Singer const& singer);

analysis::MeasureRequest request_for(MeasuringOptions const& options, Singer const& reference,
                                     std::vector<io::ProbeShift> const& known);

/// Takes, vowels, shifts and remarks as one JSON document (docs/formats.md).
nlohmann::ordered_json measurements_json(analysis::Measurements const& m,
                                         std::vector<analysis::Recording> const& recordings);
/// The same for a person: the vowels, then what there is to say of each take.
std::string measurements_table(analysis::Measurements const& m,
                               std::vector<analysis::Recording> const& recordings, Tuning const& tuning);

/// The map of what was measured; `date` may be empty.
chart::ProbeMap probe_map(analysis::Measurements const& m, std::vector<analysis::Recording> const& recordings,
                          Singer const& reference, std::string const& date);

Method method_of(analysis::ProbeKind kind);

} // namespace vowelway::cli
