// SPDX-License-Identifier: MIT
#include "page/pitch_told.hpp"

#include "page/asks.hpp"

#include <array>
#include <cmath>

namespace vowelway::page {

namespace {

double step_of(double key_number) {
    constexpr std::array<double, 8> naturals{0, 2, 4, 5, 7, 9, 11, 12};
    double const octave = std::floor(key_number / 12), within = key_number - 12 * octave;
    std::size_t i = 0;
    while (i < 6 && naturals[i + 1] <= within) ++i;
    return 7 * (octave - 1) + static_cast<double>(i) +
           (within - naturals[i]) / (naturals[i + 1] - naturals[i]);
}

} // namespace

Json pitch_told(Frequency f, Tuning const& tuning) {
    auto const name = tuning.name(f);
    return {{"hz", std::round(in_hertz(f))},
            {"pitch", name.pitch.str()},
            {"cents", std::round(name.deviation.value)},
            {"step", step_of(tuning.key_number(f))}};
}

std::string frequency_told(Json const& request, std::string_view) {
    return pitch_told(parse_frequency(request.at("text").get<std::string>(), Tuning{}), Tuning{}).dump();
}

} // namespace vowelway::page
