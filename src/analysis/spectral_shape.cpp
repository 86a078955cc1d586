// SPDX-License-Identifier: MIT
#include "analysis/spectral_shape.hpp"

#include "analysis/frames.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::analysis {
namespace {

std::array<double, bands + 1> edges_of_bands() {
    std::array<double, bands + 1> edges{};
    for (std::size_t k = 0; k <= bands; ++k) edges[k] = 150 * std::pow(40.0, static_cast<double>(k) / bands);
    return edges;
}

} // namespace

Shapes shapes_of(Sound const& sound, TimeSpan within, bool with_spectra) {
    auto const samples = part(sound, within.start, within.end);
    Frames frames(samples, sound.rate);
    std::vector<Shape> power(frames.count());
    Shapes shapes;
    auto const edges = edges_of_bands();
    auto spectrum = frames.empty();
    for (std::size_t f = 0; f < power.size(); ++f) {
        std::fill(spectrum.power.begin(), spectrum.power.end(), 0.0);
        spectrum.frames = 0;
        frames.add_to(spectrum, f);
        if (with_spectra) shapes.spectra.push_back(spectrum);
        for (std::size_t b = 0; b < bands; ++b)
            power[f][b] = spectrum.mean(hertz(edges[b]), hertz(edges[b + 1])) + 1e-14;
        shapes.time.push_back(std::max(in_seconds(within.start), in_seconds(sound.start)) +
                              frames.middle(f) / in_hertz(sound.rate));
    }
    shapes.each.resize(power.size());
    for (std::size_t f = 0; f < power.size(); ++f) {
        auto const from = f < 2 ? 0 : f - 2, to = std::min(power.size(), f + 3);
        double mean = 0;
        for (std::size_t b = 0; b < bands; ++b) {
            double sum = 0;
            for (std::size_t g = from; g < to; ++g) sum += power[g][b];
            mean += shapes.each[f][b] = 10 * std::log10(sum / static_cast<double>(to - from));
        }
        for (auto& level : shapes.each[f]) level -= mean / bands;
    }
    return shapes;
}

double distance(Shape const& a, Shape const& b) {
    double sum = 0;
    for (std::size_t k = 0; k < bands; ++k) sum += (a[k] - b[k]) * (a[k] - b[k]);
    return std::sqrt(sum / bands);
}

} // namespace vowelway::analysis
