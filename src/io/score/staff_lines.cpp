// SPDX-License-Identifier: MIT
#include "io/score/staff_lines.hpp"

#include "core/text.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::io {

namespace {

template <class T, std::size_t n>
std::optional<T> named(std::array<std::pair<std::string_view, T>, n> const& table, std::string_view name) {
    for (auto const& [known, value] : table)
        if (known == name) return value;
    return std::nullopt;
}

constexpr std::array<std::pair<std::string_view, Accidental>, 12> accidental_names{
    {{"sharp", Accidental::sharp},
     {"flat", Accidental::flat},
     {"natural", Accidental::natural},
     {"double-sharp", Accidental::double_sharp},
     {"sharp-sharp", Accidental::double_sharp},
     {"flat-flat", Accidental::double_flat},
     {"natural-sharp", Accidental::sharp},
     {"natural-flat", Accidental::flat},
     {"quarter-sharp", Accidental::quarter_sharp},
     {"quarter-flat", Accidental::quarter_flat},
     {"slash-quarter-sharp", Accidental::quarter_sharp},
     {"slash-flat", Accidental::quarter_flat}}};

constexpr std::array<std::pair<std::string_view, BeamPart>, 5> beam_names{
    {{"begin", BeamPart::begin},
     {"continue", BeamPart::through},
     {"end", BeamPart::end},
     {"forward hook", BeamPart::forward_hook},
     {"backward hook", BeamPart::backward_hook}}};

constexpr std::array<std::pair<std::string_view, Barline>, 11> barline_names{
    {{"regular", Barline::regular},
     {"light-light", Barline::double_},
     {"light-heavy", Barline::final},
     {"heavy", Barline::final},
     {"heavy-heavy", Barline::final},
     {"heavy-light", Barline::double_},
     {"none", Barline::none},
     {"dashed", Barline::dashed},
     {"dotted", Barline::dashed},
     {"short", Barline::regular},
     {"tick", Barline::none}}};

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> note_glyphs{{{"whole", "𝅝"},
                                                                                    {"half", "𝅗𝅥"},
                                                                                    {"quarter", "♩"},
                                                                                    {"eighth", "♪"},
                                                                                    {"16th", "𝅘𝅥𝅯"},
                                                                                    {"32nd", "𝅘𝅥𝅰"},
                                                                                    {"breve", "𝅜"},
                                                                                    {"long", "𝆷"},
                                                                                    {"64th", "𝅘𝅥𝅱"}}};

std::string metronome_text(pugi::xml_node node) {
    std::string out;
    for (auto const& child : node.children()) {
        std::string_view const name = child.name();
        if (name == "beat-unit") {
            if (!out.empty()) out += " = ";
            out += named(note_glyphs, trimmed(child)).value_or(trimmed(child));
        } else if (name == "beat-unit-dot")
            out += ".";
        else if (name == "per-minute")
            out += " = " + std::string(trimmed(child));
    }
    return out;
}

bool is_mark(pugi::xml_node direction) {
    return std::string_view(direction.attribute("id").value()).starts_with(mark_name);
}

/// Tempo, words and dynamics of one direction.
std::vector<StaffText> texts_of(PartDirection const& direction, bool tempo_only) {
    std::vector<StaffText> out;
    if (is_mark(direction.node)) return out;
    bool const sets_tempo = static_cast<bool>(direction.node.child("sound").attribute("tempo"));
    std::string tempo;
    bool metronome = false;
    for (auto const& type : direction.node.children("direction-type"))
        for (auto const& child : type.children()) {
            std::string_view const name = child.name();
            if (name == "metronome") {
                auto const text = metronome_text(child);
                if (!text.empty()) tempo += (tempo.empty() ? "" : " ") + text;
                metronome = true;
            } else if (name == "words" && !trimmed(child).empty()) {
                tempo += (tempo.empty() ? "" : " ") + std::string(trimmed(child));
            } else if (name == "rehearsal" && !tempo_only && !trimmed(child).empty()) {
                out.push_back({direction.onset, StaffText::Kind::rehearsal, std::string(trimmed(child))});
            } else if (name == "dynamics" && !tempo_only) {
                for (auto const& mark : child.children()) {
                    std::string const text = mark.name() == std::string_view("other-dynamics")
                                                 ? std::string(trimmed(mark))
                                                 : mark.name();
                    if (!text.empty()) out.push_back({direction.onset, StaffText::Kind::dynamic, text});
                }
            }
        }
    bool const is_tempo = sets_tempo || metronome;
    if (!tempo.empty() && (is_tempo || !tempo_only))
        out.insert(out.begin(),
                   {direction.onset, is_tempo ? StaffText::Kind::tempo : StaffText::Kind::words, tempo});
    return out;
}

class Engraver {
  public:
    Engraver(XmlSource const& source, VoiceLine const& line, Timeline const& time, SungLine const& sung,
             Interval shift)
        : source_(source), line_(line), time_(time), sung_(sung), shift_(shift) {
        bool any = false;
        for (auto const& measure : line.measures)
            for (auto const& e : measure.events)
                for (auto const& note : e.event->notes) any |= static_cast<bool>(note.child("accidental"));
        set_signs_ = !any || !(shift == Interval{});
    }

