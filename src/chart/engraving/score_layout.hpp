// SPDX-License-Identifier: MIT
// The vocal line cut into systems. Passes: measure (how much room each thing wants) -> assign (which bars
// share a system) -> place (where each thing stands). Drawing is in engrave.hpp.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/plan/plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace vowelway::chart {

/// Distance of two staff lines, in points.
inline constexpr double space = 4.7;
inline constexpr double head_half = 0.59 * space; ///< half the width of a note head
inline constexpr double grace_scale = 0.64;

/// What is set under a note.
struct Underlay {
    std::string lyric;
    bool hyphen = false; ///< the word goes on
    std::string vowel;   ///< the vowel sung, IPA; with a question mark when guessed from the spelling
    std::string heard;   ///< IPA, where it differs
};

/// One thing on the staff that takes room: it reaches `left` and `right` of its place.
struct Atom {
    enum class Kind { clef, key, time, repeat_begin, event, multi_rest, barline };
    Kind kind = Kind::event;
    std::size_t measure = 0; ///< index in the staff
    std::size_t event = 0;   ///< index in the measure
    double left = 0, right = 0;
    double under = 0;  ///< half the width of what is set under it
    double spring = 0; ///< room it would like behind it, for its duration
    Clef clef = {};
    KeySignature key = {}, key_before = {};
    std::size_t bars = 1;                 ///< of a multi_rest
    std::optional<std::size_t> note = {}; ///< sung note it begins or continues
    bool begins_note = false;
    Underlay underlay = {}; ///< only where a note begins
    double x = 0;           ///< set by place
};

/// The least that stays together.
struct Bar {
    std::size_t measure = 0;
    bool whole = true; ///< false: a part of a bar too wide for a system
    bool first_part = true;
    Clef clef; ///< at its beginning
    KeySignature key = {};
    std::vector<Atom> atoms = {};
};

struct System {
    std::vector<Atom> atoms; ///< placed, from the clef to the last barline
    Clef clef = {};
    double width = 0;
    std::size_t first_measure = 0;
    bool begins_mid_bar = false;
};

/// The staff to draw: that of the passage, or one made from its notes when it came without.
Staff staff_to_draw(Passage const& passage);

/// What stands under the notes.
enum class Under { words, words_and_vowels };
std::vector<Bar> measure_bars(plan::Plan const& plan, Staff const& staff, TextMeasurer const& measurer,
                              Under under = Under::words_and_vowels);
std::vector<System> assign_systems(std::vector<Bar> bars, double width);

/// Steps above the bottom line of a written pitch.
int staff_step(SpelledPitch const& written, Clef const& clef);

} // namespace vowelway::chart
