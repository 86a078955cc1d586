// SPDX-License-Identifier: MIT
#include "sound/line_course.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::sound {

namespace {

constexpr double pitch_glide = 0.07, shape_glide = 0.13, shape_ahead = 0.03, loudness_glide = 0.15; // s
constexpr double attack = 0.06, release = 0.1, soft_onset = 0.12, onset_decibels = -5;
constexpr double syllable_dip = 0.7, syllable_width = 0.022, syllable_ahead = 0.012;

double smooth(double x) {
    x = std::clamp(x, 0.0, 1.0);
    return x * x * (3 - 2 * x);
}

} // namespace

bool LineCourse::joined(std::size_t i) const {
    return i > 0 && (*notes_)[i].start - (*notes_)[i - 1].end < joined_within;
}

// Rise and fall of phrases, and the moment between two syllables at which a consonant would stand.
double LineCourse::size_at(double t) const {
    auto const& notes = *notes_;
    auto const& note = notes[now_];
    double const from_start = t - in_seconds(note.start), to_end = in_seconds(note.end) - t;
    double const half = in_seconds(note.end - note.start) / 2;
    double size = note.size;
    bool const goes_on = now_ + 1 < notes.size() && joined(now_ + 1);
    if (!joined(now_)) size *= smooth(from_start / std::min(attack, half));
    if (!goes_on) size *= smooth(to_end / std::min(release, half));
    auto const dip = [&](double distance) {
        double const x = distance / syllable_width;
        size *= 1 - syllable_dip * std::exp(-x * x);
    };
    if (joined(now_) && note.new_syllable) dip(from_start + syllable_ahead);
    if (goes_on && notes[now_ + 1].new_syllable) dip(in_seconds(notes[now_ + 1].start) - t - syllable_ahead);
    return size;
}

Moment LineCourse::operator()(Duration when) {
    auto const& notes = *notes_;
    double const t = in_seconds(when);
    while (now_ + 1 < notes.size() && in_seconds(notes[now_ + 1].start) <= t) ++now_;
    auto const& note = notes[now_];
    double const since = t - in_seconds(note.start);
    Moment out{.pitch = note.pitch, .r1 = note.r1, .r2 = note.r2, .loudness = note.loudness, .size = 0};
    // Where a joint is near, what is heard lies between the two notes.
    auto const blend = [&](LineNote const& a, LineNote const& b) {
        double const from_joint = t - in_seconds(b.start);
        double const room = std::min(in_seconds(a.end - a.start), in_seconds(b.end - b.start));
        auto const share = [&](double glide, double ahead) {
            glide = std::min(glide, room);
            return smooth(0.5 + (from_joint + std::min(ahead, glide / 2)) / glide);
        };
        out.pitch = a.pitch + (b.pitch - a.pitch) * share(pitch_glide, 0);
        double const shape = share(shape_glide, shape_ahead);
        out.r1 = a.r1 * std::pow(b.r1 / a.r1, shape);
        out.r2 = a.r2 * std::pow(b.r2 / a.r2, shape);
        out.loudness = a.loudness + (b.loudness - a.loudness) * share(loudness_glide, 0);
    };
    bool const first_half = since < in_seconds(note.end - note.start) / 2;
    if (first_half && joined(now_))
        blend(notes[now_ - 1], note);
    else if (!first_half && now_ + 1 < notes.size() && joined(now_ + 1))
        blend(note, notes[now_ + 1]);
    if (t < in_seconds(note.start) || t > in_seconds(note.end)) {
        // A gap too short to be one is sung through.
        bool const bridged = t > in_seconds(note.end) && now_ + 1 < notes.size() && joined(now_ + 1);
        if (!bridged) return out;
    }
    if (!joined(now_))
        out.loudness = out.loudness + Decibels{onset_decibels * (1 - smooth(since / soft_onset))};
    if (vibrato_.extent.value != 0) out.pitch = out.pitch + swing(vibrato_, seconds(since), when);
    out.size = size_at(t);
    return out;
}

} // namespace vowelway::sound
