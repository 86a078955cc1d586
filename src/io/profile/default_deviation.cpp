// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/default_deviation.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::io {

Frequency default_deviation(Method method, ResonanceNumber k, Frequency centre) {
    auto const i = static_cast<std::size_t>(std::clamp(k.number, 1, 4) - 1);
    auto const of = [&](std::array<double, 4> const& hz) { return hertz(hz[i]); };
    auto const share = [&](std::array<double, 4> const& percent) { return centre * (percent[i] / 100); };
    switch (method) {
    case Method::whisper:
        return of({90, 110, 130, 125});
    case Method::creak:
        return of({50, 80, 125, 125});
    case Method::sung:
        return of({30, 50, 80, 100});
    case Method::published:
        return share({9, 7, 6, 6});
    case Method::estimated:
        return share({12, 10, 8, 8});
    case Method::typed:
        break;
    }
    return centre * (std::exp2(1.0 / 12) - 1);
}

} // namespace vowelway::io
