// SPDX-License-Identifier: MIT
#include "io/score/part_events.hpp"

#include "io/score/attributes.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace vowelway::io {

namespace {

class Reader {
  public:
    Reader(XmlSource const& source, Part& part) : source_(source), part_(part) {}

    void measure(MeasureNode const& from) {
        auto& bar = part_.measures.emplace_back();
        bar.printed = part_.measures.size() - 1;
        bar.number = from.measure.attribute("number").value();
        bar.implicit = from.measure.attribute("implicit").value() == std::string_view("yes");
        bar.node = from.music;
        bar_ = &bar;
        where_ = bar_name(bar);
        now_ = 0;
        for (auto const& child : from.music.children()) element(child);
        std::stable_sort(bar.events.begin(), bar.events.end(),
                         [](auto const& a, auto const& b) { return a.onset < b.onset - time_tolerance; });
        std::stable_sort(bar.changes.begin(), bar.changes.end(),
                         [](auto const& a, auto const& b) { return a.onset < b.onset; });
        carry_attributes();
        bar.nominal = nominal_;
        bar.beat_type = beat_type_;
    }

  private:
    void element(pugi::xml_node child) {
        std::string_view const name = child.name();
        if (name == "note")
            note(child);
        else if (name == "backup" || name == "forward") {
            double const step = duration(child);
            now_ += name == "backup" ? -step : step;
            if (now_ < -time_tolerance) ++part_.early_backups;
            now_ = std::max(0.0, now_);
            bar_->filled = std::max(bar_->filled, now_);
        } else if (name == "attributes")
            attributes(child);
        else if (name == "direction") {
            double at = now_;
            if (auto const offset = child.child("offset")) at += source_.number(offset, where_) / divisions_;
            int staff = 0;
            if (auto const s = child.child("staff")) staff = s.text().as_int();
            bar_->directions.push_back({std::max(0.0, at), staff, child});
        } else if (name == "sound") {
            double at = now_;
            if (auto const offset = child.child("offset")) at += source_.number(offset, where_) / divisions_;
            bar_->directions.push_back({std::max(0.0, at), 0, child});
        } else if (name == "barline")
            bar_->barlines.push_back(child);
    }

    double duration(pugi::xml_node of) const {
        auto const node = of.child("duration");
        if (!node)
            throw InputError(worded("a <{0}> has no duration", of.name()), worded("export the score again"),
                             source_.place(of, where_));
        double const value = source_.number(node, where_);
        if (!(value > 0) || value / divisions_ > 10000)
            throw InputError(worded("the duration {0} is not possible", trimmed(node)),
                             worded("durations are above 0; export the score again"),
                             source_.place(node, where_));
        return value / divisions_;
    }

    void note(pugi::xml_node node) {
        bool const chord = node.child("chord") && !bar_->events.empty();
        if (chord) {
            auto& with = bar_->events.back();
            if (!node.child("pitch") || node.child("cue") || with.rest || with.unpitched) return;
            if (with.cue) { // the full-size note beside a small one is the one to sing
                with.cue = false;
                with.small.swap(with.notes);
            }
            with.notes.push_back(node);
            return;
        }
        PartEvent event;
        event.grace = static_cast<bool>(node.child("grace"));
        event.cue = static_cast<bool>(node.child("cue"));
        event.rest = static_cast<bool>(node.child("rest"));
        event.unpitched = static_cast<bool>(node.child("unpitched"));
        event.measure_rest = node.child("rest").attribute("measure").value() == std::string_view("yes");
        if (!event.rest && !event.unpitched && !node.child("pitch"))
            throw InputError(worded("a <note> has neither pitch nor rest"), worded("export the score again"),
                             source_.place(node, where_));
        event.voice = trimmed(node.child("voice"));
        if (auto const staff = node.child("staff")) event.staff = std::clamp(staff.text().as_int(1), 1, 99);
        if (event.voice.empty()) event.voice = event.staff > 1 ? "staff " + std::to_string(event.staff) : "1";
        part_.staves = std::max(part_.staves, event.staff);
        if (bar_->events.size() >= static_cast<std::size_t>(most_bar_events))
            throw InputError(worded("a bar has more than {0} notes and rests", most_bar_events),
                             worded("add bar lines"), source_.place(node, where_));
        if (voices_.insert(event.voice).second && voices_.size() > static_cast<std::size_t>(most_part_voices))
            throw InputError(worded("a part has more than {0} voices", most_part_voices),
                             worded("export the score again"), source_.place(node, where_));
        event.onset = now_;
        event.length = event.grace ? 0 : duration(node);
        event.notes = {node};
        now_ += event.length;
        bar_->filled = std::max(bar_->filled, now_);
        bar_->events.push_back(std::move(event));
    }

