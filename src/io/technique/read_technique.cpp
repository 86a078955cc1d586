// SPDX-License-Identifier: MIT
#include "vowelway/io/technique/read_technique.hpp"

#include "core/text.hpp"
#include "io/built_in_texts.hpp"
#include "io/vibrato.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "yaml/tree.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace vowelway::io {

namespace {

using yaml::Node;

// A number with its unit (or without one where `unit` is empty), within bounds.
double number(Node const& node, std::string const& what, std::string_view unit, double low, double high) {
    auto const example =
        unit.empty() ? fmt::format("{:g}", (low + high) / 2) : fmt::format("{:g} {}", (low + high) / 2, unit);
    std::string_view rest = yaml::scalar(node, what);
    auto const value = text::eat_number(rest);
    if (!value || text::trim(rest) != unit)
        throw yaml::error_at(node, worded("{0} is \"{1}\"", what, node.text),
                             worded("write it as {0}", example));
    if (*value < low || *value > high)
        throw yaml::error_at(node,
                             worded("{0} is {1}, outside {2}..{3}", what, fmt::format("{:g}", *value),
                                    fmt::format("{:g}", low), fmt::format("{:g}", high)),
                             worded("for instance {0}", example));
    return *value;
}

void weights(Node const& node, Technique& t) {
    yaml::map(node, worded("the weights"), "weights: {text: 0.4, ring: 0.07}");
    yaml::only_keys(node, "text ring stability effort attention line other_vowel "
                          "other_vowel_asked cluster stability_of_men");
    std::optional<double> men;
    for (auto const& [key, value] : node.fields) {
        double const w = number(value, key.text, "", 0, 10);
        if (key.text == "text")
            t.text = w;
        else if (key.text == "ring")
            t.ring = w;
        else if (key.text == "stability")
            t.stability = t.stability_of_men = w;
        else if (key.text == "effort")
            t.effort = w;
        else if (key.text == "attention")
            t.attention = w;
        else if (key.text == "stability_of_men")
            men = w;
        else if (key.text == "other_vowel")
            t.other_vowel = w;
        else if (key.text == "other_vowel_asked")
            t.other_vowel_asked = w;
        else if (key.text == "cluster")
            t.cluster = w;
        else
            t.line = w;
    }
    if (men) t.stability_of_men = *men;
}

void level(Node const& node, Technique& t) {
    yaml::map(node, worded("the level"),
              "level: {per_octave: 8 dB, upper_per_octave: 13 dB, tolerance: 1 dB}");
    yaml::only_keys(node, "per_octave upper_per_octave tolerance");
    if (auto const* n = node.find("per_octave")) t.level_per_octave = {number(*n, "per_octave", "dB", 0, 40)};
    if (auto const* n = node.find("upper_per_octave"))
        t.upper_level_per_octave = {number(*n, "upper_per_octave", "dB", 0, 40)};
    if (auto const* n = node.find("tolerance")) t.ring_tolerance = {number(*n, "tolerance", "dB", 0, 30)};
}

void source(Node const& node, Technique& t) {
    yaml::map(node, worded("the source"), "source: {slope: -12 dB, upper_slope: -22 dB}");
    yaml::only_keys(node, "slope upper_slope upper_begins upper_complete");
    if (auto const* n = node.find("slope"))
        t.source_slope = t.upper_slope = {number(*n, "slope", "dB", -40, -3)};
    if (auto const* n = node.find("upper_slope")) t.upper_slope = {number(*n, "upper_slope", "dB", -40, -3)};
    if (auto const* n = node.find("upper_begins"))
        t.upper_begins = hertz(number(*n, "upper_begins", "Hz", 100, 2000));
    if (auto const* n = node.find("upper_complete"))
        t.upper_complete = hertz(number(*n, "upper_complete", "Hz", 100, 4000));
    if (!(t.upper_begins < t.upper_complete))
        throw yaml::error_at(node, worded("upper_complete is not above upper_begins"),
                             worded("the upper register begins between the two"));
}

Pitch pitch(Node const& node) {
    return yaml::placed(
        node, [&] { return Pitch(parse_frequency(yaml::scalar(node, worded("a pitch")), Tuning{})); });
}

// Names of the parts as a technique writes them, in the order of Technique::gestures.
void gestures(Node const& node, Technique& t) {
    constexpr std::array names{
        "jaw", "lip_opening", "lip_protrusion", "tongue_height", "tongue_advancement", "larynx", "pharynx"};
    yaml::map(node, worded("the gestures"), "gestures: {larynx: 0.6, pharynx: 0.7}");
    yaml::only_keys(node, "jaw lip_opening lip_protrusion tongue_height tongue_advancement larynx pharynx");
    for (std::size_t k = 0; k < names.size(); ++k)
        if (auto const* n = node.find(names[k])) t.gestures[k] = number(*n, names[k], "", 0.1, 10);
}

WantedRelation relation(Node const& node) {
    constexpr auto example = "- {harmonic: 2, side: below fR1, weight: 0.06, to: C5}";
    yaml::map(node, worded("a relation"), example);
    yaml::only_keys(node, "harmonic side weight after_turn from to unmodified within");
    WantedRelation out;
    auto const* harmonic = node.find("harmonic");
    auto const* side = node.find("side");
    auto const* weight = node.find("weight");
    if (!harmonic || !side || !weight)
        throw yaml::error_at(node, worded("a relation needs harmonic, side and weight"),
                             worded("write {0}", example));
    out.harmonic.number = static_cast<int>(number(*harmonic, "harmonic", "", 1, 20));
    auto const& words = yaml::scalar(*side, worded("the side"));
    using Side = WantedRelation::Side;
    bool known = false;
    for (auto [name, value] : {std::pair{"below", Side::below}, {"above", Side::above}, {"at", Side::at}})
        for (int k : {1, 2})
            if (words == fmt::format("{} fR{}", name, k)) {
                out.side = value;
                out.resonance.number = k;
                known = true;
            }
    if (!known)
        throw yaml::error_at(*side, worded("the side is \"{0}\"", words),
                             worded("write below fR1 or above fR1, or at fR1, or one of these with fR2"));
    out.weight = number(*weight, "weight", "", 0, 10);
    if (auto const* after = node.find("after_turn")) {
        auto const& truth = yaml::scalar(*after, "after_turn");
        if (truth != "true" && truth != "false")
            throw yaml::error_at(*after, worded("after_turn is \"{0}\"", truth),
                                 worded("write true or false"));
        out.after_turn_only = truth == "true";
    }
    if (auto const* from = node.find("from")) out.from = pitch(*from);
    if (auto const* to = node.find("to")) out.to = pitch(*to);
    if (auto const* n = node.find("unmodified"))
        out.unmodified = semitones(number(*n, "unmodified", "semitones", 0, 24));
    if (auto const* n = node.find("within")) out.within = semitones(number(*n, "within", "semitones", 0, 24));
    return out;
}

AverageVowels averages(Node const& node) {
    auto const& word = yaml::scalar(node, "averages");
    if (word != "spoken" && word != "sung")
        throw yaml::error_at(node, worded("averages is \"{0}\"", word), worded("write sung or spoken"));
    return word == "sung" ? AverageVowels::sung : AverageVowels::spoken;
}

} // namespace