    StaffMeasure measure(std::size_t i, std::vector<StaffText> system_texts) {
        auto const& from = *line_.measures[i].measure;
        StaffMeasure out;
        out.number = from.number;
        out.implicit = from.implicit;
        out.length = time_.length(i);
        attributes(from, out, i == 0);
        barlines(from, out);
        for (auto const& direction : from.directions) {
            if (direction.staff != 0 && direction.staff != line_.staff) continue;
            for (auto& text : texts_of(direction, false)) out.texts.push_back(std::move(text));
        }
        for (auto& text : system_texts) out.texts.push_back(std::move(text));
        std::stable_sort(out.texts.begin(), out.texts.end(),
                         [](auto const& a, auto const& b) { return a.onset < b.onset; });
        for (std::size_t k = 0; k < line_.measures[i].events.size(); ++k) event(i, k, out);
        close_tuplets(out);
        if (set_signs_) set_accidentals(out, fifths_);
        return out;
    }

  private:
    void attributes(PartMeasure const& from, StaffMeasure& out, bool first) {
        if (first) {
            out.clef = Clef{};
            out.key = KeySignature{moved_key(0)};
        }
        for (auto const& change : from.changes) {
            if (change.staff != 0 && change.staff != line_.staff) continue;
            bool const at_start = change.onset < time_tolerance;
            if (change.clef && at_start)
                out.clef = change.clef;
            else if (change.clef)
                out.clef_changes.emplace_back(change.onset, *change.clef);
            // A signature within a bar is shown at the bar's start if nothing else is: the staff has one a
            // bar.
            if (change.key && (at_start || !out.key)) {
                out.key = KeySignature{moved_key(change.key->fifths)};
                fifths_ = out.key->fifths;
            }
            if (change.time && (at_start || !out.time)) out.time = change.time;
        }
    }

    int moved_key(int fifths) const { return fifths + shift_.fifths; }

    static void barlines(PartMeasure const& from, StaffMeasure& out) {
        for (auto const& node : from.barlines) {
            std::string_view const location = node.attribute("location").value();
            std::string_view const repeat = node.child("repeat").attribute("direction").value();
            out.repeat_begins |= repeat == "forward";
            out.repeat_ends |= repeat == "backward";
            if (location != "left" && location != "middle")
                if (auto const style = named(barline_names, trimmed(node.child("bar-style"))))
                    out.right = *style;
            auto const ending = node.child("ending");
            if (ending.attribute("type").value() == std::string_view("start")) {
                std::string const text(trimmed(ending));
                out.ending = text.empty() ? numbers(ending.attribute("number").value()) : text;
            }
        }
    }

