// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/write_profile.hpp"

#include "io/profile/lines.hpp"
#include "io/profile/values.hpp"
#include "yaml/edit.hpp"

#include <fmt/format.h>

namespace vowelway::io {

using profile::written;

std::string profile_text(Profile const& p) {
    auto const& s = p.singer;
    std::string out = "vowelway: 1\n";
    if (!s.name.empty()) out += "singer: " + yaml::quoted(s.name) + "\n";
    out += fmt::format("voice: {}\n", to_string(s.voice));
    if (s.average) out += "average: true\n";
    if (s.range) out += "range: " + s.range->str() + "\n";
    if (in_hertz(s.tuning.a4) != 440) out += "a4: " + written(s.tuning.a4) + "\n";
    if (s.vibrato)
        out += fmt::format("vibrato: {{extent: {:g} cents, rate: {:g} Hz}}\n", s.vibrato->extent.value,
                           in_hertz(s.vibrato->rate));
    if (s.tract_length) out += fmt::format("tract_length: {:.1f} cm\n", in_centimetres(*s.tract_length));
    out += fmt::format("source: {{method: {}", to_string(s.provenance.method));
    if (!s.provenance.date.empty()) out += ", date: " + s.provenance.date;
    if (!s.provenance.note.empty()) out += ", note: " + yaml::quoted(s.provenance.note);
    out += "}\nvowels:\n";
    for (auto const& v : s.vowels) {
        out += fmt::format("  {}: {{{}", v.vowel.quality().ipa(),
                           profile::fields(profile::all(v.r1, v.r2, v.r3, v.r4), false));
        if (v.estimated) out += ", estimated: " + yaml::quoted(v.origin);
        out += "}\n";
    }
    if (!p.history.empty()) out += "history:\n";
    for (auto const& m : p.history) out += "  - " + profile::line(m) + "\n";
    if (!p.shifts.empty()) out += "shift:\n";
    for (auto const& shift : p.shifts)
        out += fmt::format("  {}: {}\n", to_string(shift.method), profile::line(shift));
    return out;
}

} // namespace vowelway::io