Technique parse_technique(std::string const& text, std::string const& file) {
    auto const root = yaml::parse(text, file);
    yaml::map(root, worded("a technique"), "vowelway: 1");
    yaml::only_keys(
        root,
        "vowelway technique description sources weights text_saturation drift begins gestures level source "
        "relations vibrato averages");
    auto const* version = root.find("vowelway");
    if (!version || yaml::scalar(*version, worded("the version")) != "1")
        throw yaml::error_at(version ? *version : root, worded("this is not a technique of version 1"),
                             worded("begin the file with vowelway: 1"));
    auto const* name = root.find("technique");
    if (!name) throw yaml::error_at(root, worded("the technique has no name"), worded("add technique: NAME"));
    Technique t;
    t.name = yaml::scalar(*name, worded("the name"));
    if (auto const* n = root.find("description")) t.description = yaml::scalar(*n, worded("the description"));
    if (auto const* n = root.find("sources"))
        for (auto const& item : yaml::sequence(*n, worded("the sources"), "sources: [\"Author year\"]").items)
            t.sources.push_back(yaml::scalar(item, worded("a source")));
    if (auto const* n = root.find("weights")) weights(*n, t);
    if (auto const* n = root.find("text_saturation"))
        t.text_saturation = {number(*n, "text_saturation", "Bark", 0.1, 20)};
    if (auto const* n = root.find("averages")) t.averages = averages(*n);
    if (auto const* n = root.find("drift")) t.drift = {number(*n, "drift", "Bark", 0, 10)};
    if (auto const* n = root.find("begins")) t.begins = number(*n, "begins", "", 0, 2);
    if (auto const* n = root.find("gestures")) gestures(*n, t);
    if (auto const* n = root.find("level")) level(*n, t);
    if (auto const* n = root.find("source")) source(*n, t);
    if (auto const* n = root.find("vibrato")) t.vibrato = read_vibrato(*n);
    if (auto const* n = root.find("relations"))
        for (auto const& item : yaml::sequence(*n, worded("the relations"), "relations: [..]").items)
            t.relations.push_back(relation(item));
    return t;
}

std::vector<std::string> technique_names() {
    std::vector<std::string> names;
    for (auto const& text : built_in_technique_texts()) names.emplace_back(text.name);
    return names;
}

std::optional<Technique> built_in_technique(std::string const& name) {
    for (auto const& text : built_in_technique_texts())
        if (text.name == name) return parse_technique(std::string(text.yaml), "built-in technique " + name);
    return std::nullopt;
}

} // namespace vowelway::io
