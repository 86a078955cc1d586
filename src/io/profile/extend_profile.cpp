// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/write_profile.hpp"

#include "io/profile/lines.hpp"
#include "io/profile/values.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "yaml/edit.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace vowelway::io {

namespace {

using profile::all, profile::fields, profile::full, profile::line, profile::written;

bool near(Resonance const& a, Resonance const& b) { return std::abs(in_hertz(a.centre - b.centre)) < 0.1; }

bool same_values(Measurement const& m, VowelResonances const& v) {
    return m.vowel.quality() == v.vowel.quality() && near(m.r1, v.r1) && near(m.r2, v.r2);
}

InputError cannot_extend(std::string const& file, std::string const& why) {
    Place place;
    place.file = file;
    return InputError(worded("the measurement cannot be added to the profile: {0}", why),
                      worded("write the profile as in docs/profile-format.md; nothing was changed"), place);
}

/// What is larger could be written but never read again.
void refuse_overlong(std::string const& text, std::string const& file) {
    if (text.size() > yaml::largest_file)
        throw InputError(worded("the profile would grow past {0}", size_in_words(yaml::largest_file)),
                         worded("begin a new profile; nothing was changed"), Place{file, 0, 0, {}});
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
        throw InputError(worded("the note would not read back as it is"),
                         worded("write it without control characters"));
    if (back.date != m.date)
        throw InputError(worded("the date \"{0}\" is not a day", m.date), worded("write it as 2026-10-03"));
}

/// What goes into the history: the new measurement, and before it the vowel's present values where the
/// history does not know them.
std::vector<std::string> history_lines(Profile const& before, Measurement const& m) {
    std::vector<std::string> lines;
    auto const* current = before.singer.find(m.vowel);
    if (current && !current->estimated) {
        bool const known = std::any_of(before.history.begin(), before.history.end(),
                                       [&](Measurement const& old) { return same_values(old, *current); });
        if (!known)
            lines.push_back(line(Measurement{before.singer.provenance.date,
                                             before.singer.provenance.method,
                                             current->vowel,
                                             1,
                                             current->r1,
                                             current->r2,
                                             current->r3,
                                             current->r4,
                                             {},
                                             "was in the profile before"}));
    }
    lines.push_back(line(m));
    return lines;
}

void set_vowel(yaml::Edit& edit, yaml::Node const& vowels, Measurement const& m) {
    auto const entry = std::find_if(vowels.fields.begin(), vowels.fields.end(), [&](auto const& f) {
        return parse_vowel(f.key.text).quality() == m.vowel.quality();
    });
    if (entry != vowels.fields.end())
        set_current(edit, entry->value, m);
    else
        edit.add_field(vowels, m.vowel.quality().ipa(),
                       "{" + fields(all(m.r1, m.r2, m.r3, m.r4), true) + "}");
}

void extend_history(yaml::Edit& edit, yaml::Node const* history, std::vector<std::string> const& lines) {
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
}

/// Where every vowel's numbers come from the history, `source` names the method that most of them come from
/// (of as many the later one) and the last day.
std::string with_source(std::string const& text, std::string const& file) {
    auto const profile = parse_profile(text, file);
    auto const root = yaml::parse(text, file);
    auto const* source = root.find("source");
    auto const* method = source ? source->find("method") : nullptr;
    if (!method) return text;
    std::map<Method, std::pair<int, std::string>> found; // vowels and last day
    std::string last;
    for (auto const& v : profile.singer.vowels) {
        if (v.estimated) continue;
        if (v.r1.sd_assumed || v.r2.sd_assumed || (v.r3 && v.r3->sd_assumed)) return text; // by `source`
        auto const known = std::find_if(profile.history.rbegin(), profile.history.rend(),
                                        [&](Measurement const& m) { return same_values(m, v); });
        if (known == profile.history.rend()) return text;
        auto& [count, day] = found[known->method];
        ++count, day = std::max(day, known->date), last = std::max(last, known->date);
    }
    auto const most = std::max_element(found.begin(), found.end(),
                                       [](auto const& a, auto const& b) { return a.second < b.second; });
    if (most == found.end() || last.empty()) return text;
    yaml::Edit edit(text, root);
    auto const& now = profile.singer.provenance;
    if (now.method != most->first) edit.replace(*method, std::string(to_string(most->first)));
    if (auto const* date = source->find("date"); date && now.date != last) edit.replace(*date, last);
    return edit.done();
}

/// Whether the vowel has the new values, the history the new lines, and all other vowels are as they were.
bool reads_back(Profile const& before, Profile const& after, Measurement const& m, std::size_t lines) {
    auto const* now = after.singer.find(m.vowel);
    bool const added = before.singer.find(m.vowel) == nullptr;
    bool good = now && near(now->r1, m.r1) && near(now->r2, m.r2) &&
                now->r3.has_value() == m.r3.has_value() && !now->estimated &&
                after.history.size() == before.history.size() + lines &&
                same_values(after.history.back(), *now) &&
                after.singer.vowels.size() == before.singer.vowels.size() + (added ? 1 : 0);
    for (auto const& other : before.singer.vowels) {
        auto const* kept = after.singer.find(other.vowel);
        good = good && kept && (kept == now || (near(kept->r1, other.r1) && near(kept->r2, other.r2)));
    }
    return good;
}

} // namespace

std::string with_measurement(std::string const& text, std::string const& file, Measurement const& m) {
    check(m);
    auto const before = parse_profile(text, file);
    if (before.singer.average) throw cannot_extend(file, worded("it is an average voice, not one singer"));
    auto const root = yaml::parse(text, file);
    yaml::Edit edit(text, root);
    auto const lines = history_lines(before, m);
    set_vowel(edit, *root.find("vowels"), m);
    extend_history(edit, root.find("history"), lines);

    auto const out = with_source(edit.done(), file);
    refuse_overlong(out, file);
    if (!reads_back(before, parse_profile(out, file), m, lines.size()))
        throw cannot_extend(file, worded("the result would not read back correctly"));
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
        throw cannot_extend(file, worded("the result would not read back correctly"));
    return out;
}

} // namespace vowelway::io
