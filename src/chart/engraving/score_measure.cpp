// SPDX-License-Identifier: MIT
// Pass 1 of the score: what there is to set, and how much room it wants.
#include "chart/canvas/style.hpp"
#include "chart/engraving/score_layout.hpp"
#include "core/ranges.hpp"
#include "core/utf8.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace vowelway::chart {
namespace {

int letter_index(char step) { return static_cast<int>(std::string_view("CDEFGAB").find(step)); }

bool silent(StaffMeasure const& m) {
    return ranges::all_of(m.events, [](StaffEvent const& e) { return e.rest() && !e.fermata; });
}

/// A bar of rest that may be counted together with the one before it.
bool joins_rest(StaffMeasure const& m) {
    return silent(m) && !m.clef && !m.key && !m.time && !m.repeat_begins && m.ending.empty() &&
           m.texts.empty() && m.clef_changes.empty();
}

double spring_of(StaffEvent const& e) {
    if (e.grace) return 1.6 * space;
    double const quarters = e.length > 0 ? e.length : 0.25;
    return 3.6 * space * std::pow(std::clamp(quarters, 0.06, 8.0), 0.58);
}

double accidental_room(StaffEvent const& e) {
    bool const any = ranges::any_of(e.heads, [](StaffHead const& h) { return h.accidental.has_value(); });
    return any ? 1.65 * space : 0;
}

/// Music fonts keep an elision sign among their private characters (SMuFL: U+E550 to U+E552); the text face
/// has its own, and no others of that kind.
std::string readable(std::string_view text) {
    std::string result;
    for (auto c = utf8::eat(text); c; c = utf8::eat(text)) {
        if (*c >= 0xE550 && *c <= 0xE552)
            result += "‿";
        else if (*c < 0xE000 || *c > 0xF8FF)
            result += utf8::encode(*c);
    }
    return result;
}

std::string joined(std::vector<Syllable> const& syllables) {
    std::string text;
    for (auto const& s : syllables) {
        if (!text.empty()) text += "‿";
        text += readable(s.text);
    }
    return text;
}

Underlay underlay_of(plan::Plan const& plan, std::size_t index) {
    Underlay result;
    auto const& note = plan.passage.notes[index];
    result.lyric = joined(note.syllables);
    if (!note.syllables.empty()) {
        auto const part = note.syllables.back().part;
        result.hyphen = part == Syllable::Part::begin || part == Syllable::Part::middle;
    }
    bool const fresh = !note.melisma;
    if (note.vowel && fresh) {
        result.vowel = note.vowel->held.quality().ipa();
        if (note.vowel->origin == VowelOrigin::guessed) result.vowel += "?";
    }
    if (note.hummed && fresh) result.vowel = "m";
    if (index < plan.notes.size() && plan.notes[index].decision && note.vowel) {
        auto const heard = plan.notes[index].decision->heard.vowel.quality();
        if (!(heard == note.vowel->held.quality())) result.heard = heard.ipa();
    }
    return result;
}

class Measuring {
  public:
    Measuring(plan::Plan const& plan, Staff const& staff, TextMeasurer const& measurer, Under under)
        : plan_(plan), staff_(staff), measurer_(measurer), under_(under),
          begun_(plan.passage.notes.size(), false) {}

    std::vector<Bar> bars();

  private:
    void signs(Bar& bar, KeySignature const& before) const;
    std::size_t bars_of_rest(std::size_t first) const;
    void events(Bar& bar);
    Atom event(std::size_t measure, std::size_t index);
    double under(Underlay const& u) const;

