// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/write_profile.hpp"

#include "io/profile/values.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "yaml/edit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace vowelway::io {

namespace {

using profile::written;

std::string full(Resonance r) {
    r.sd_assumed = false;
    return written(r);
}

std::array<std::optional<Resonance>, 4> all(Resonance const& r1, Resonance const& r2,
                                            std::optional<Resonance> const& r3,
                                            std::optional<Resonance> const& r4) {
    return {r1, r2, r3, r4};
}

/// "fR1: 540 Hz ± 25, fR2: .., BR1: .."
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

bool near(Resonance const& a, Resonance const& b) { return std::abs(in_hertz(a.centre - b.centre)) < 0.1; }

bool same_values(Measurement const& m, VowelResonances const& v) {
    return m.vowel.quality() == v.vowel.quality() && near(m.r1, v.r1) && near(m.r2, v.r2);
}

InputError cannot_extend(std::string const& file, std::string const& why) {
    Place place;
    place.file = file;
    return InputError("the measurement cannot be added to the profile: " + why,
                      "write the profile as in docs/profile-format.md; nothing was changed", place);
}

/// What is larger could be written but never read again.
void refuse_overlong(std::string const& text, std::string const& file) {
    if (text.size() > yaml::largest_file)
        throw InputError("the profile would grow past " + size_in_words(yaml::largest_file),
                         "begin a new profile; nothing was changed", Place{file, 0, 0, {}});
}

/// The entry of the vowel gets the new values: edited field by field, so that comments stay.
void set_current(yaml::Edit& edit, yaml::Node const& entry, Measurement const& m) {
    auto const rs = all(m.r1, m.r2, m.r3, m.r4);
    std::size_t r2_field = 0;
    for (std::size_t f = 0; f < entry.fields.size(); ++f)
        if (entry.fields[f].key.text == "fR2") r2_field = f;
    for (std::size_t f = 0; f < entry.fields.size(); ++f) {
        auto const& [key, value] = entry.fields[f];
        auto const index = static_cast<std::size_t>(key.text.back() - '1');
        if (key.text.starts_with("fR") && rs[index])
            edit.replace(value, full(*rs[index]));
        else if (key.text.starts_with("BR") && rs[index] && rs[index]->bandwidth)
            edit.replace(value, written(*rs[index]->bandwidth));
        else
            edit.remove_field(entry, f);
    }
    for (std::size_t i = 0; i < rs.size(); ++i) {
        if (!rs[i]) continue;
        if (auto const name = "fR" + std::to_string(i + 1); !entry.find(name))
            edit.add_field_after(entry, r2_field, name, full(*rs[i]));
        if (auto const name = "BR" + std::to_string(i + 1); rs[i]->bandwidth && !entry.find(name))
            edit.add_field_after(entry, r2_field, name, written(*rs[i]->bandwidth));
    }
}

void check(Measurement const& m) {
    // Whatever is written must be readable again: the reader is the judge.
    auto const text = "vowelway: 1\nvowels: {" + m.vowel.ipa() + ": {fR1: 500, fR2: 1500}}\nhistory:\n  - " +
                      line(m) + "\n";
    auto const back = parse_profile(text, "the new measurement").history.at(0);
    if (back.note != m.note)
        throw InputError("the note would not read back as it is", "write it without control characters");
    if (back.date != m.date)
        throw InputError("the date \"" + m.date + "\" is not a day", "write it as 2026-10-03");
}

} // namespace

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
        out += fmt::format("  {}: {{{}", v.vowel.quality().ipa(), fields(all(v.r1, v.r2, v.r3, v.r4), false));
        if (v.estimated) out += ", estimated: " + yaml::quoted(v.origin);
        out += "}\n";
    }
    if (!p.history.empty()) out += "history:\n";
    for (auto const& m : p.history) out += "  - " + line(m) + "\n";
    if (!p.shifts.empty()) out += "shift:\n";
    for (auto const& shift : p.shifts) out += fmt::format("  {}: {}\n", to_string(shift.method), line(shift));
    return out;
}

