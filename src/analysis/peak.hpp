// SPDX-License-Identifier: MIT
// A peak between samples. Private to the analysis layer.
#pragma once

namespace vowelway::analysis {

/// The top of the parabola through three samples of which the middle one is the highest.
struct Peak {
    double shift = 0, height = 0; ///< from the middle one, in samples; and how high it is
};
inline Peak peak_of(double left, double middle, double right) {
    double const bend = left - 2 * middle + right, shift = bend < 0 ? 0.5 * (left - right) / bend : 0;
    return {shift, middle - 0.25 * (left - right) * shift};
}

} // namespace vowelway::analysis
