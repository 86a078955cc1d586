// SPDX-License-Identifier: MIT
#include "report/format.hpp"

#include <fmt/format.h>

namespace vowelway::report {

std::string number(double value, int decimals) {
    auto out = fmt::format("{:.{}f}", value, decimals);
    if (out.find('.') != std::string::npos) {
        out.erase(out.find_last_not_of('0') + 1);
        if (out.back() == '.') out.pop_back();
    }
    return out == "-0" ? "0" : out;
}

std::string signed_semitones(Cents interval) {
    auto const text = fmt::format("{:+.1f}", in_semitones(interval));
    return text == "+0.0" || text == "-0.0" ? "0.0" : text;
}

std::string pitch_with_uncertainty(Tuning const& tuning, Pitch pitch, Cents sd) {
    auto const name = tuning.name(pitch);
    if (sd.value > 50) return fmt::format("{} ±{} st", name.pitch.str(), number(in_semitones(sd), 1));
    return fmt::format("{} ±{} c", name.str(), number(rounded(sd.value, 5)));
}

std::string resonance(Resonance const& r) {
    return fmt::format("{} ±{}{}", number(rounded(in_hertz(r.centre), 10)),
                       number(rounded(in_hertz(r.sd), 5)), r.sd_assumed ? "*" : "");
}

} // namespace vowelway::report
