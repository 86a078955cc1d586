// SPDX-License-Identifier: MIT
#include "io/score/part_events.hpp"

#include "core/text.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace vowelway::io {

namespace {

/// The sum of "3+2"; nothing if it is none.
std::optional<int> sum_of(std::string_view text) {
    int sum = 0;
    for (text = text::trim(text);;) {
        auto const value = text::eat_number(text);
        if (!value || *value < 1 || *value > 1000 || *value != std::floor(*value)) return std::nullopt;
        sum += static_cast<int>(*value);
        text = text::trim(text);
        if (text.empty()) return sum;
        if (!text::eat(text, "+")) return std::nullopt;
        text = text::trim(text);
    }
}

class Reader {
  public:
    Reader(XmlSource const& source, Part& part) : source_(source), part_(part) {}

    void measure(MeasureNode const& from) {
        auto& bar = part_.measures.emplace_back();
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
            throw InputError("a <" + std::string(of.name()) + "> has no duration", "export the score again",
                             source_.place(of, where_));
        double const value = source_.number(node, where_);
        if (!(value > 0) || value / divisions_ > 10000)
            throw InputError("the duration " + std::string(trimmed(node)) + " is not possible",
                             "durations are above 0; export the score again", source_.place(node, where_));
        return value / divisions_;
    }

