// SPDX-License-Identifier: MIT
#include "vowelway/plan/compare_plans.hpp"

#include "core/interval_words.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace vowelway::plan {

namespace {

constexpr double turned = 0.95; // beyond reasonable doubt, as for voices compared

bool is_open(Decision const& d) { return d.zone.p_turned < 1 - turned; }
bool is_turned(Decision const& d) { return d.zone.p_turned > turned; }

std::array<Cents, 2> way_of(Decision const& d, VowelResonances const& own) {
    if (d.advice != Advice::modify) return {};
    return {interval(own.r1.centre, d.target.r1.centre), interval(own.r2.centre, d.target.r2.centre)};
}

Parting parting_of(Decision const& a, Decision const& b, std::array<std::array<Cents, 2>, 2> const& way) {
    if (a.advice != b.advice) return Parting::advice;
    for (std::size_t k = 0; k < 2; ++k)
        if (std::abs((way[1][k] - way[0][k]).value) > same_way.value) return Parting::shape;
    if ((is_open(a) && is_turned(b)) || (is_turned(a) && is_open(b))) return Parting::sound;
    return Parting::none;
}

double certainty_of(Parting parting, Decision const& a, Decision const& b) {
    switch (parting) {
    case Parting::none:
        return 1;
    case Parting::advice:
    case Parting::shape:
        return a.certainty * b.certainty;
    case Parting::sound:
        break;
    }
    double const pa = a.zone.p_turned, pb = b.zone.p_turned;
    return std::max(pa * (1 - pb), pb * (1 - pa));
}

double weight_of(ComparedNote const& c, Decision const& a, Decision const& b, Duration length) {
    if (c.parting == Parting::none) return 0;
    double const held = std::clamp(std::sqrt(in_seconds(length) / 2), 0.2, 1.0); // as for the notes to watch
    bool const effort =
        c.parting == Parting::advice && (a.advice == Advice::modify || b.advice == Advice::modify);
    return held * c.certainty * (effort ? 1.0 : 0.6);
}

/// Octaves from the first singer's notes up to the second's; each may sing the line in an octave of their
/// own.
int octaves_between(Plan const& a, Plan const& b) {
    if (a.notes.empty() || b.notes.empty()) return 0;
    double const between = (b.passage.notes[0].pitch - a.passage.notes[0].pitch).value;
    return static_cast<int>(std::lround(between / 1200));
}

bool same_passage(Plan const& a, Plan const& b) {
    if (a.notes.size() != b.notes.size()) return false;
    double const between = 1200.0 * octaves_between(a, b);
    for (std::size_t i = 0; i < a.notes.size(); ++i) {
        auto const &x = a.passage.notes[i], &y = b.passage.notes[i];
        bool const same_vowel =
            x.vowel.has_value() == y.vowel.has_value() && (!x.vowel || x.vowel->held == y.vowel->held);
        if (std::abs((y.pitch - x.pitch).value - between) > 1 || !same_vowel ||
            std::abs(in_seconds(x.length - y.length)) > 1e-6)
            return false;
    }
    return true;
}

} // namespace

std::string_view to_string(Parting parting) {
    switch (parting) {
    case Parting::none:
        return to_word("none");
    case Parting::advice:
        return to_word("advice");
    case Parting::shape:
        return to_word("shape");
    case Parting::sound:
        return to_word("sound");
    }
    return "";
}

PlansCompared compare_plans(Plan first, Plan second) {
    if (!same_passage(first, second))
        throw InputError(worded("the two plans have different notes or vowels"),
                         worded("make both from the same part and verse of the same score, in the same key"));
    PlansCompared out{.plans = {std::move(first), std::move(second)},
                      .notes = {},
                      .times = {},
                      .parting = {},
                      .surely_parting = {},
                      .remarks = {}};
    auto const& [a, b] = out.plans;
    for (std::size_t i = 0; i < a.notes.size(); ++i) {
        auto const &da = a.notes[i].decision, &db = b.notes[i].decision;
        if (!da || !db) continue;
        auto const length = a.passage.notes[i].length;
        ComparedNote c{.note = i};
        c.way = {way_of(*da, a.vowels[*a.notes[i].vowel].resonances),
                 way_of(*db, b.vowels[*b.notes[i].vowel].resonances)};
        c.parting = parting_of(*da, *db, c.way);
        c.certainty = certainty_of(c.parting, *da, *db);
        c.weight = weight_of(c, *da, *db, length);
        out.times[0].of[static_cast<std::size_t>(da->advice)] += length;
        out.times[1].of[static_cast<std::size_t>(db->advice)] += length;
        if (c.parting != Parting::none) out.parting += length;
        if (c.parting != Parting::none && c.certainty >= sure_parting) out.surely_parting += length;
        out.notes.push_back(c);
    }
    if (out.notes.empty())
        throw InputError(worded("the passage has no vowel to compare"),
                         worded("give a score with words, or a passage with vowels"));
    if (int const octaves = octaves_between(a, b); octaves != 0)
        out.remarks.push_back(
            {Remark::Kind::assumed, worded("pitches are those of {0}; {1} sings {2}", a.singer.name,
                                           b.singer.name, interval_in_words(12.0 * octaves))});
    for (auto const& plan : out.plans)
        for (auto const& remark : plan.remarks) {
            bool const said = ranges::any_of(
                out.remarks, [&](Remark const& r) { return r.kind == remark.kind && r.text == remark.text; });
            if (!said) out.remarks.push_back(remark);
        }
    return out;
}

} // namespace vowelway::plan
