// SPDX-License-Identifier: MIT
// One plan among many thousand: a row of figures, without its notes.
// Threads: plain values.
#pragma once

#include "vowelway/plan/keys.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace vowelway::plan {

/// The figures of a plan, in the order of their columns.
enum class Figure {
    whole_s,
    voiced_s,
    cycles,
    low_key,
    quartile1_key,
    median_key,
    quartile3_key,
    high_key,
    reserve_below,
    reserve_above,
    below_s,
    above_s,
    notes,
    hold,
    migrate,
    modify,
    turning,
    meeting,
    turned,
    above,
    high_text,
    drift_kept_bark,
    drift_bark,
    turns,
    turns_on_a_peak,
    long_on_turn,
    text,
    ring,
    stability,
    relation,
    effort,
    attention,
    line,
    need_vowels,
    need_level,
    need_work,
    need_settle,
    need_words,
    need_high,
    need_low,
    need_beyond,
    need,
    worst_cost,
    count
};
inline constexpr std::size_t figure_count = static_cast<std::size_t>(Figure::count);

struct FigureName {
    std::string_view name; ///< of the column; a unit at its end where it has one
    std::string_view says;
    double step; ///< it is rounded to
};
/// The name of each, in their order.
std::array<FigureName, figure_count> const& figure_names();

/// What a record is about: no two records of a survey share it.
struct RecordKey {
    std::string song;   ///< the file, as it was named
    std::string singer; ///< the profile, as it was named
    std::string technique;
    int transpose = 0; ///< semitones up from where the singer would have it
    friend auto operator<=>(RecordKey const&, RecordKey const&) = default;
};

/// What a record was computed from: with the same it need not be computed again.
struct RecordSource {
    std::string song_hash, singer_hash, technique_hash, program;
    int draws = 0;
    friend bool operator==(RecordSource const&, RecordSource const&) = default;
};

struct PlanRecord {
    RecordKey key;
    RecordSource source;
    std::string name, voice;                     ///< of the singer
    std::string title, composer, part, language; ///< as far as the score says
    std::string worst_bar, worst_syllable;       ///< of the note that costs most
    std::string error;                           ///< why there are no figures; empty where there are
    std::array<std::optional<double>, figure_count> figures{};

    std::optional<double> operator[](Figure f) const { return figures[static_cast<std::size_t>(f)]; }
};

/// The figures of a key that was planned, rounded to their steps.
PlanRecord record_of(RecordKey key, RecordSource source, Singer const& singer, Passage const& passage,
                     KeyPlan const& plan);

} // namespace vowelway::plan
