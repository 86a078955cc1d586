// SPDX-License-Identifier: MIT
#include "core/interval_words.hpp"
#include "vowelway/core/wording.hpp"

#include <cmath>
#include <locale>
#include <sstream>

namespace vowelway {

std::string interval_in_words(double semitones) {
    double const far = std::abs(semitones);
    bool const octaves = far > 0 && std::fmod(far, 12) == 0;
    std::ostringstream number;
    number.imbue(std::locale::classic());
    number << (octaves ? far / 12 : far);
    auto const interval = far == 12  ? worded("an octave")
                          : octaves  ? worded("{0} octaves", number.str())
                          : far == 1 ? worded("1 semitone")
                                     : worded("{0} semitones", number.str());
    return semitones < 0 ? worded("{0} lower", interval) : worded("{0} higher", interval);
}

} // namespace vowelway