std::string with_measurement(std::string const& text, std::string const& file, Measurement const& m) {
    check(m);
    auto const before = parse_profile(text, file);
    if (before.singer.average) throw cannot_extend(file, "it is an average voice, not one singer");
    auto const root = yaml::parse(text, file);
    yaml::Edit edit(text, root);

    std::vector<std::string> lines;
    auto const* current = before.singer.find(m.vowel);
    if (current && !current->estimated) {
        bool known = false;
        for (auto const& old : before.history) known = known || same_values(old, *current);
        if (!known) {
            Measurement kept{before.singer.provenance.date,
                             before.singer.provenance.method,
                             current->vowel,
                             1,
                             current->r1,
                             current->r2,
                             current->r3,
                             current->r4,
                             {},
                             "was in the profile before"};
            lines.push_back(line(kept));
        }
    }
    lines.push_back(line(m));

    auto const& vowels = *root.find("vowels");
    auto const entry = std::find_if(vowels.fields.begin(), vowels.fields.end(), [&](auto const& f) {
        return parse_vowel(f.key.text).quality() == m.vowel.quality();
    });
    if (entry != vowels.fields.end())
        set_current(edit, entry->value, m);
    else
        edit.add_field(vowels, m.vowel.quality().ipa(),
                       "{" + fields(all(m.r1, m.r2, m.r3, m.r4), true) + "}");

    auto const* history = root.find("history");
    bool const begun = history && history->kind == yaml::Node::Kind::sequence && !history->items.empty();
    std::string block;
    for (auto const& each : lines) {
        if (begun)
            edit.add_item(*history, each);
        else
            block += (block.empty() ? "- " : "\n  - ") + each;
    }
    if (!begun && history)
        edit.fill(*history, block);
    else if (!begun)
        edit.add_block("history", block);

    auto const out = edit.done();
    refuse_overlong(out, file);
    auto const after = parse_profile(out, file);
    auto const* now = after.singer.find(m.vowel);
    bool good = now && near(now->r1, m.r1) && near(now->r2, m.r2) &&
                now->r3.has_value() == m.r3.has_value() && !now->estimated &&
                after.history.size() == before.history.size() + lines.size() &&
                same_values(after.history.back(), *now) &&
                after.singer.vowels.size() == before.singer.vowels.size() + (current ? 0 : 1);
    for (auto const& other : before.singer.vowels) {
        auto const* kept = after.singer.find(other.vowel);
        good = good && kept && (kept == now || (near(kept->r1, other.r1) && near(kept->r2, other.r2)));
    }
    if (!good) throw cannot_extend(file, "the result would not read back correctly");
    return out;
}

std::string with_shift(std::string const& text, std::string const& file, ProbeShift const& shift) {
    auto const before = parse_profile(text, file);
    auto const root = yaml::parse(text, file);
    yaml::Edit edit(text, root);
    auto const name = std::string(to_string(shift.method));
    auto const entry = name + ": " + line(shift);
    auto const* all_shifts = root.find("shift");
    bool const begun = all_shifts && all_shifts->kind == yaml::Node::Kind::map && !all_shifts->fields.empty();
    if (auto const* old = begun ? all_shifts->find(name) : nullptr)
        edit.replace(*old, line(shift));
    else if (begun)
        edit.add_field(*all_shifts, name, line(shift));
    else if (all_shifts)
        edit.fill(*all_shifts, entry);
    else
        edit.add_block("shift", entry);
    auto out = edit.done();
    refuse_overlong(out, file);
    auto const after = parse_profile(out, file);
    if (after.singer.vowels.size() != before.singer.vowels.size() ||
        after.history.size() != before.history.size())
        throw cannot_extend(file, "the result would not read back correctly");
    return out;
}

} // namespace vowelway::io
