// SPDX-License-Identifier: MIT
#include "io/profile/lines.hpp"

#include "io/profile/values.hpp"
#include "yaml/edit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::io::profile {

std::string full(Resonance r) {
    r.sd_assumed = false;
    return written(r);
}

std::array<std::optional<Resonance>, 4> all(Resonance const& r1, Resonance const& r2,
                                            std::optional<Resonance> const& r3,
                                            std::optional<Resonance> const& r4) {
    return {r1, r2, r3, r4};
}

std::string fields(std::array<std::optional<Resonance>, 4> const& rs, bool deviations_always) {
    std::string out;
    for (std::size_t i = 0; i < rs.size(); ++i)
        if (rs[i])
            out += fmt::format("{}fR{}: {}", out.empty() ? "" : ", ", i + 1,
                               deviations_always ? full(*rs[i]) : written(*rs[i]));
    for (std::size_t i = 0; i < rs.size(); ++i)
        if (rs[i] && rs[i]->bandwidth) out += fmt::format(", BR{}: {}", i + 1, written(*rs[i]->bandwidth));
    return out;
}

std::string line(Measurement const& m) {
    std::string out = "{";
    if (!m.date.empty()) out += "date: " + m.date + ", ";
    out += fmt::format("method: {}, vowel: {}, probes: {}, {}", to_string(m.method), m.vowel.quality().ipa(),
                       m.probes, fields(all(m.r1, m.r2, m.r3, m.r4), false));
    for (std::size_t i = 0; i < m.heard.size(); ++i)
        if (m.heard[i]) out += fmt::format(", F{}: {}", i + 1, written(*m.heard[i]));
    if (!m.note.empty()) out += ", note: " + yaml::quoted(m.note);
    return out + "}";
}

std::string line(ProbeShift const& shift) {
    std::string out = "{";
    for (std::size_t i = 0; i < shift.of.size(); ++i)
        if (auto const& s = shift.of[i])
            out += fmt::format("fR{}: {} ± {:g}, ", i + 1, written(s->mean),
                               std::max(0.1, std::round(in_hertz(s->sd) * 10) / 10));
    if (shift.pairs > 0) out += fmt::format("pairs: {}, ", shift.pairs);
    if (!shift.date.empty()) out += "date: " + shift.date + ", ";
    if (!shift.recordings.empty())
        out += fmt::format("recordings: \"{}\", ", fmt::join(shift.recordings, " "));
    if (out.size() > 1) out.resize(out.size() - 2);
    return out + "}";
}

} // namespace vowelway::io::profile
