// SPDX-License-Identifier: MIT
#include "io/score/passage_staff.hpp"

#include "core/text.hpp"
#include "io/score/staff_lines.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::io {

namespace {

constexpr double finest = 0.25; // a sixteenth: what a length in seconds is rounded to on the staff

/// The clef that puts the middle of the compass nearest the middle line.
Clef clef_for(Passage const& passage) {
    double low = 1e9, high = -1e9;
    for (auto const& note : passage.notes) {
        low = std::min(low, note.spelled.key_number());
        high = std::max(high, note.spelled.key_number());
    }
    constexpr double middle_c = 60;
    return (low + high) / 2 >= middle_c ? Clef{'G', 2, 0} : Clef{'F', 4, 0};
}

class Builder {
  public:
    explicit Builder(TimeSignature const& time) : bar_(bar_length(time)) {}

    /// Adds a note or rest of a whole number of sixteenths, parted at bar lines and into values with at most
    /// one dot.
    void add(double length, WrittenNote const& note) {
        bool first = true;
        while (length > time_tolerance) {
            double const room = full() ? bar_ : bar_ - at_;
            double part = std::min(length, room);
            if (!note.pitch && full() && part > bar_ - time_tolerance) {
                place(part, note, first, false);
                measure().events.back().measure_rest = true;
                measure().events.back().value = NoteValue::whole;
                measure().events.back().dots = 0;
            } else {
                part = std::min(part, largest_value(part));
                place(part, note, first, length - part > time_tolerance);
            }
            length -= part;
            first = false;
        }
    }

    std::vector<StaffMeasure> measures;

  private:
    static double largest_value(double within) {
        double best = finest;
        for (double plain = 32; plain >= finest; plain /= 2)
            for (double value : {plain * 1.5, plain})
                if (value <= within + time_tolerance && value > best) best = value;
        return best;
    }

    StaffMeasure& measure() { return measures.back(); }

    void place(double length, WrittenNote const& note, bool first, bool more) {
        if (full()) {
            auto& fresh = measures.emplace_back();
            fresh.number = std::to_string(measures.size());
            fresh.length = bar_;
            at_ = 0;
        }
        StaffEvent event;
        event.onset = at_;
        event.length = length;
        auto const [value, dots] = value_of(length);
        event.value = value;
        event.dots = dots;
        event.sung = note.sung;
        if (note.pitch) event.heads.push_back({*note.pitch, {}, more, !first});
        measure().events.push_back(std::move(event));
        at_ += length;
    }

    /// The next event begins a bar.
    bool full() const { return measures.empty() || at_ >= bar_ - time_tolerance; }

    double bar_;
    double at_ = 0;
};

} // namespace

double bar_length(TimeSignature const& time) {
    std::string_view beats = time.beats;
    return text::eat_number(beats).value_or(4) * 4 / time.beat_type;
}

void build_staff(Passage& passage, std::vector<WrittenNote> const& notes, TimeSignature const& time,
                 KeySignature key) {
    Builder builder(time);
    double drawn = 0; // what is on the staff so far; rounding never adds up
    for (auto const& note : notes) {
        double const end = std::max(drawn + finest, std::round((note.onset + note.length) / finest) * finest);
        builder.add(end - drawn, note);
        drawn = end;
    }
    double const bar = bar_length(time);
    double const past = std::fmod(drawn + time_tolerance, bar);
    if (past > 2 * time_tolerance)
        builder.add(bar - past + time_tolerance, {drawn, bar - past, std::nullopt, std::nullopt});
    for (auto& measure : builder.measures) set_accidentals(measure, key.fifths);
    auto& first = builder.measures.front();
    first.clef = clef_for(passage);
    first.key = key;
    first.time = time;
    builder.measures.back().right = Barline::final;
    passage.staff.measures = std::move(builder.measures);
}

} // namespace vowelway::io
