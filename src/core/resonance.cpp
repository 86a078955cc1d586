// SPDX-License-Identifier: MIT
#include "vowelway/core/resonance.hpp"
#include "vowelway/core/wording.hpp"

#include <cmath>

namespace vowelway {

std::string Harmonic::str() const { return number == 1 ? "fo" : std::to_string(number) + "fo"; }
Frequency frequency_of(Harmonic n, Pitch fo) { return fo.frequency() * static_cast<double>(n.number); }
std::string ResonanceNumber::str() const { return "fR" + std::to_string(number); }

Cents Resonance::sd_cents() const { return {1200 * std::log2(1 + sd.value() / centre.value())}; }

std::string_view to_string(Method method) {
    switch (method) {
    case Method::typed:
        return to_word("typed");
    case Method::whisper:
        return to_word("whisper");
    case Method::creak:
        return to_word("creak");
    case Method::sung:
        return to_word("sung");
    case Method::published:
        return to_word("published");
    case Method::estimated:
        return to_word("estimated");
    }
    return "";
}

std::optional<Resonance> VowelResonances::get(ResonanceNumber k) const {
    switch (k.number) {
    case 1:
        return r1;
    case 2:
        return r2;
    case 3:
        return r3;
    case 4:
        return r4;
    default:
        return std::nullopt;
    }
}

} // namespace vowelway
