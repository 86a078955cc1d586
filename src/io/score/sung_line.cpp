// SPDX-License-Identifier: MIT
#include "io/score/sung_line.hpp"

#include "io/score/bar_names.hpp"
#include "io/score/repeats.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::io {

namespace {

bool tie(pugi::xml_node note, std::string_view type) {
    for (auto const& child : note.children("tie"))
        if (child.attribute("type").value() == type) return true;
    for (auto const& notations : note.children("notations"))
        for (auto const& child : notations.children("tied"))
            if (child.attribute("type").value() == type) return true;
    return false;
}

bool cue_sized(pugi::xml_node note) {
    return note.child("type").attribute("size").value() == std::string_view("cue");
}

/// Beats are told to a human: 1.5, 2.333; thirds and the like stay as near as a double can.
double snapped(double quarters) {
    double const grid = std::round(quarters * 5040) / 5040;
    return std::abs(grid - quarters) < time_tolerance ? grid : quarters;
}

class Singer {
  public:
    Singer(XmlSource const& source, VoiceLine const& line, Timeline const& time, ScoreOptions const& options,
           Interval shift)
        : source_(source), line_(line), time_(time), options_(options), shift_(shift) {}

    SungLine run() {
        for (std::size_t i = 0; i < line_.measures.size(); ++i) measure(i);
        after_graces();
        return std::move(out_);
    }

    std::size_t graces() const { return graces_.size(); }
    int chords = 0, chords_below = 0, spoken = 0, cues = 0, syllables_on_rests = 0, laughs = 0;

  private:
    void measure(std::size_t i) {
        auto const& entered = *line_.measures[i].measure;
        bars_.enter(entered, time_.length(i), entered.printed == 0);
        auto const& bar = line_.measures[i];
        auto& fates = out_.fates.emplace_back(bar.events.size());
        for (std::size_t k = 0; k < bar.events.size(); ++k) fates[k] = event(i, bar, bar.events[k]);
    }

    EventFate event(std::size_t i, LineMeasure const& bar, LineEvent const& e) {
        auto const& event = *e.event;
        if (event.rest) {
            if (e.lyric && !e.lyric->syllables.empty()) ++syllables_on_rests;
            return {};
        }
        if (event.cue || event.unpitched) {
            (event.cue ? cues : spoken) += 1;
            return {};
        }
        if (e.unsung) return {};
        auto const head = choose_head(*bar.measure, event);
        if (event.grace && !e.lyric) { // stays on the staff; it leads into the next note
            graces_.push_back({i, static_cast<std::size_t>(&e - bar.events.data())});
            return {std::nullopt, head};
        }
        auto const note = event.notes[head];
        auto const spelled = moved(sounding(*bar.measure, event, note), shift_);
        double const begin = time_.start(i) + e.onset, end = begin + e.length;
        if (!out_.notes.empty() && !event.grace && tied_ && !e.lyric &&
            std::abs(begin - end_) < time_tolerance &&
            std::abs(spelled.key_number() - out_.notes.back().spelled.key_number()) < 0.01 &&
            (tie(note, "stop") || tie_was_closed(event))) {
            auto& last = out_.notes.back();
            last.length = time_.at(end) - last.start;
            out_.lengths.back() += e.length;
            tied_ = ties_on(event, note);
            end_ = end;
            return {out_.notes.size() - 1, head};
        }
        SungNote sung{.pitch = options_.tuning.pitch(spelled),
                      .spelled = spelled,
                      .measure = name_of_pass(bars_.printed(), bar.measure->pass),
                      .beat = 1};
        sung.beat = snapped(1 + (bars_.offset() + e.onset) * bar.measure->beat_type / 4.0);
        sung.start = time_.at(begin);
        sung.length = time_.at(end) - sung.start;
        sung.grace = event.grace;
        if (event.grace) sung.length = seconds(0);
        words(sung, e);
        take_time_from_grace(sung, begin);
        out_.notes.push_back(std::move(sung));
        out_.sources.push_back(event.begins());
        out_.passes.push_back(bar.measure->pass);
        out_.onsets.push_back(begin);
        out_.lengths.push_back(e.length);
        tied_ = ties_on(event, note);
        end_ = end;
        return {out_.notes.size() - 1, head};
    }

    static bool ties_on(PartEvent const& event, pugi::xml_node note) {
        return tie(note, "start") || std::any_of(event.notes.begin(), event.notes.end(),
                                                 [](auto const& n) { return tie(n, "start"); });
    }
    static bool tie_was_closed(PartEvent const& event) {
        return std::any_of(event.notes.begin(), event.notes.end(),
                           [](auto const& n) { return tie(n, "stop"); });
    }

    SpelledPitch sounding(PartMeasure const& bar, PartEvent const& event, pugi::xml_node note) const {
        return moved(pitch_of(source_, note, bar_name(bar)), event.transpose);
    }