    /// "1,2" -> "1., 2."
    static std::string numbers(std::string_view list) {
        std::string out;
        while (!list.empty()) {
            auto const comma = list.find(',');
            auto const one = text::trim(list.substr(0, comma));
            if (!one.empty()) out += (out.empty() ? "" : ", ") + std::string(one) + ".";
            if (comma == std::string_view::npos) break;
            list.remove_prefix(comma + 1);
        }
        return out;
    }

    void event(std::size_t i, std::size_t k, StaffMeasure& bar) {
        auto const& e = line_.measures[i].events[k];
        auto const& from = *e.event;
        auto const node = from.node();
        bool const silent = from.rest || from.cue || from.unpitched || e.unsung;
        if (from.cue && from.grace) return;
        if (from.rest && node.attribute("print-object").value() == std::string_view("no")) return;
        StaffEvent out;
        out.onset = e.onset;
        out.length = e.length;
        out.grace = from.grace;
        out.measure_rest = from.measure_rest && !e.cut;
        value(out, e);
        out.sung = sung_.fates[i][k].sung;
        if (!silent) {
            auto const written = [&](pugi::xml_node note) {
                auto pitch = pitch_of(source_, note, bar_name(*line_.measures[i].measure));
                pitch.octave -= from.clef_octave;
                return moved(pitch, shift_);
            };
            for (auto const& note : from.notes) out.heads.push_back(head(note, written(note)));
            stem_and_beams(out, node);
        }
        notations(out, from);
        bar.events.push_back(std::move(out));
    }

    static StaffHead head(pugi::xml_node note, SpelledPitch written) {
        StaffHead out{written, {}, false, false};
        out.accidental = named(accidental_names, trimmed(note.child("accidental")));
        for (auto const& tie : note.children("tie")) {
            out.tie_begins |= tie.attribute("type").value() == std::string_view("start");
            out.tie_ends |= tie.attribute("type").value() == std::string_view("stop");
        }
        for (auto const& notations : note.children("notations"))
            for (auto const& tie : notations.children("tied")) {
                out.tie_begins |= tie.attribute("type").value() == std::string_view("start");
                out.tie_ends |= tie.attribute("type").value() == std::string_view("stop");
            }
        return out;
    }

    static void value(StaffEvent& out, LineEvent const& e) {
        auto const node = e.event->node();
        double ratio = 1;
        if (auto const mod = node.child("time-modification")) {
            StaffEvent::Tuplet tuplet;
            tuplet.actual = std::clamp(mod.child("actual-notes").text().as_int(3), 1, 1000);
            tuplet.normal = std::clamp(mod.child("normal-notes").text().as_int(2), 1, 1000);
            ratio = static_cast<double>(tuplet.actual) / tuplet.normal;
            if (tuplet.actual != tuplet.normal) out.tuplet = tuplet;
        }
        double const named_length = quarters_of(trimmed(node.child("type")));
        if (named_length > 0 && !e.cut && !(e.event->rest && e.event->measure_rest)) {
            out.value = value_of(std::max(named_length, 1.0 / 64)).value;
            for (auto const& dot : node.children("dot")) {
                (void)dot;
                if (out.dots < 4) ++out.dots;
            }
            return;
        }
        if (e.event->measure_rest && !e.cut) {
            out.value = NoteValue::whole;
            return;
        }
        auto const [value, dots] = value_of(out.grace ? 0.5 : e.length * ratio);
        out.value = value;
        out.dots = dots;
    }

    static void stem_and_beams(StaffEvent& out, pugi::xml_node node) {
        auto const stem = trimmed(node.child("stem"));
        out.stem = stem == "up"     ? StemDirection::up
                   : stem == "down" ? StemDirection::down
                   : stem == "none" ? StemDirection::none
                                    : StemDirection::automatic;
        for (auto const& beam : node.children("beam")) {
            auto const part = named(beam_names, trimmed(beam));
            auto const number =
                static_cast<std::size_t>(std::clamp(beam.attribute("number").as_int(1), 1, 8));
            if (!part) continue;
            if (out.beams.size() < number) out.beams.resize(number, *part);
            out.beams[number - 1] = *part;
        }
    }

