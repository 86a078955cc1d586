// SPDX-License-Identifier: MIT
// The shape of short spectra, by which one vowel is told from the next. Private to the layer.
#pragma once

#include "vowelway/analysis/spectrum.hpp"

#include <array>
#include <vector>

namespace vowelway::analysis {

inline constexpr std::size_t bands = 16; // half an octave at the bottom to a third at the top, 150 to 6000 Hz
using Shape = std::array<double, bands>; // dB in each band, the mean taken off

struct Shapes {
    std::vector<Shape> each;
    std::vector<double> time;           // s in the recording, of the middle of the frame
    std::vector<PowerSpectrum> spectra; // of each frame, where they are asked for
};

/// The spectral shape of each frame, averaged over five frames: noise alone scatters by 4 dB in a narrow
/// band.
Shapes shapes_of(Sound const& sound, TimeSpan within, bool with_spectra = false);

/// Root mean square over the bands, dB.
double distance(Shape const& a, Shape const& b);

/// How much the frames of a piece scatter about their mean, from running sums.
class Scatter {
  public:
    explicit Scatter(std::vector<Shape> const& shapes)
        : sums_(shapes.size() + 1), squares_(shapes.size() + 1, 0.0) {
        for (std::size_t f = 0; f < shapes.size(); ++f) {
            squares_[f + 1] = squares_[f];
            for (std::size_t b = 0; b < bands; ++b) {
                sums_[f + 1][b] = sums_[f][b] + shapes[f][b];
                squares_[f + 1] += shapes[f][b] * shapes[f][b];
            }
        }
    }
    double cost(std::size_t from, std::size_t to) const {
        double mean = 0;
        for (std::size_t b = 0; b < bands; ++b) {
            double const sum = sums_[to][b] - sums_[from][b];
            mean += sum * sum;
        }
        return squares_[to] - squares_[from] - mean / static_cast<double>(to - from);
    }

  private:
    std::vector<Shape> sums_;
    std::vector<double> squares_;
};

} // namespace vowelway::analysis
