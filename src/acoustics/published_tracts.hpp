// SPDX-License-Identifier: MIT
// Published area functions as cosine series. Private to the library.
#pragma once

#include "acoustics/series_tube.hpp"
#include "vowelway/core/vowel.hpp"

namespace vowelway::acoustics::tube {

/// Mean of sixteen published area functions: a narrow larynx tube, widening towards the mouth.
Series mean_tract();
/// A quarter of the way from the mean to the published area function of the vowel: farther, one man's
/// peculiarities would go with it. Less for a vowel that is only near one of the table's; the mean for one of
/// another rounding.
Series tract_like(Vowel const& vowel);

} // namespace vowelway::acoustics::tube