    std::size_t choose_head(PartMeasure const& bar, PartEvent const& event) {
        if (event.notes.size() == 1) return 0;
        struct Rank {
            bool full_size, in_range;
            double key;
            auto operator<=>(Rank const&) const = default;
        };
        std::size_t best = 0;
        std::optional<Rank> highest;
        double top = -1e9;
        for (std::size_t k = 0; k < event.notes.size(); ++k) {
            double const key = sounding(bar, event, event.notes[k]).key_number() + shift_.semitones;
            auto const& range = options_.singer_range;
            top = std::max(top, key);
            Rank const rank{!cue_sized(event.notes[k]),
                            !range || (key >= range->low.key_number() && key <= range->high.key_number()),
                            options_.lowest ? -key : key};
            if (!highest || *highest < rank) {
                highest = rank;
                best = k;
            }
        }
        (highest->key < top ? chords_below : chords) += options_.lowest ? 0 : 1;
        return best;
    }

    void words(SungNote& sung, LineEvent const& e) {
        sung.typed_ipa = e.ipa;
        if (!e.lyric || e.lyric->laughing) {
            if (e.lyric) ++laughs;
            sung.melisma = seen_syllable_ && !e.lyric;
            sung.hummed = sung.melisma && humming_;
            return;
        }
        auto lyric = *e.lyric;
        sung.hummed = lyric.humming || (lyric.syllables.size() == 1 && is_humming(lyric.syllables[0].text));
        humming_ = sung.hummed;
        seen_syllable_ = true;
        if (lyric.syllables.empty()) return;
        if (lyric.syllables.size() == 1)
            if (auto const inside = bracketed_ipa(lyric.raw); inside && !sung.typed_ipa)
                sung.typed_ipa = inside;
        auto& first = lyric.syllables.front();
        if (after_typed_hyphen_) { // the word was parted by hand: "ex-" "press'd", both written as single
            if (first.part == Syllable::Part::single)
                first.part = Syllable::Part::end;
            else if (first.part == Syllable::Part::begin)
                first.part = Syllable::Part::middle;
        }
        after_typed_hyphen_ = lyric.typed_hyphen.back();
        sung.syllables = std::move(lyric.syllables);
    }

    /// A grace note with a syllable of its own takes an eighth of a quarter note, at most half, from the note
    /// it leads to.
    void take_time_from_grace(SungNote& sung, double begin) {
        if (sung.grace || out_.notes.empty()) return;
        std::size_t first = out_.notes.size();
        while (first > 0 && out_.notes[first - 1].grace &&
               std::abs(out_.onsets[first - 1] - begin) < time_tolerance)
            --first;
        auto const count = static_cast<double>(out_.notes.size() - first);
        if (count == 0) return;
        auto const each = std::min(in_seconds(time_.at(begin + 0.125) - time_.at(begin)),
                                   in_seconds(sung.length) / 2 / count);
        for (auto k = first; k < out_.notes.size(); ++k) {
            out_.notes[k].start = sung.start + seconds(each * static_cast<double>(k - first));
            out_.notes[k].length = seconds(each);
        }
        sung.start += seconds(each * count);
        sung.length -= seconds(each * count);
    }

    /// Graces on the staff belong to the note they lead into; at the end to the note before.
    void after_graces() {
        for (auto const& [i, k] : graces_) {
            auto& fates = out_.fates[i];
            for (auto next = k + 1; next < fates.size() && !fates[k].sung; ++next)
                if (fates[next].sung) fates[k].sung = fates[next].sung;
            for (auto before = k; before-- > 0 && !fates[k].sung;)
                if (fates[before].sung) fates[k].sung = fates[before].sung;
        }
    }

    struct GracePlace {
        std::size_t measure, event;
    };

    XmlSource const& source_;
    VoiceLine const& line_;
    Timeline const& time_;
    ScoreOptions const& options_;
    Interval shift_;
    SungLine out_;
    std::vector<GracePlace> graces_;
    BarNames bars_;
    bool tied_ = false, seen_syllable_ = false, humming_ = false, after_typed_hyphen_ = false;
    double end_ = 0; ///< of the last sung note, quarter notes from the beginning
};

} // namespace

SungLine sing(XmlSource const& source, VoiceLine const& line, Timeline const& time,
              ScoreOptions const& options, Interval shift, Remarks& remarks) {
    Singer singer(source, line, time, options, shift);
    auto out = singer.run();
    auto const tell = [&](int count, std::string const& one, std::string const& many) {
        if (count > 0) remarks.push_back({Remark::Kind::assumed, count == 1 ? one : many});
    };
    tell(singer.chords, worded("1 chord in the line: its highest note is taken"),
         worded("{0} chords in the line: the highest note of each is taken", singer.chords));
    tell(singer.chords_below,
         worded("1 chord in the line: not its highest note is taken, which is small or outside the range"),
         worded("{0} chords in the line: not the highest note of each is taken, which is small or outside "
                "the range",
                singer.chords_below));
    tell(singer.spoken, worded("1 note without pitch is left out"),
         worded("{0} notes without pitch are left out", singer.spoken));
    auto const graces = static_cast<int>(singer.graces());
    tell(graces, worded("1 grace note without a syllable is not sung separately"),
         worded("{0} grace notes without a syllable are not sung separately", graces));
    tell(singer.cues, worded("1 cue note is left out"), worded("{0} cue notes are left out", singer.cues));
    tell(singer.syllables_on_rests, worded("1 syllable stands under a rest and is left out"),
         worded("{0} syllables stand under rests and are left out", singer.syllables_on_rests));
    tell(singer.laughs, worded("1 note is to be laughed: no vowel is planned for it"),
         worded("{0} notes are to be laughed: no vowel is planned for them", singer.laughs));
    return out;
}

} // namespace vowelway::io