    double divisions(pugi::xml_node node) const {
        double const value = source_.number(node, where_);
        if (!(value > 0) || value > 1e7)
            throw InputError(
                worded("<divisions> is {0}; a quarter note needs a number of parts above 0", trimmed(node)),
                worded("export the score again"), source_.place(node, where_));
        return value;
    }

    /// A change of what a node is about, here: on its staff, or on `usual` where it names none.
    StaffChange& change(pugi::xml_node node, int usual) {
        bar_->changes.push_back({now_, node.attribute("number").as_int(usual), {}, {}, {}, {}});
        return bar_->changes.back();
    }

    void attributes(pugi::xml_node node) {
        if (auto const child = node.child("divisions")) divisions_ = divisions(child);
        if (auto const staves = node.child("staves"))
            part_.staves = std::max(part_.staves, std::clamp(staves.text().as_int(1), 1, 99));
        for (auto const& clef : node.children("clef")) change(clef, 1).clef = read_clef(clef);
        for (auto const& key : node.children("key")) change(key, 0).key = read_key(source_, key, where_);
        for (auto const& time : node.children("time")) {
            auto const read = read_time(source_, time, where_);
            nominal_ = read.quarters.value_or(nominal_);
            beat_type_ = read.beat_type.value_or(beat_type_);
            change(time, 0).time = read.time;
        }
        for (auto const& transpose : node.children("transpose"))
            change(transpose, 0).transpose = read_transposition(source_, transpose, where_);
    }

    /// Gives every event the clef, key and transposition in force at its onset.
    void carry_attributes() {
        std::size_t next = 0;
        auto const apply_until = [&](double onset) {
            for (; next < bar_->changes.size() && bar_->changes[next].onset <= onset + time_tolerance;
                 ++next) {
                auto const& change = bar_->changes[next];
                if (change.clef) clef_octave_[change.staff] = change.clef->octave_change;
                auto const set = [&](auto& map, auto value) {
                    if (change.staff == 0) map.clear();
                    map[change.staff] = value;
                };
                if (change.key) set(fifths_, change.key->fifths);
                if (change.transpose) set(transpose_, *change.transpose);
            }
        };
        auto const of = [](auto const& map, int staff) {
            auto found = map.find(staff);
            if (found == map.end()) found = map.find(0);
            return found == map.end() ? typename std::decay_t<decltype(map)>::mapped_type{} : found->second;
        };
        for (auto& event : bar_->events) {
            apply_until(event.onset);
            event.clef_octave = of(clef_octave_, event.staff);
            event.fifths = of(fifths_, event.staff);
            event.transpose = of(transpose_, event.staff);
        }
        apply_until(1e18);
    }

    XmlSource const& source_;
    Part& part_;
    PartMeasure* bar_ = nullptr;
    std::string where_;
    double now_ = 0, divisions_ = 1, nominal_ = 4;
    int beat_type_ = 4;
    std::map<int, int> clef_octave_, fifths_; // by staff; 0 for all
    std::map<int, Interval> transpose_;
    std::set<std::string> voices_;
};

} // namespace

std::string bar_name(PartMeasure const& measure) {
    return measure.number.empty() ? std::string("a bar without number") : "bar " + measure.number;
}

SpelledPitch pitch_of(XmlSource const& source, pugi::xml_node note, std::string const& bar) {
    auto const node = note.child("pitch");
    SpelledPitch pitch;
    auto const step = trimmed(node.child("step"));
    auto const wrong = [&](std::string const& what) {
        return InputError(what,
                          worded("a pitch has a step A to G, an octave 0 to 9 and at most two accidentals"),
                          source.place(node, bar));
    };
    if (step.size() != 1 || step[0] < 'A' || step[0] > 'G')
        throw wrong(worded("\"{0}\" is not a step of a pitch", step));
    pitch.step = step[0];
    if (auto const alter = node.child("alter"); alter && !trimmed(alter).empty())
        pitch.alter = source.number(alter, bar);
    if (std::abs(pitch.alter) > 3)
        throw wrong(worded("an alteration of {0} semitones is not possible", trimmed(node.child("alter"))));
    if (!node.child("octave")) throw wrong(worded("a pitch has no octave"));
    double const octave = source.number(node.child("octave"), bar);
    if (octave < 0 || octave > 9 || octave != std::floor(octave))
        throw wrong(worded("the octave {0} is not possible", trimmed(node.child("octave"))));
    pitch.octave = static_cast<int>(octave);
    return pitch;
}

Part read_part(XmlSource const& source, PartInfo const& info) {
    Part part;
    part.info = info;
    Reader reader(source, part);
    for (auto const& measure : info.measures) reader.measure(measure);
    return part;
}

} // namespace vowelway::io
