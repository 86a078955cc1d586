// SPDX-License-Identifier: MIT
#include "plan/landscape.hpp"

#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/acoustics/transfer.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace vowelway::plan {

namespace {

// fR2 is never nearer to fR1 than this: the lattice's corner beyond it is filled with the nearest real shape.
constexpr double least_ratio = 1.15;

Landscape::Position position(double semitones, int steps) {
    double const inside = std::clamp(semitones, 0.0, steps - 1.001);
    int const step = static_cast<int>(inside);
    return {step, static_cast<float>(inside - step)};
}

} // namespace

Landscape::Position Landscape::row_of(Frequency r1) {
    return position(12 * std::log2(r1.value() / first_r1), rows);
}
Landscape::Position Landscape::column_of(Frequency r2) {
    return position(12 * std::log2(r2.value() / first_r2), columns);
}

Landscape::Landscape(Pitch fo, Decibels loudness, acoustics::Source const& source, Frequency quarter)
    : fo_(fo), loudness_(loudness) {
    constexpr auto cells = static_cast<std::size_t>(rows * columns);
    level_.reserve(cells);
    weighted_.reserve(cells);
    openness_.reserve(cells);
    front_.reserve(cells);
    acoustics::NoteSpectrum const note(fo, quarter, source, loudness);
    std::array<double, acoustics::NoteSpectrum::most_harmonics> powers{};
    for (int row = 0; row < rows; ++row) {
        auto const r1 = hertz(first_r1 * std::exp2(row / 12.0));
        for (int column = 0; column < columns; ++column) {
            auto const r2 = std::max(hertz(first_r2 * std::exp2(column / 12.0)), least_ratio * r1);
            auto const shape = acoustics::resonance_set(r1, r2, quarter);
            note.powers(shape, powers);
            auto const heard = heard_place(note, shape, powers);
            double const power = std::accumulate(powers.begin(), powers.begin() + note.size(), 0.0);
            level_.push_back(static_cast<float>(10 * std::log10(power)));
            weighted_.push_back(static_cast<float>(note.level_of(powers).value));
            openness_.push_back(static_cast<float>(heard.openness.value));
            front_.push_back(static_cast<float>(heard.front.value));
        }
    }
}

Landscape::Sample Landscape::at(Frequency r1, Frequency r2) const {
    auto const row = row_of(r1);
    auto const column = column_of(r2);
    auto const i = static_cast<std::size_t>(row.step * columns + column.step);
    auto const blend = [&](std::vector<float> const& v) {
        double const low = v[i] + column.share * (v[i + 1] - v[i]);
        double const high = v[i + columns] + column.share * (v[i + columns + 1] - v[i + columns]);
        return low + row.share * (high - low);
    };
    return {{blend(level_)}, {blend(weighted_)}, {{blend(openness_)}, {blend(front_)}}};
}

} // namespace vowelway::plan
