// SPDX-License-Identifier: MIT
// The plans of a teacher's folder, made again where a score or a profile has changed.
#pragma once

#include "vowelway/chart/draw.hpp"

#include <filesystem>
#include <string>

namespace vowelway::cli {

struct StudioPlansOptions {
    std::filesystem::path folder, into;
    std::string technique = "classical";
    int draws = 50;
    chart::ChartOptions charts;
    bool watch = false;
};

/// A PDF for every song and singer of the folder, into/SONG--SINGER.pdf, where there is none or it is older
/// than its score or profile. Each is told; a song or a singer that cannot be read is told, and the others go
/// on. With watch it looks again twice a second and never returns.
void make_studio_plans(StudioPlansOptions const& options);

} // namespace vowelway::cli
