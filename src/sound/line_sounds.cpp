// SPDX-License-Identifier: MIT
#include "vowelway/sound/line_sounds.hpp"

#include "sound/line_course.hpp"
#include "sound/noise.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/sung_source.hpp"
#include "vowelway/sound/tones.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace vowelway::sound {

namespace {

constexpr Duration lead = seconds(0.5), tail = seconds(0.3);
constexpr Decibels guide_level{52}, click_level{62}, breath_level{38};
constexpr double hum_size = 0.35;

// Air drawn in through a shape, wide open.
class Breath : public Part {
  public:
    explicit Breath(acoustics::ResonanceSet const& shape) : noise_(3) {
        for (std::size_t k = 0; k < 4; ++k)
            resonators_[k].tune(in_hertz(shape.peaks[k].centre), 5 * in_hertz(shape.peaks[k].bandwidth));
        auto trial = resonators_; // its mean square, from the response to an impulse
        double energy = 0, last = 0;
        for (int i = 0; i < 4800; ++i) {
            double y = i == 0 ? 1 : 0;
            for (auto& r : trial) y = r(y);
            energy += (y - last) * (y - last);
            last = y;
        }
        factor_ = peak_of(breath_level) / std::sqrt(2 * energy);
    }
    void add(std::span<double> block) override {
        for (double& sample : block) {
            double y = noise_.next();
            for (auto& r : resonators_) y = r(y);
            sample += factor_ * (y - last_);
            last_ = y;
        }
    }

  private:
    Noise noise_;
    std::array<Resonator, 4> resonators_;
    double factor_ = 0, last_ = 0;
};

std::vector<LineNote> notes_of(plan::Plan const& plan, Timing const& timing, Voice const& voice, bool kept,
                               int& hummed) {
    std::vector<LineNote> out;
    for (auto const& timed : timing.notes) {
        auto const& note = plan.passage.notes[timed.note];
        auto const& planned = plan.notes[timed.note];
        LineNote line{.start = timed.start,
                      .end = timed.start + timed.length,
                      .pitch = note.pitch,
                      .r1 = 0.5 * voice.quarter, // lips closed
                      .r2 = 2.3 * voice.quarter,
                      .loudness = plan::loudness_of(note),
                      .size = hum_size,
                      .new_syllable = !note.melisma};
        if (planned.vowel && planned.decision) {
            auto const& own = plan.vowels[*planned.vowel].resonances;
            auto const& target = planned.decision->target;
            line.r1 = kept ? own.r1.centre : target.r1.centre;
            line.r2 = kept ? own.r2.centre : target.r2.centre;
            line.size = 1;
        } else {
            ++hummed;
        }
        if (!out.empty()) {
            if (line.start < out.back().end) out.back().end = line.start; // never two at once
            if (out.back().end <= out.back().start) out.pop_back();
        }
        out.push_back(line);
    }
    return out;
}

std::string bars_from(std::string const& first, std::string const& last) {
    return first == last ? worded("bar {0}", first) : worded("bars {0} to {1}", first, last);
}

} // namespace

Programme line_sounds(plan::Plan const& plan, Timing const& timing, Voice const& voice,
                      LineAsked const& asked) {
    Programme out;
    int hummed = 0;
    auto const notes =
        std::make_shared<std::vector<LineNote> const>(notes_of(plan, timing, voice, asked.kept, hummed));
    out.remarks.push_back({Remark::Kind::assumed, worded("consonants are left out of the sound")});
    if (hummed > 0)
        out.remarks.push_back(
            {Remark::Kind::assumed, hummed == 1
                                        ? worded("1 note has no vowel to plan and is hummed")
                                        : worded("{0} notes have no vowel to plan and are hummed", hummed)});
    auto const& passage = plan.passage;
    auto const& first = passage.notes[timing.notes.front().note];
    auto const& last = passage.notes[timing.notes.back().note];
    out.items.push_back(
        {asked.kept ? worded("{0}, vowels kept", bars_from(first.measure, last.measure))
                    : worded("{0}, vowels as planned", bars_from(first.measure, last.measure)),
         lead,
         timing.length + tail,
         [voice, notes, vibrato = asked.vibrato] { return sung(voice, LineCourse(notes, vibrato)); },
         {},
         seconds(0.01)});
    for (std::size_t i = 0; i < notes->size(); ++i) {
        auto const& note = (*notes)[i];
        Duration const free = i > 0 ? note.start - (*notes)[i - 1].end : note.start + lead;
        if (i > 0 && free < seconds(0.35)) continue;
        Duration const length = std::min(free - seconds(0.08), seconds(0.5));
        auto const shape = acoustics::resonance_set(note.r1, note.r2, voice.quarter);
        out.items.push_back({"",
                             lead + note.start - length - seconds(0.03),
                             length,
                             [shape] { return std::make_unique<Breath>(shape); },
                             {},
                             seconds(0.15)});
    }
    if (asked.guide)
        for (auto const& note : *notes)
            out.items.push_back({"",
                                 lead + note.start,
                                 note.end - note.start,
                                 [pitch = note.pitch] { return guide_tone(pitch, guide_level); },
                                 {},
                                 seconds(0.02)});
    for (auto const& beat : timing.beats)
        if (asked.click || beat.at < timing.begins - seconds(1e-6))
            out.items.push_back({"",
                                 lead + beat.at,
                                 seconds(0.06),
                                 [high = beat.first_of_bar] { return click(high, click_level); },
                                 {},
                                 seconds(0.001)});
    return out;
}

} // namespace vowelway::sound
