// SPDX-License-Identifier: MIT
// Published area functions as cosine series. Private to the library.
#pragma once

#include "acoustics/series_tube.hpp"
#include "vowelway/core/vowel.hpp"

namespace vowelway::tube {

/// Mean of sixteen published area functions: a narrow larynx tube, widening towards the mouth.
Series mean_tract();
/// Half way from the mean to the published area function of the vowel nearest on the IPA chart: whole, one man's
/// peculiarities would go with it.
Series tract_like(Vowel const& vowel);

} // namespace vowelway::tube
