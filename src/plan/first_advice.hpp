// SPDX-License-Identifier: MIT
// A first decision from published rules. Private to the layer.
#pragma once

#include "vowelway/plan/plan.hpp"

namespace vowelway {
Decision first_advice(Pitch fo, VowelResonances const& vowel, Tuning const& tuning);
}
