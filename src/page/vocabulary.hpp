// SPDX-License-Identifier: MIT
// What nearly every source reads, precompiled for the WebAssembly build.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/passage.hpp"
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/singer.hpp"
#include "vowelway/core/technique.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <memory>
#include <sstream>
#include <unordered_map>
