// SPDX-License-Identifier: MIT
// A plan made by hand, for tests of the views: an invented tune, an invented singer, and decisions by a
// rule of thumb that stands in for the planner. Believable, repeatable, and of no authority.
#pragma once

#include "vowelway/plan/plan.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

namespace vowelway::sample {

inline double normal_below(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

inline Resonance resonance(double hz, double sd) {
    return {.centre = hertz(hz), .sd = hertz(sd), .bandwidth = {}};
}

inline Singer singer() {
    Singer s;
    s.name = "Ottavio Brandt";
    s.voice = VoiceType::tenor;
    s.range = parse_pitch_range("C3..A4");
    s.provenance = {.method = Method::creak, .date = "2026-10-03", .note = "third lesson"};
    auto const add = [&](char const* ipa, double r1, double sd1, double r2, double sd2) {
        s.vowels.push_back({.vowel = parse_ipa(ipa),
                            .r1 = resonance(r1, sd1),
                            .r2 = resonance(r2, sd2),
                            .r3 = {},
                            .r4 = {},
                            .origin = {}});
    };
    add("i", 300, 18, 2180, 60);
    add("e", 405, 20, 2010, 60);
    add("ɛ", 545, 26, 1790, 60);
    add("a", 700, 34, 1240, 45);
    add("ɔ", 560, 26, 900, 40);
    add("o", 430, 20, 790, 35);
    add("u", 330, 20, 700, 40);
    return s;
}

/// What the rule of thumb says of a vowel at a pitch.
inline plan::Decision decide(VowelResonances const& v, Pitch p) {
    double const fo = in_hertz(p.frequency()), r1 = in_hertz(v.r1.centre), sd = in_hertz(v.r1.sd);
    plan::Decision d;
    d.zone.p_turned = normal_below((2 * fo - r1) / sd);
    d.zone.p_above = normal_below((fo - r1) / sd);
    d.zone.zone = std::abs(2 * fo - r1) <= sd ? plan::Zone::turning
                  : 2 * fo < r1               ? plan::Zone::open
                  : std::abs(fo - r1) <= sd   ? plan::Zone::meeting
                  : fo < r1                   ? plan::Zone::close
                                              : plan::Zone::above;
    d.heard = d.heard_kept = {v.vowel, Bark{0}};
    d.target = {v.r1, v.r2, v.vowel};
    d.certainty = 0.9;
    if (d.zone.zone == plan::Zone::open) {
        d.brief = "hold";
        d.why = "2fo lies under fR1.";
    } else if (d.zone.zone == plan::Zone::turning || d.zone.zone == plan::Zone::close) {
        d.advice = plan::Advice::migrate;
        d.brief = d.zone.zone == plan::Zone::turning ? "let it turn" : "keep the shape";
        d.heard.vowel.raised = 1;
        d.heard.distance = Bark{0.6};
        d.why = "2fo has passed fR1.";
    } else {
        d.advice = plan::Advice::modify;
        d.brief = "open the jaw a little";
        d.target.shade.raised = -1;
        d.target.r1.centre = hertz(std::max(r1, fo) * 1.12);
        d.heard.vowel.raised = -1;
        d.heard.distance = Bark{0.8};
        d.gestures = {{acoustics::Gesture::Part::jaw, 0.3, "open the jaw a little"}};
        d.why = "fo has come to fR1.";
    }
    return d;
}

struct Tone {
    char const* pitch; ///< nothing: a rest
    double quarters;
    char const* syllable = ""; ///< "mi-" begins or goes on, "-no" goes on or ends
    char const* vowel = "";
    bool tied_on = false; ///< held into the next tone
    int triplet = 0;      ///< 1 begins, 2 within, 3 ends
    std::vector<BeamPart> beams = {};
    bool slur_begins = false, slur_ends = false, fermata = false;
    bool grace = false;
};

inline NoteValue value_of(double quarters, int& dots) {
    dots = 0;
    for (auto const& [value, length] : {std::pair{NoteValue::whole, 4.0},
                                        {NoteValue::half, 2.0},
                                        {NoteValue::quarter, 1.0},
                                        {NoteValue::eighth, 0.5},
                                        {NoteValue::n16th, 0.25}}) {
        if (std::abs(quarters - length) < 1e-6) return value;
        if (std::abs(quarters - 1.5 * length) < 1e-6) {
            dots = 1;
            return value;
        }
    }
    return NoteValue::eighth; // of a triplet
}

inline Syllable syllable_of(std::string text) {
    bool const before = text.starts_with("-"), after = text.ends_with("-");
    if (before) text.erase(0, 1);
    if (after) text.pop_back();
    auto const part = before && after ? Syllable::Part::middle
                      : before        ? Syllable::Part::end
                      : after         ? Syllable::Part::begin
                                      : Syllable::Part::single;
    return {text, part};
}

/// The signs the first bar begins with.
inline void add_beginning(StaffMeasure& m) {
    m.clef = Clef{'G', 2, -1};
    m.key = KeySignature{-1};
    m.time = TimeSignature{};
    m.texts.push_back({0, StaffText::Kind::tempo, "Andante"});
    m.texts.push_back({1, StaffText::Kind::dynamic, "p"});
}

/// Whether the last note of the passage is held into the next bar.
inline bool held_over(Passage const& passage) {
    if (passage.staff.measures.empty() || passage.staff.measures.back().events.empty()) return false;
    auto const& last = passage.staff.measures.back().events.back();
    return !last.heads.empty() && last.heads.front().tie_begins;
}

inline StaffEvent event_of(Tone const& tone, double onset) {
    StaffEvent e;
    e.onset = onset;
    e.length = tone.grace ? 0 : tone.quarters;
    e.value = value_of(tone.quarters, e.dots);
    e.beams = tone.beams;
    e.slurs_begin = tone.slur_begins;
    e.slurs_end = tone.slur_ends;
    e.fermata = tone.fermata;
    e.grace = tone.grace;
    if (tone.triplet > 0) e.tuplet = StaffEvent::Tuplet{3, 2, tone.triplet == 1, tone.triplet == 3};
    return e;
}

/// In the key of F major, under an octave clef.
inline StaffHead head_of(SpelledPitch const& sounding, bool tie_begins, bool tie_ends) {
    StaffHead head{.written = sounding, .accidental = {}};
    head.written.octave += 1;
    if (sounding.alter == 1) head.accidental = Accidental::sharp;
    if (sounding.alter == -1 && sounding.step != 'B') head.accidental = Accidental::flat;
    if (sounding.alter == 0 && sounding.step == 'B') head.accidental = Accidental::natural;
    head.tie_begins = tie_begins;
    head.tie_ends = tie_ends;
    return head;
}

inline SungNote note_of(Passage const& passage, Tone const& tone, std::string const& measure, double onset,
                        Duration start, Duration length) {
    auto const sounding = parse_spelled_pitch(tone.pitch);
    SungNote n{.pitch = passage.tuning.pitch(sounding),
               .spelled = sounding,
               .measure = measure,
               .beat = 1 + onset,
               .start = start,
               .length = length,
               .grace = tone.grace,
               .syllables = {},
               .typed_ipa = {},
               .dynamic = {},
               .vowel = {}};
    if (std::string(tone.syllable).empty()) {
        n.melisma = true;
        if (!passage.notes.empty()) n.vowel = passage.notes.back().vowel;
    } else {
        n.syllables.push_back(syllable_of(tone.syllable));
        n.vowel = SungVowel{.held = parse_ipa(tone.vowel), .before = {}, .after = {}};
    }
    return n;
}

inline StaffEvent bar_of_rest() {
    StaffEvent rest;
    rest.length = 4;
    rest.value = NoteValue::whole;
    rest.measure_rest = true;
    return rest;
}

/// Appends a bar to a passage.
inline void add_bar(Passage& passage, std::vector<Tone> const& tones, double seconds_a_quarter = 0.8) {
    StaffMeasure m;
    m.number = std::to_string(passage.staff.measures.size() + 1);
    if (passage.staff.measures.empty()) add_beginning(m);
    double at = 0, start = 0;
    for (auto const& before : passage.staff.measures) start += before.length * seconds_a_quarter;
    bool tied = held_over(passage);
    for (auto const& tone : tones) {
        auto e = event_of(tone, at);
        if (tone.pitch) {
            e.heads.push_back(head_of(parse_spelled_pitch(tone.pitch), tone.tied_on, tied));
            auto const length = seconds(tone.quarters * seconds_a_quarter);
            if (tied)
                passage.notes.back().length = passage.notes.back().length + length;
            else
                passage.notes.push_back(
                    note_of(passage, tone, m.number, at, seconds(start + at * seconds_a_quarter), length));
            e.sung = passage.notes.size() - 1;
        }
        tied = tone.pitch && tone.tied_on;
        m.events.push_back(e);
        at += tone.grace ? 0 : tone.quarters;
    }
    if (tones.empty()) m.events.push_back(bar_of_rest());
    m.length = 4;
    passage.staff.measures.push_back(std::move(m));
}

/// An invented song of 14 bars with most things a vocal line may hold.
inline Passage song() {
    using enum BeamPart;
    Passage p;
    p.title = "Sera di prova";
    p.composer = "invented for the tests";
    p.language = "it";
    add_bar(p, {});
    add_bar(p, {});
    add_bar(p, {});
    add_bar(p, {{nullptr, 2}, {"C3", 1, "Dol-", "o"}, {"F3", 1, "-ce", "e"}});
    add_bar(p, {{"A3", 1.5, "lu-", "u"}, {"G3", 0.5, "-me", "e"}, {"F3", 1, "che", "e"}, {nullptr, 1}});
    add_bar(p, {{"F3", 0.5, "ne-", "e", false, 0, {begin}, true},
                {"G3", 0.5, "", "", false, 0, {through}},
                {"A3", 0.5, "", "", false, 0, {through}},
                {"Bb3", 0.5, "", "", false, 0, {end}, false, true},
                {"C4", 1, "-ra", "a"},
                {"C4", 1, "ve-", "e"}});
    add_bar(p, {{"D4", 2, "-ni", "i", true}, {"D4", 1, "", "", false}, {"E4", 1, "a", "a"}});
    add_bar(p, {{"F4", 1.5, "me", "e"},
                {"E4", 0.5, "so-", "o"},
                {"D4", 0.5, "-vra", "a", false, 0, {begin}},
                {"C4", 0.5, "il", "i", false, 0, {end}},
                {"B3", 1, "ma-", "a"}});
    add_bar(p, {{"C4", 2, "-re", "e"}, {nullptr, 1}, {"F4", 1, "tu", "u"}});
    add_bar(p, {{"A4", 2, "che", "ɛ", false, 0, {}, false, false, true},
                {"G4", 1, "mi", "i"},
                {"F#4", 0.5, "di-", "i", false, 0, {begin}},
                {"G4", 0.5, "-ce-", "e", false, 0, {end}}});
    add_bar(p, {{"F4", 1.0 / 3, "-sti", "i", false, 1, {begin}},
                {"E4", 1.0 / 3, "un", "u", false, 2, {through}},
                {"D4", 1.0 / 3, "dì", "i", false, 3, {end}},
                {"C4", 1, "di", "i"},
                {"Bb3", 0.25, "lon-", "o", false, 0, {begin, begin}, true},
                {"A3", 0.25, "", "", false, 0, {through, end}},
                {"G3", 0.5, "", "", false, 0, {end}, false, true},
                {"A3", 1, "-ta-", "a"}});
    add_bar(p, {{"F3", 4, "-no", "o"}});
    add_bar(p, {{"C4", 1, "can-", "a"},
                {"G4", 0.5, "", "", false, 0, {}, false, false, false, true},
                {"A4", 2, "-to", "ɔ"},
                {"F4", 1, "e", "ɛ"}});
    add_bar(p, {{"F4", 4, "vo", "ɔ", false, 0, {}, false, false, true}});
    p.staff.measures.back().right = Barline::final;
    p.staff.measures[8].right = Barline::double_;
    p.staff.measures[9].texts.push_back({0, StaffText::Kind::dynamic, "f"});
    p.staff.measures[10].texts.push_back({1, StaffText::Kind::words, "poco rit."});
    return p;
}

inline plan::Crossing crossing(int harmonic, int number, Resonance const& r) {
    return {Harmonic{harmonic}, ResonanceNumber{number}, Pitch(hertz(in_hertz(r.centre) / harmonic)),
            r.sd_cents()};
}

/// Up the page, those within the range.
inline std::vector<plan::Crossing> crossings_of(VowelResonances const& v, Pitch low, Pitch high) {
    std::vector<plan::Crossing> crossings;
    for (int n = 1; n <= 8; ++n)
        for (int k = 1; k <= 2; ++k) {
            auto const c = crossing(n, k, k == 1 ? v.r1 : v.r2);
            if (c.pitch >= low && c.pitch <= high) crossings.push_back(c);
        }
    std::ranges::sort(crossings, {}, [](plan::Crossing const& c) { return c.pitch; });
    return crossings;
}

/// How long a passage stays on a vowel at a pitch.
inline Duration sung_at(Passage const& passage, Vowel const& vowel, Pitch pitch) {
    Duration sung = seconds(0);
    for (auto const& n : passage.notes)
        if (n.vowel && n.vowel->held.quality() == vowel && std::abs((n.pitch - pitch).value) < 50)
            sung = sung + n.length;
    return sung;
}

/// From the bottom of a strip to where it asks for more than migration.
inline std::optional<plan::PassiveRange> passive_range(std::vector<plan::PitchCell> const& strip, Cents sd) {
    plan::PassiveRange passive{
        .from = strip.front().pitch, .to = strip.front().pitch, .to_sd = sd, .migrates_from = {}};
    bool any = false;
    passive.reaches_top = true;
    for (auto const& cell : strip) {
        if (cell.decision.advice == plan::Advice::modify) {
            passive.reaches_top = false;
            break;
        }
        any = true;
        passive.to = cell.pitch;
        if (cell.decision.advice == plan::Advice::migrate && !passive.migrates_from)
            passive.migrates_from = cell.pitch;
    }
    return any ? std::optional(passive) : std::nullopt;
}

inline plan::VowelPlan plan_of(VowelResonances const& v, Passage const& passage, PitchRange range) {
    auto const& tuning = passage.tuning;
    plan::VowelPlan vp{.resonances = v,
                       .turning = crossing(2, 1, v.r1),
                       .fo_leads = crossing(2, 1, v.r1).pitch,
                       .meeting = crossing(1, 1, v.r1),
                       .crossings = crossings_of(v, tuning.pitch(range.low), tuning.pitch(range.high)),
                       .strip = {},
                       .passive_range = {},
                       .sung = seconds(0)};
    for (double key = range.low.key_number(); key <= range.high.key_number(); ++key) {
        auto const pitch = tuning.pitch(key);
        auto const sung = sung_at(passage, v.vowel, pitch);
        vp.sung = vp.sung + sung;
        vp.strip.push_back({pitch, decide(v, pitch), sung});
    }
    vp.passive_range = passive_range(vp.strip, v.r1.sd_cents());
    return vp;
}

inline plan::NotePlan plan_of(std::size_t note, plan::Plan const& plan) {
    plan::NotePlan np{.note = note, .vowel = {}, .decision = {}};
    auto const& n = plan.passage.notes[note];
    for (std::size_t v = 0; n.vowel && v < plan.vowels.size(); ++v)
        if (plan.vowels[v].resonances.vowel == n.vowel->held.quality()) {
            np.vowel = v;
            np.decision = decide(plan.vowels[v].resonances, n.pitch);
            double const weight = np.decision->advice == plan::Advice::modify    ? 3
                                  : np.decision->advice == plan::Advice::migrate ? 1
                                                                                 : 0;
            np.importance = std::min(1.0, 0.15 * in_seconds(n.length) * weight);
        }
    return np;
}

/// The plan of a passage (or, without notes, of a range) for a singer.
inline plan::Plan plan_of(Passage passage, Singer singer, PitchRange range) {
    plan::Plan plan{.singer = std::move(singer),
                    .technique = "classical",
                    .range = range,
                    .passage = std::move(passage),
                    .vowels = {},
                    .notes = {},
                    .remarks = {}};
    for (auto const& v : plan.singer.vowels) plan.vowels.push_back(plan_of(v, plan.passage, range));
    for (std::size_t i = 0; i < plan.passage.notes.size(); ++i) plan.notes.push_back(plan_of(i, plan));
    return plan;
}

inline plan::Plan song_plan() { return plan_of(song(), singer(), parse_pitch_range("C3..A4")); }
inline plan::Plan range_plan() { return plan_of({}, singer(), parse_pitch_range("C3..A4")); }

} // namespace vowelway::sample
