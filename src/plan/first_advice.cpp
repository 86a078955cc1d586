// SPDX-License-Identifier: MIT
#include "first_advice.hpp"

#include "vowelway/plan/zones.hpp"

#include <cmath>

namespace vowelway {

std::string_view to_string(Advice advice) {
    switch (advice) {
    case Advice::hold: return "hold";
    case Advice::migrate: return "migrate";
    case Advice::modify: return "modify";
    }
    return "";
}

Decision first_advice(Pitch fo, VowelResonances const& vowel, Tuning const& tuning) {
    Decision d;
    d.zone = read_zone(fo, vowel.r1);
    d.heard = d.heard_kept = {vowel.vowel, {0}};
    d.target = {vowel.r1, vowel.r2, vowel.vowel};
    auto const hz = [](Frequency f) { return std::to_string(std::lround(in_hertz(f) / 10) * 10) + " Hz"; };
    (void)tuning;
    switch (d.zone.zone) {
    case Zone::open: d.why = "2fo (" + hz(2.0 * fo.frequency()) + ") lies below fR1 (" + hz(vowel.r1.centre) + ")"; break;
    case Zone::turning:
    case Zone::close:
        d.advice = Advice::migrate;
        d.brief = "let it close";
        d.why = "2fo (" + hz(2.0 * fo.frequency()) + ") has reached fR1 (" + hz(vowel.r1.centre) + "): the same shape sounds closer";
        break;
    case Zone::meeting:
    case Zone::above:
        d.advice = Advice::modify;
        d.target.r1.centre = std::max(vowel.r1.centre, fo.frequency());
        d.brief = "open with the pitch";
        d.why = "fo (" + hz(fo.frequency()) + ") reaches fR1 (" + hz(vowel.r1.centre) + "): without a change the tone loses its strongest resonance";
        break;
    }
    return d;
}

} // namespace vowelway
