// SPDX-License-Identifier: MIT
#include "vowelway/sound/note_sounds.hpp"
#include "core/ranges.hpp"

#include "sound/pacing.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/sung_source.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::sound {

namespace {

constexpr Duration note_edge = seconds(0.08);

std::string where(plan::NoteExplanation const& e) {
    return e.note.spelled.str() + ", /" + e.vowel.vowel.ipa() + "/";
}

std::string at(Resonance const& r1, Resonance const& r2) {
    auto const rounded = [](Resonance const& r) {
        return std::to_string(10 * std::lround(in_hertz(r.centre) / 10)) + " Hz";
    };
    return " (fR1 " + rounded(r1) + ", fR2 " + rounded(r2) + ")";
}

Decibels level_of(Voice const& voice, Moment const& m) {
    return acoustics::NoteSpectrum(m.pitch, voice.quarter, voice.source, m.loudness, voice.blur)
        .level(acoustics::resonance_set(m.r1, m.r2, voice.quarter));
}

std::string decibels(Decibels d) {
    auto const tenths = std::lround(std::abs(d.value) * 10);
    return (d.value < 0 ? "-" : "+") + std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) +
           " dB";
}

} // namespace

Voice voice_of(Singer const& singer, Technique const& technique, std::span<VowelResonances const> planned) {
    return {.quarter = acoustics::quarter_wave(plan::tract_length_of(singer, planned)),
            .source = plan::source_of(technique),
            .blur = {}};
}

Programme note_sounds(plan::NoteExplanation const& e, Voice const& voice, NoteSoundsAsked const& asked) {
    Programme out;
    auto const moment = [&](plan::ShapeExplained const& shape) {
        return Moment{.pitch = e.note.pitch,
                      .r1 = shape.r1.centre,
                      .r2 = shape.r2.centre,
                      .loudness = plan::loudness_of(e.note)};
    };
    auto const add = [&](std::string what, Moment const& m, Decibels change) {
        then(
            out, std::move(what), asked.each,
            [voice, m, vibrato = asked.vibrato] { return sung(voice, steady(m, vibrato)); }, change,
            note_edge);
    };
    auto const kept = moment(e.kept);
    auto const kept_text = worded("{0}, shape kept{1}", where(e), at(e.kept.r1, e.kept.r2));
    if (!e.changed) {
        if (asked.only == NoteSound::changed)
            throw InputError(worded("nothing is to be changed on this note: {0}", e.decision.why),
                             worded("hear it as it is kept, or choose a note that the plan modifies"),
                             {.file = {}, .musical = worded("bar {0}", e.note.measure)});
        out.remarks.push_back(
            {Remark::Kind::assumed, worded("nothing is to be changed on this note; it is heard as kept")});
        add(kept_text, kept, {});
        return out;
    }
    auto const changed = moment(*e.changed);
    auto const changed_text = worded("{0}, shape changed{1}", where(e), at(e.changed->r1, e.changed->r2));
    auto const gain = level_of(voice, changed) - level_of(voice, kept);
    bool const both = !asked.only;
    if (both || *asked.only == NoteSound::kept) add(kept_text, kept, {});
    if (both || *asked.only == NoteSound::changed)
        add(changed_text + (both ? ", " + decibels(gain) : ""), changed, {});
    if (both) {
        add(worded("{0}, matched in loudness", kept_text), kept, {});
        add(worded("{0}, matched in loudness", changed_text), changed, -gain);
    }
    return out;
}

namespace {

// The resonances that the plan aims at on any pitch between its semitones.
class Aimed {
  public:
    explicit Aimed(plan::VowelPlan const& vowel) {
        for (auto const& cell : vowel.strip)
            points_.push_back({cell.pitch, cell.decision.target.r1.centre, cell.decision.target.r2.centre});
    }
    void set(Moment& m) const {
        auto const after = ranges::find_if(points_, [&](Point const& p) { return p.pitch > m.pitch; });
        if (after == points_.begin() || after == points_.end()) {
            auto const& end = after == points_.end() ? points_.back() : points_.front();
            m.r1 = end.r1;
            m.r2 = end.r2;
            return;
        }
        auto const& before = *(after - 1);
        double const share = (m.pitch - before.pitch) / (after->pitch - before.pitch);
        auto const between = [&](Frequency a, Frequency b) { return a * std::pow(b / a, share); };
        m.r1 = between(before.r1, after->r1);
        m.r2 = between(before.r2, after->r2);
    }

  private:
    struct Point {
        Pitch pitch;
        Frequency r1, r2;
    };
    std::vector<Point> points_;
};

} // namespace

Programme glide_sounds(plan::VowelPlan const& vowel, Voice const& voice, GlideAsked const& asked) {
    constexpr Cents below = semitones(7), above = semitones(5), shortest = semitones(4);
    Programme out;
    auto const name = "/" + vowel.resonances.vowel.ipa() + "/";
    auto const bottom = vowel.strip.front().pitch, top = vowel.strip.back().pitch;
    Aimed const aimed(vowel);
    auto const slide = [&](plan::Crossing const& crossing, std::string_view what, bool changed) {
        auto const from = std::max(crossing.pitch - below, bottom),
                   to = std::min(crossing.pitch + above, top);
        auto const named = asked.tuning.name(crossing.pitch).str();
        if (crossing.pitch < from || crossing.pitch > to || to - from < shortest) {
            if (!changed)
                out.remarks.push_back(
                    {Remark::Kind::assumed,
                     worded("the {0} of {1} ({2} at {3}) lies outside the range, and is left out",
                            reworded(what), name, crossing.str(), named)});
            return;
        }
        auto const pitch_at = [from, to, whole = asked.each](Duration t) {
            double const share = std::clamp((t.value() - 0.5) / std::max(whole.value() - 1, 0.1), 0.0, 1.0);
            return from + (to - from) * share;
        };
        auto const course = [=, r1 = vowel.resonances.r1.centre,
                             r2 = vowel.resonances.r2.centre](Duration t) {
            Moment m{.pitch = pitch_at(t), .r1 = r1, .r2 = r2};
            if (changed) aimed.set(m);
            return m;
        };
        then(
            out,
            worded("{0} from {1} to {2} through its {3} ({4} at {5}), {6}", name,
                   asked.tuning.name(from).str(), asked.tuning.name(to).str(), reworded(what), crossing.str(),
                   named, changed ? worded("the shape changed as planned") : worded("the shape kept")),
            asked.each, [voice, course] { return sung(voice, course); }, {}, note_edge);
    };
    slide(vowel.turning, to_word("turning point"), false);
    slide(vowel.meeting, to_word("meeting point"), false);
    slide(vowel.meeting, to_word("meeting point"), true);
    if (out.items.empty())
        throw InputError(worded("{0} neither turns nor meets within the range planned", name),
                         worded("give a wider one, such as --range {0}..{1}",
                                asked.tuning.name(vowel.turning.pitch - semitones(8)).pitch.str(),
                                asked.tuning.name(vowel.meeting.pitch + semitones(6)).pitch.str()));
    return out;
}

} // namespace vowelway::sound