    plan::Plan const& plan_;
    Staff const& staff_;
    TextMeasurer const& measurer_;
    Under under_;
    std::vector<bool> begun_;
    Clef clef_;
    KeySignature key_;
};

double Measuring::under(Underlay const& u) const {
    double const lyric = measurer_.measure(u.lyric, plain(type::body)).advance;
    double const vowel = measurer_.measure(u.vowel, plain(type::body)).advance;
    double const heard = measurer_.measure(u.heard, plain(type::body)).advance;
    return std::max({lyric, vowel, heard}) / 2;
}

Atom Measuring::event(std::size_t measure, std::size_t index) {
    auto const& e = staff_.measures[measure].events[index];
    Atom a{.kind = Atom::Kind::event, .measure = measure, .event = index};
    double const scale = e.grace ? grace_scale : 1;
    if (e.rest()) {
        a.left = a.right = 0.75 * space;
        a.right += e.dots * 0.7 * space;
    } else {
        double const half = e.value <= NoteValue::whole ? 0.85 * space : head_half;
        a.left = scale * (half + accidental_room(e));
        a.right = scale * (half + e.dots * 0.75 * space);
        bool const flag = e.value >= NoteValue::eighth && e.beams.empty();
        if (flag) a.right = std::max(a.right, scale * (half + 0.75 * space));
        if (e.breath_after) a.right += 1.3 * space;
    }
    a.spring = spring_of(e);
    if (e.measure_rest) a.spring = 5 * space;
    if (e.sung && *e.sung < begun_.size()) {
        a.note = e.sung;
        a.begins_note = !begun_[*e.sung];
        begun_[*e.sung] = true;
        if (a.begins_note) {
            a.underlay = underlay_of(plan_, *e.sung);
            if (under_ == Under::words) a.underlay.vowel = a.underlay.heard = {};
            a.under = under(a.underlay);
        }
    }
    return a;
}

Atom& add(Bar& bar, Atom::Kind kind, double left, double right, double spring = 0) {
    return bar.atoms.emplace_back(
        Atom{.kind = kind, .measure = bar.measure, .left = left, .right = right, .spring = spring});
}

/// Clef, key, time and repeat at the beginning of a bar; those of the first stand at the head of its system.
void Measuring::signs(Bar& bar, KeySignature const& before) const {
    auto const& m = staff_.measures[bar.measure];
    bool const first = bar.measure == 0;
    if (m.clef && !first) add(bar, Atom::Kind::clef, 0, 2.6 * space).clef = clef_;
    if (m.key && !first) {
        int const count = std::max(std::abs(key_.fifths), key_.fifths == 0 ? std::abs(before.fifths) : 0);
        auto& a = add(bar, Atom::Kind::key, 0, count * 1.05 * space + 0.3 * space);
        a.key = key_;
        a.key_before = before;
    }
    if (m.time && m.time->sign != TimeSignature::Sign::none) {
        double const digits = m.time->sign == TimeSignature::Sign::numbers
                                  ? measurer_.measure(m.time->beats, bold(3 * space)).advance
                                  : 1.8 * space;
        add(bar, Atom::Kind::time, 0, digits + 0.6 * space);
    }
    if (m.repeat_begins) add(bar, Atom::Kind::repeat_begin, 0.2 * space, 1.6 * space);
}

/// How many bars of rest from this one on are counted together; 1: it stands alone.
std::size_t Measuring::bars_of_rest(std::size_t first) const {
    auto const& measures = staff_.measures;
    auto const& m = measures[first];
    if (!silent(m) || !m.clef_changes.empty() || m.repeat_ends) return 1;
    std::size_t run = 1;
    while (first + run < measures.size() && joins_rest(measures[first + run]) &&
           measures[first + run - 1].right == Barline::regular && !measures[first + run - 1].repeat_ends)
        ++run;
    return run;
}

/// The events of a bar, with the clefs that change between them.
void Measuring::events(Bar& bar) {
    auto const& m = staff_.measures[bar.measure];
    auto change = m.clef_changes.begin();
    auto const change_clef = [&] {
        clef_ = change->second;
        add(bar, Atom::Kind::clef, 0, 2.3 * space).clef = clef_;
        ++change;
    };
    for (std::size_t k = 0; k < m.events.size(); ++k) {
        while (change != m.clef_changes.end() && change->first <= m.events[k].onset + 1e-6) change_clef();
        bar.atoms.push_back(event(bar.measure, k));
        bar.atoms.back().clef = clef_;
    }
    while (change != m.clef_changes.end()) change_clef();
    if (m.events.empty()) add(bar, Atom::Kind::multi_rest, 0.8 * space, 4 * space).bars = 1;
}

void add_barline(Bar& bar, StaffMeasure const& last, std::size_t index) {
    auto& a = add(bar, Atom::Kind::barline, 0.3 * space, 0.9 * space);
    a.measure = index;
    if (last.repeat_ends)
        a.left = 1.7 * space;
    else if (last.right == Barline::final || last.right == Barline::double_)
        a.left = 1.0 * space;
}

std::vector<Bar> Measuring::bars() {
    std::vector<Bar> result;
    auto const& measures = staff_.measures;
    for (std::size_t i = 0; i < measures.size(); ++i) {
        KeySignature const before = key_;
        if (measures[i].clef) clef_ = *measures[i].clef;
        if (measures[i].key) key_ = *measures[i].key;
        Bar bar{.measure = i, .clef = clef_, .key = key_};
        signs(bar, before);
        if (auto const rests = bars_of_rest(i); rests > 1) {
            add(bar, Atom::Kind::multi_rest, 0.8 * space, 7 * space, 2 * space).bars = rests;
            i += rests - 1;
        } else {
            events(bar);
        }
        add_barline(bar, measures[i], i);
        result.push_back(std::move(bar));
    }
    return result;
}

} // namespace

int staff_step(SpelledPitch const& written, Clef const& clef) {
    int const reference = clef.sign == 'F' ? 3 * 7 + 3 : clef.sign == 'C' ? 4 * 7 : 4 * 7 + 4; // F3, C4, G4
    int const bottom = reference - 2 * (clef.line - 1);
    return written.octave * 7 + letter_index(written.step) - bottom;
}

std::vector<Bar> measure_bars(plan::Plan const& plan, Staff const& staff, TextMeasurer const& measurer,
                              Under under) {
    return Measuring(plan, staff, measurer, under).bars();
}

} // namespace vowelway::chart
