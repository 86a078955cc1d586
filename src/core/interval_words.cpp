// SPDX-License-Identifier: MIT
#include "core/interval_words.hpp"

#include <cmath>
#include <locale>
#include <sstream>

namespace vowelway {

std::string interval_in_words(double semitones) {
    double const far = std::abs(semitones);
    std::ostringstream out;
    out.imbue(std::locale::classic());
    if (far == 12)
        out << "an octave";
    else if (std::fmod(far, 12) == 0)
        out << far / 12 << " octaves";
    else
        out << far << (far == 1 ? " semitone" : " semitones");
    return out.str() + (semitones < 0 ? " lower" : " higher");
}

} // namespace vowelway