    static void notations(StaffEvent& out, PartEvent const& from) {
        for (auto const& note : from.notes)
            for (auto const& notations : note.children("notations"))
                for (auto const& child : notations.children()) {
                    std::string_view const name = child.name();
                    std::string_view const type = child.attribute("type").value();
                    if (name == "slur") {
                        out.slurs_begin += type == "start" ? 1 : 0;
                        out.slurs_end += type == "stop" ? 1 : 0;
                    } else if (name == "fermata")
                        out.fermata = true;
                    else if (name == "tuplet" && out.tuplet) {
                        out.tuplet->begins |= type == "start";
                        out.tuplet->ends |= type == "stop";
                    } else if (name == "articulations") {
                        out.staccato |= static_cast<bool>(child.child("staccato"));
                        out.accent |= child.child("accent") || child.child("strong-accent");
                        out.tenuto |= static_cast<bool>(child.child("tenuto"));
                        out.breath_after |= child.child("breath-mark") || child.child("caesura");
                    }
                }
    }

    /// Where the source marks no tuplet's beginning and end, a group ends when its notes fill the time of
    /// `normal` of the first note's value.
    static void close_tuplets(StaffMeasure& bar) {
        auto& events = bar.events;
        for (std::size_t i = 0; i < events.size();) {
            if (!events[i].tuplet) {
                ++i;
                continue;
            }
            auto last = i;
            bool marked = false;
            while (last < events.size() && events[last].tuplet &&
                   events[last].tuplet->actual == events[i].tuplet->actual &&
                   events[last].tuplet->normal == events[i].tuplet->normal) {
                marked |= events[last].tuplet->begins || events[last].tuplet->ends;
                ++last;
            }
            if (!marked) group(events, i, last);
            i = last;
        }
    }

    static void group(std::vector<StaffEvent>& events, std::size_t first, std::size_t last) {
        double filled = 0, unit = 0;
        bool open = false;
        for (auto i = first; i < last; ++i) {
            auto& tuplet = *events[i].tuplet;
            if (!open) {
                tuplet.begins = open = true;
                filled = 0;
                unit = std::ldexp(32.0, -static_cast<int>(events[i].value));
            }
            filled += events[i].length;
            double const whole = unit * tuplet.normal;
            bool const full = std::abs(std::remainder(filled, whole)) < time_tolerance;
            if (full || i + 1 == last) {
                tuplet.ends = true;
                open = false;
            }
        }
    }

    XmlSource const& source_;
    VoiceLine const& line_;
    Timeline const& time_;
    SungLine const& sung_;
    Interval shift_;
    bool set_signs_ = false;
    int fifths_ = 0;
};

} // namespace

Staff staff_of(XmlSource const& source, std::vector<Part> const& parts, std::size_t own,
               VoiceLine const& line, Timeline const& time, SungLine const& sung, Interval shift) {
    Staff out;
    Engraver engraver(source, line, time, sung, shift);
    for (std::size_t i = 0; i < line.measures.size(); ++i) {
        // Tempo marks stand over the first part for all.
        std::vector<StaffText> tempo;
        if (own > 0 && i < parts.front().measures.size())
            for (auto const& direction : parts.front().measures[i].directions)
                for (auto& text : texts_of(direction, true)) tempo.push_back(std::move(text));
        out.measures.push_back(engraver.measure(i, std::move(tempo)));
    }
    if (!out.measures.empty() && !out.measures.front().time)
        out.measures.front().time = TimeSignature{"4", 4, TimeSignature::Sign::none};
    return out;
}

} // namespace vowelway::io
