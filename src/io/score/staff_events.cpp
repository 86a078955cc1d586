// SPDX-License-Identifier: MIT
#include "io/score/staff_events.hpp"

#include "io/score/named.hpp"
#include "io/score/staff_lines.hpp"

#include <algorithm>
#include <string_view>

namespace vowelway::io {

namespace {

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

StaffHead head(pugi::xml_node note, SpelledPitch written) {
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

void value(StaffEvent& out, LineEvent const& e) {
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

void stem_and_beams(StaffEvent& out, pugi::xml_node node) {
    auto const stem = trimmed(node.child("stem"));
    out.stem = stem == "up"     ? StemDirection::up
               : stem == "down" ? StemDirection::down
               : stem == "none" ? StemDirection::none
                                : StemDirection::automatic;
    for (auto const& beam : node.children("beam")) {
        auto const part = named(beam_names, trimmed(beam));
        auto const number = static_cast<std::size_t>(std::clamp(beam.attribute("number").as_int(1), 1, 8));
        if (!part) continue;
        if (out.beams.size() < number) out.beams.resize(number, *part);
        out.beams[number - 1] = *part;
    }
}

void notations(StaffEvent& out, PartEvent const& from) {
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

} // namespace

std::optional<StaffEvent> staff_event(LineEvent const& e, std::optional<std::size_t> sung,
                                      WrittenPitch const& written) {
    auto const& from = *e.event;
    auto const node = from.node();
    bool const silent = from.rest || from.cue || from.unpitched || e.unsung;
    if (from.cue && from.grace) return std::nullopt;
    if (from.rest && node.attribute("print-object").value() == std::string_view("no")) return std::nullopt;
    StaffEvent out;
    out.onset = e.onset;
    out.length = e.length;
    out.grace = from.grace;
    out.measure_rest = from.measure_rest && !e.cut;
    value(out, e);
    out.sung = sung;
    if (!silent) {
        for (auto const& note : from.notes) out.heads.push_back(head(note, written(note)));
        stem_and_beams(out, node);
    }
    notations(out, from);
    return out;
}

} // namespace vowelway::io
