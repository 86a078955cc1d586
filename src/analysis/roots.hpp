// SPDX-License-Identifier: MIT
// The roots of a real polynomial. Private to the analysis layer.
#pragma once

#include <complex>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace vowelway::analysis {

/// The polynomial and its derivative at z, a real or complex number.
template <class Number> std::pair<Number, Number> value_and_slope(std::span<double const> a, Number z) {
    Number value = a[0], slope = 0;
    for (std::size_t k = 1; k < a.size(); ++k) {
        slope = slope * z + value;
        value = value * z + a[k];
    }
    return {value, slope};
}

/// The roots above the real axis (imaginary part over 1e-9) of z^p + a[1] z^(p-1) + .. + a[p], a[0] = 1, in
/// no order; those below mirror them. Laguerre's method, each root found divided out and then polished on the
/// whole polynomial (W. H. Press, S. A. Teukolsky, W. T. Vetterling & B. P. Flannery, Numerical Recipes, 3rd
/// ed. 2007, section 9.5); where sum and product of the roots are not those of the polynomial, the
/// eigenvalues of its companion matrix instead. Empty where those are not found either (coefficients that are
/// no numbers).
std::vector<std::complex<double>> upper_roots(std::span<double const> a);

} // namespace vowelway::analysis
