// SPDX-License-Identifier: MIT
#include "io/score/staff_lines.hpp"

#include "core/text.hpp"
#include "io/score/named.hpp"
#include "io/score/repeats.hpp"
#include "io/score/staff_events.hpp"
#include "io/score/staff_texts.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

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

class StaffReader {
  public:
    StaffReader(XmlSource const& source, VoiceLine const& line, Timeline const& time, SungLine const& sung,
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
        out.number = name_of_pass(from.number, from.pass);
        out.implicit = from.implicit;
        out.length = time_.length(i);
        attributes(from, out, i == 0);
        barlines(from, out);
        follow_jumps(i, out);
        for (auto const& direction : from.directions) {
            if (direction.staff != 0 && direction.staff != line_.staff) continue;
            for (auto& text : texts_of(direction, false)) out.texts.push_back(std::move(text));
        }
        for (auto& text : system_texts) out.texts.push_back(std::move(text));
        std::stable_sort(out.texts.begin(), out.texts.end(),
                         [](auto const& a, auto const& b) { return a.onset < b.onset; });
        events(i, out);
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

    void events(std::size_t i, StaffMeasure& bar) const {
        auto const& measure = line_.measures[i];
        for (std::size_t k = 0; k < measure.events.size(); ++k) {
            auto const& e = measure.events[k];
            auto const written = [&](pugi::xml_node note) {
                auto pitch = pitch_of(source_, note, bar_name(*measure.measure));
                pitch.octave -= e.event->clef_octave;
                return moved(pitch, shift_);
            };
            if (auto event = staff_event(e, sung_.fates[i][k].sung, written))
                bar.events.push_back(std::move(*event));
        }
    }

    /// Where the bars stand in the order of singing, signs that were followed are not shown; a later pass
    /// says where it begins.
    void follow_jumps(std::size_t i, StaffMeasure& out) const {
        auto const printed = [&](std::size_t k) { return line_.measures[k].measure->printed; };
        bool const comes_by_jump = i > 0 && printed(i) != printed(i - 1) + 1;
        bool const leaves_by_jump = i + 1 < line_.measures.size() && printed(i + 1) != printed(i) + 1;
        int const pass = line_.measures[i].measure->pass;
        if (comes_by_jump || pass > 1) out.repeat_begins = false;
        if (leaves_by_jump || pass > 1) out.repeat_ends = false;
        if (comes_by_jump || leaves_by_jump || pass > 1) out.ending.clear();
        if (comes_by_jump && pass > 1)
            out.texts.push_back({0, StaffText::Kind::words, name_of_pass("", pass)});
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
    StaffReader reader(source, line, time, sung, shift);
    for (std::size_t i = 0; i < line.measures.size(); ++i) {
        // Tempo marks stand over the first part for all.
        std::vector<StaffText> tempo;
        if (own > 0 && i < parts.front().measures.size())
            for (auto const& direction : parts.front().measures[i].directions)
                for (auto& text : texts_of(direction, true)) tempo.push_back(std::move(text));
        out.measures.push_back(reader.measure(i, std::move(tempo)));
    }
    if (!out.measures.empty() && !out.measures.front().time)
        out.measures.front().time = TimeSignature{"4", 4, TimeSignature::Sign::none};
    return out;
}

} // namespace vowelway::io
