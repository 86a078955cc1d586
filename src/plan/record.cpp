// SPDX-License-Identifier: MIT
#include "vowelway/plan/record.hpp"

#include <cmath>

namespace vowelway::plan {

namespace {

class Row {
  public:
    explicit Row(PlanRecord& record) : record_(&record) {}
    void put(Figure figure, double value) {
        auto const at = static_cast<std::size_t>(figure);
        double const step = figure_names()[at].step;
        double const rounded = std::round(value / step) * step;
        record_->figures[at] = std::round(rounded * 1e6) / 1e6 + 0.0; // no dust of binary fractions, no -0
    }
    /// The figures from `first` on.
    void put_all(Figure first, std::initializer_list<double> values) {
        auto at = static_cast<int>(first);
        for (double const value : values) put(static_cast<Figure>(at++), value);
    }

  private:
    PlanRecord* record_;
};

void put_load(Row& row, Load const& load, Tuning const& tuning) {
    row.put_all(Figure::whole_s, {in_seconds(load.whole), in_seconds(load.voiced), load.cycles});
    auto const key = [&](Pitch p) { return tuning.key_number(p.frequency()); };
    auto const& t = load.tessitura;
    row.put_all(Figure::low_key,
                {key(t.low), key(t.quartile1), key(t.median), key(t.quartile3), key(t.high)});
    if (!load.reserve_below) return;
    row.put_all(Figure::reserve_below, {in_semitones(*load.reserve_below), in_semitones(*load.reserve_above),
                                        in_seconds(load.below), in_seconds(load.above)});
}

} // namespace

std::array<FigureName, figure_count> const& figure_names() {
    static std::array<FigureName, figure_count> const names{{
        {"whole_s", "seconds from the first note to the end of the last", 0.001},
        {"voiced_s", "time dose: seconds sung", 0.001},
        {"cycles", "cycle dose: how often the folds close", 1},
        {"low_key", "the lowest note; C4 is 60", 0.01},
        {"quartile1_key", "a quarter of the time sung lies at or below", 0.01},
        {"median_key", "half of it", 0.01},
        {"quartile3_key", "three quarters of it", 0.01},
        {"high_key", "the highest note", 0.01},
        {"reserve_below", "semitones from the lowest note down to the end of the range", 0.01},
        {"reserve_above", "semitones from the highest up to its other end", 0.01},
        {"below_s", "seconds below the range", 0.001},
        {"above_s", "seconds above it", 0.001},
        {"notes", "notes with a vowel", 1},
        {"hold", "share of the time: nothing needed", 0.0001},
        {"migrate", "share: the vowel may drift", 0.0001},
        {"modify", "share: change the shape", 0.0001},
        {"turning", "share: 2fo within the uncertainty of fR1", 0.0001},
        {"meeting", "share: fo within it", 0.0001},
        {"turned", "share: 2fo above fR1", 0.0001},
        {"above", "share: fo above fR1", 0.0001},
        {"high_text", "share: above F♯5", 0.0001},
        {"drift_kept_bark", "how far the vowel is heard from itself, the shape kept", 0.001},
        {"drift_bark", "and with the advice followed", 0.001},
        {"turns", "how often the line comes up past a turn", 1},
        {"turns_on_a_peak", "of them on the peak of a phrase", 1},
        {"long_on_turn", "notes of a second or more on a turn or a meeting", 1},
        {"text", "cost: the vowel heard", 0.001},
        {"ring", "cost: level missing", 0.001},
        {"stability", "cost: a harmonic above fR1", 0.001},
        {"relation", "cost: the technique's wish", 0.001},
        {"effort", "cost: size of the gestures", 0.001},
        {"attention", "cost: changes at all", 0.001},
        {"line", "cost: moving between notes", 0.001},
        {"need_vowels", "against this key: vowels lost", 0.0001},
        {"need_level", "level missing", 0.0001},
        {"need_work", "changes of shape", 0.0001},
        {"need_settle", "long notes on a turn", 0.0001},
        {"need_words", "words too high to tell", 0.0001},
        {"need_high", "lies high", 0.0001},
        {"need_low", "lies low", 0.0001},
        {"need_beyond", "out of range", 0.0001},
        {"need", "all of these together", 0.0001},
        {"worst_cost", "of the note that costs most", 0.001},
    }};
    return names;
}

PlanRecord record_of(RecordKey key, RecordSource source, Singer const& singer, Passage const& passage,
                     KeyPlan const& plan) {
    PlanRecord out{.key = std::move(key),
                   .source = std::move(source),
                   .name = singer.name,
                   .voice = std::string(to_string(singer.voice)),
                   .title = passage.title,
                   .composer = passage.composer,
                   .part = passage.part,
                   .language = passage.language,
                   .worst_bar = {},
                   .worst_syllable = {},
                   .error = {}};
    Row row(out);
    auto const& d = plan.demand;
    auto const& time = d.time;
    put_load(row, d.load, passage.tuning);
    row.put_all(Figure::notes,
                {static_cast<double>(d.each.size()), time.hold, time.migrate, time.modify, time.turning,
                 time.meeting, time.turned, time.above, time.high_text, d.drift_kept.value, d.drift.value,
                 static_cast<double>(d.turns), static_cast<double>(d.exposed),
                 static_cast<double>(plan.long_on_turn.size())});
    auto at = static_cast<int>(Figure::text);
    for (auto const& term : cost_term_names) row.put(static_cast<Figure>(at++), d.cost.*term.value);
    for (auto const& term : key_term_names) row.put(static_cast<Figure>(at++), plan.terms.*term.value);
    row.put(Figure::need, plan.terms.total());
    if (auto const* worst = d.worst()) {
        auto const& note = passage.notes[worst->note];
        out.worst_bar = note.measure;
        out.worst_syllable = note.text();
        row.put(Figure::worst_cost, worst->cost);
    }
    return out;
}

} // namespace vowelway::plan
