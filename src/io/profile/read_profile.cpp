// SPDX-License-Identifier: MIT
#include "vowelway/io/profile/read_profile.hpp"

#include "io/profile/values.hpp"
#include "io/vibrato.hpp"
#include "vowelway/core/wording.hpp"
#include "yaml/tree.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <sstream>

namespace vowelway::io {

namespace {

constexpr std::size_t most_vowels = 200, most_measurements = 20'000;

/// A resonance called by another name is the likeliest slip: say what is meant.
void only_vowel_keys(yaml::Node const& map, std::string_view more) {
    for (auto const& [key, value] : map.fields) {
        auto const& k = key.text;
        bool const digit = !k.empty() && k.back() >= '1' && k.back() <= '4';
        auto const stem = k.substr(0, k.size() - (digit ? 1 : 0));
        if (digit &&
            (stem == "R" || stem == "r" || stem == "F" || stem == "f" || stem == "fr" || stem == "Fr" ||
             stem == "FR") &&
            more.find(k) == more.npos)
            throw yaml::error_at(
                key, worded("unknown key \"{0}\"", k),
                worded("resonances of the tract are written fR{0} (F{0} is a formant, measured in the sound)",
                       k.substr(k.size() - 1)));
    }
    yaml::only_keys(map, "fR1 fR2 fR3 fR4 BR1 BR2 BR3 BR4 " + std::string(more));
}

Provenance read_source(yaml::Node const& node) {
    yaml::map(node, worded("the source"), "source: {method: whisper, date: 2026-10-03}");
    yaml::only_keys(node, "method date note");
    Provenance out;
    if (auto const* method = node.find("method")) out.method = profile::method(*method);
    if (auto const* date = node.find("date")) out.date = profile::day(*date);
    if (auto const* note = node.find("note")) out.note = yaml::scalar(*note, worded("the note"));
    return out;
}

VowelResonances read_vowel(yaml::Node const& key, yaml::Node const& node, Singer const& singer) {
    VowelResonances out;
    out.vowel = profile::vowel(key);
    if (auto const* before = singer.find(out.vowel))
        throw yaml::error_at(
            key, worded("/{0}/ appears twice", key.text),
            worded("keep one entry for /{0}/; older values belong in history", before->vowel.ipa()));
    yaml::map(node, "/" + key.text + "/", key.text + ": {fR1: 540 Hz ± 25, fR2: 1780 Hz ± 60}");
    only_vowel_keys(node, "estimated");
    auto method = singer.provenance.method;
    if (auto const* estimated = node.find("estimated")) {
        out.estimated = true;
        out.origin = yaml::scalar(*estimated, "estimated");
        method = Method::estimated;
    }
    auto const found = profile::resonances(node, key.text, singer.tuning, method);
    out.r1 = found.r1, out.r2 = found.r2, out.r3 = found.r3, out.r4 = found.r4;
    return out;
}

Singer read_singer(yaml::Node const& root) {
    Singer singer;
    if (auto const* name = root.find("singer"))
        singer.name = yaml::scalar(*name, worded("the singer's name"));
    if (auto const* voice = root.find("voice")) {
        auto const type = parse_voice_type(yaml::scalar(*voice, worded("the voice")));
        if (!type) {
            std::string names;
            for (auto const each : all_voice_types) names += std::string(to_string(each)) + ", ";
            throw yaml::error_at(*voice, worded("unknown voice \"{0}\"", voice->text),
                                 worded("write one of {0}", names + "other"));
        }
        singer.voice = *type;
    }
    if (auto const* average = root.find("average")) singer.average = profile::truth(*average, "average");
    if (auto const* a4 = root.find("a4"))
        singer.tuning.a4 = profile::plain_frequency(*a4, "a4", 380, 500, {});
    if (auto const* range = root.find("range"))
        singer.range = yaml::placed(
            *range, [&] { return parse_pitch_range(yaml::scalar(*range, worded("the range"))); });
    if (auto const* length = root.find("tract_length")) singer.tract_length = profile::tract_length(*length);
    if (auto const* vibrato = root.find("vibrato")) singer.vibrato = read_vibrato(*vibrato);
    if (auto const* source = root.find("source")) singer.provenance = read_source(*source);

    auto const example = worded("vowels: and below it  ɛ: {fR1: 540 Hz ± 25, fR2: 1780 Hz ± 60}");
    auto const* vowels = root.find("vowels");
    if (!vowels)
        throw yaml::error_at(root, worded("the profile has no vowels"), worded("write {0}", example));
    yaml::map(*vowels, "vowels", example);
    if (vowels->fields.size() > most_vowels)
        throw yaml::error_at(*vowels, worded("more than {0} vowels", most_vowels),
                             worded("keep those that are sung"));
    for (auto const& [key, node] : vowels->fields) singer.vowels.push_back(read_vowel(key, node, singer));
    return singer;
}

Measurement read_measurement(yaml::Node const& node, Tuning const& tuning) {
    constexpr std::string_view example =
        "- {date: 2026-10-03, method: creak, vowel: ɛ, probes: 3, fR1: 540 Hz ± 25, fR2: 1780 Hz ± 60}";
    yaml::map(node, worded("a measurement"), example);
    only_vowel_keys(node, "date method vowel probes note F1 F2 F3 F4");
    auto const need = [&](char const* key) -> yaml::Node const& {
        if (auto const* found = node.find(key)) return *found;
        throw yaml::error_at(node, worded("a measurement without {0}", key), worded("write {0}", example));
    };
    Measurement out;
    if (auto const* date = node.find("date")) out.date = profile::day(*date);
    out.method = profile::method(need("method"));
    auto const& vowel = need("vowel");
    yaml::scalar(vowel, worded("the vowel"));
    out.vowel = profile::vowel(vowel);
    if (auto const* probes = node.find("probes")) out.probes = profile::count(*probes, "probes", 1000);
    auto const found = profile::resonances(node, vowel.text, tuning, out.method);
    out.r1 = found.r1, out.r2 = found.r2, out.r3 = found.r3, out.r4 = found.r4;
    for (std::size_t i = 0; i < out.heard.size(); ++i)
        if (auto const name = "F" + std::to_string(i + 1); auto const* f = node.find(name))
            out.heard[i] = profile::plain_frequency(*f, name, 100, 10'000, tuning);
    if (auto const* note = node.find("note")) out.note = yaml::scalar(*note, worded("the note"));
    return out;
}

std::vector<ProbeShift> read_shifts(yaml::Node const& node) {
    auto const example = worded("shift: and below it  whisper: {fR1: 210 Hz ± 60, pairs: 2}");
    yaml::map(node, "shift", example);
    yaml::only_keys(node, "whisper creak");
    std::vector<ProbeShift> out;
    for (auto const& [key, value] : node.fields) {
        yaml::map(value, worded("the shift of a {0}", reworded(key.text)), example);
        yaml::only_keys(value, "fR1 fR2 fR3 fR4 pairs date recordings");
        ProbeShift shift;
        shift.method = key.text == "creak" ? Method::creak : Method::whisper;
        for (std::size_t i = 0; i < shift.of.size(); ++i)
            if (auto const* f = value.find("fR" + std::to_string(i + 1))) shift.of[i] = profile::shift(*f);
        if (auto const* pairs = value.find("pairs")) shift.pairs = profile::count(*pairs, "pairs", 100'000);
        if (auto const* date = value.find("date")) shift.date = profile::day(*date);
        if (auto const* recordings = value.find("recordings")) {
            std::istringstream words(yaml::scalar(*recordings, worded("the recordings")));
            for (std::string word; words >> word;) {
                if (word.size() != 16 || word.find_first_not_of("0123456789abcdef") != std::string::npos)
                    throw yaml::error_at(
                        *recordings, worded("\"{0}\" is not the digest of a recording", word),
                        worded("leave out recordings; it is written when a shift is learned"));
                shift.recordings.push_back(word);
            }
        }
        out.push_back(shift);
    }
    return out;
}

} // namespace

Profile parse_profile(std::string const& text, std::string const& file) {
    auto const root = yaml::parse(text, file);
    if (root.kind == yaml::Node::Kind::null)
        throw yaml::error_at(root, worded("the profile is empty"),
                             worded("see docs/profile-format.md for an example"));
    yaml::map(root, worded("a profile"), worded("keys with values, such as  voice: tenor"));
    yaml::only_keys(
        root, "vowelway singer voice average range a4 tract_length vibrato source vowels history shift");
    auto const* version = root.find("vowelway");
    if (!version)
        throw yaml::error_at(root, worded("this does not look like a profile"),
                             worded("begin the file with  vowelway: 1"));
    if (yaml::scalar(*version, worded("the version")) != "1")
        throw yaml::error_at(*version, worded("format version {0} is unknown", version->text),
                             worded("this program reads version 1"));
    if (root.find("passage"))
        throw yaml::error_at(root, worded("this is a passage, not a profile"),
                             worded("give a profile to --singer"));

    Profile out;
    out.singer = read_singer(root);
    if (auto const* history = root.find("history"); history && history->kind != yaml::Node::Kind::null) {
        yaml::sequence(*history, "history",
                       worded("a list of measurements, each on a line that begins with a dash"));
        if (history->items.size() > most_measurements)
            throw yaml::error_at(*history, worded("more than {0} measurements", most_measurements),
                                 worded("keep the older ones in another file"));
        for (auto const& item : history->items)
            out.history.push_back(read_measurement(item, out.singer.tuning));
    }
    if (auto const* shift = root.find("shift"); shift && shift->kind != yaml::Node::Kind::null)
        out.shifts = read_shifts(*shift);
    return out;
}

Remarks profile_remarks(Singer const& singer) {
    std::string list;
    for (auto const& vowel : singer.vowels) {
        bool assumed = false;
        for (int k = 1; k <= 4; ++k)
            if (auto const r = vowel.get({k})) assumed = assumed || r->sd_assumed;
        if (assumed) list += (list.empty() ? "/" : ", /") + vowel.vowel.ipa() + "/";
    }
    if (list.empty()) return {};
    return {{Remark::Kind::assumed,
             worded("the profile gives no deviation for {0}: the usual one for the method \"{1}\" is assumed",
                    list, reworded(to_string(singer.provenance.method)))}};
}

} // namespace vowelway::io