    void note(pugi::xml_node node) {
        bool const chord = node.child("chord") && !bar_->events.empty();
        if (chord) {
            auto& with = bar_->events.back();
            if (!node.child("pitch") || node.child("cue")) return;
            if (with.rest || with.unpitched || with.cue) return;
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
            throw InputError("a <note> has neither pitch nor rest", "export the score again",
                             source_.place(node, where_));
        event.voice = trimmed(node.child("voice"));
        if (auto const staff = node.child("staff")) event.staff = std::clamp(staff.text().as_int(1), 1, 99);
        if (event.voice.empty()) event.voice = event.staff > 1 ? "staff " + std::to_string(event.staff) : "1";
        part_.staves = std::max(part_.staves, event.staff);
        if (bar_->events.size() >= static_cast<std::size_t>(most_bar_events))
            throw InputError("a bar has more than " + std::to_string(most_bar_events) + " notes and rests",
                             "add bar lines", source_.place(node, where_));
        if (voices_.insert(event.voice).second && voices_.size() > static_cast<std::size_t>(most_part_voices))
            throw InputError("a part has more than " + std::to_string(most_part_voices) + " voices",
                             "export the score again", source_.place(node, where_));
        event.onset = now_;
        event.length = event.grace ? 0 : duration(node);
        event.notes = {node};
        now_ += event.length;
        bar_->filled = std::max(bar_->filled, now_);
        bar_->events.push_back(std::move(event));
    }

    void attributes(pugi::xml_node node) {
        if (auto const divisions = node.child("divisions")) {
            double const value = source_.number(divisions, where_);
            if (!(value > 0) || value > 1e7)
                throw InputError("<divisions> is " + std::string(trimmed(divisions)) +
                                     "; a quarter note needs a number of parts above 0",
                                 "export the score again", source_.place(divisions, where_));
            divisions_ = value;
        }
        if (auto const staves = node.child("staves"))
            part_.staves = std::max(part_.staves, std::clamp(staves.text().as_int(1), 1, 99));
        for (auto const& clef : node.children("clef")) {
            StaffChange change{now_, clef.attribute("number").as_int(1), {}, {}, {}, {}};
            change.clef = clef_of(clef);
            bar_->changes.push_back(change);
        }
        for (auto const& key : node.children("key")) {
            StaffChange change{now_, key.attribute("number").as_int(0), {}, {}, {}, {}};
            int fifths = 0;
            if (auto const f = key.child("fifths")) {
                double const value = source_.number(f, where_);
                if (std::abs(value) > 21 || value != std::floor(value))
                    throw InputError("a key signature of " + std::string(trimmed(f)) +
                                         " fifths is not possible",
                                     "write -7 to 7", source_.place(f, where_));
                fifths = static_cast<int>(value);
            }
            change.key = KeySignature{fifths};
            bar_->changes.push_back(change);
        }
        for (auto const& time : node.children("time")) {
            StaffChange change{now_, time.attribute("number").as_int(0), {}, {}, {}, {}};
            change.time = time_of(time);
            bar_->changes.push_back(change);
        }
        for (auto const& transpose : node.children("transpose")) {
            StaffChange change{now_, transpose.attribute("number").as_int(0), {}, {}, {}, {}};
            auto const value = [&](char const* name) {
                auto const child = transpose.child(name);
                double const v = child ? source_.number(child, where_) : 0.0;
                if (std::abs(v) > 100)
                    throw InputError("a transposition of " + std::string(trimmed(child)) + " is not possible",
                                     "export the score again", source_.place(child, where_));
                return v;
            };
            double const chromatic = value("chromatic"), octaves = value("octave-change");
            Interval interval = interval_for_key(chromatic, 0);
            if (transpose.child("diatonic"))
                interval.fifths = static_cast<int>(std::lround(7 * chromatic - 12 * value("diatonic")));
            interval.semitones += 12 * octaves;
            change.transpose = interval;
            bar_->changes.push_back(change);
        }
    }

    static Clef clef_of(pugi::xml_node node) {
        Clef clef;
        auto const sign = trimmed(node.child("sign"));
        clef.sign = sign == "F"            ? 'F'
                    : sign == "C"          ? 'C'
                    : sign == "percussion" ? 'P'
                    : sign == "TAB"        ? 'T'
                                           : 'G';
        int const usual = clef.sign == 'F' ? 4 : clef.sign == 'G' ? 2 : 3;
        clef.line = std::clamp(node.child("line").text().as_int(usual), 1, 5);
        clef.octave_change = std::clamp(node.child("clef-octave-change").text().as_int(0), -3, 3);
        return clef;
    }

    TimeSignature time_of(pugi::xml_node node) {
        TimeSignature time;
        std::string_view const symbol = node.attribute("symbol").value();
        time.sign = symbol == "common" ? TimeSignature::Sign::common
                    : symbol == "cut"  ? TimeSignature::Sign::cut
                                       : TimeSignature::Sign::numbers;
        if (node.child("senza-misura")) {
            time.sign = TimeSignature::Sign::none;
            nominal_ = 0;
            return time;
        }
        // Several fractions ("3/8 + 2/4") are written over their finest denominator.
        std::vector<std::pair<std::string, int>> fractions;
        int finest = 1;
        for (auto child = node.child("beats"); child; child = child.next_sibling("beats")) {
            auto const type_node = child.next_sibling("beat-type");
            auto const sum = sum_of(child.child_value());
            int const type = type_node ? type_node.text().as_int(0) : 0;
            if (!sum || type < 1 || type > 1024 || (type & (type - 1)) != 0)
                throw InputError("the time signature " + std::string(trimmed(child)) + "/" +
                                     std::string(trimmed(type_node)) + " is not possible",
                                 "write beats above 0 over a power of two", source_.place(child, where_));
            fractions.emplace_back(std::string(trimmed(child)), type);
            finest = std::max(finest, type);
        }
        if (fractions.empty()) return time;
        nominal_ = 0;
        time.beats.clear();
        for (auto const& [beats, type] : fractions) {
            int const sum = *sum_of(beats);
            nominal_ += 4.0 * sum / type;
            if (!time.beats.empty()) time.beats += "+";
            time.beats += type == finest ? beats : std::to_string(sum * (finest / type));
        }
        std::erase(time.beats, ' ');
        time.beat_type = beat_type_ = finest;
        if (node.attribute("print-object").value() == std::string_view("no"))
            time.sign = TimeSignature::Sign::none;
        return time;
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
        return InputError(what, "a pitch has a step A to G, an octave 0 to 9 and at most two accidentals",
                          source.place(node, bar));
    };
    if (step.size() != 1 || step[0] < 'A' || step[0] > 'G')
        throw wrong("\"" + std::string(step) + "\" is not a step of a pitch");
    pitch.step = step[0];
    if (auto const alter = node.child("alter"); alter && !trimmed(alter).empty())
        pitch.alter = source.number(alter, bar);
    if (std::abs(pitch.alter) > 3)
        throw wrong("an alteration of " + std::string(trimmed(node.child("alter"))) +
                    " semitones is not possible");
    if (!node.child("octave")) throw wrong("a pitch has no octave");
    double const octave = source.number(node.child("octave"), bar);
    if (octave < 0 || octave > 9 || octave != std::floor(octave))
        throw wrong("the octave " + std::string(trimmed(node.child("octave"))) + " is not possible");
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
