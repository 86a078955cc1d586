// SPDX-License-Identifier: MIT
// A passage written by hand: YAML in, notes and a plain staff out.
#include "io/score/passage_fields.hpp"
#include "io/score/passage_staff.hpp"
#include "io/score/score_bounds.hpp"
#include "io/score/score_reading.hpp"
#include "io/score/timeline.hpp"
#include "vowelway/core/wording.hpp"
#include "yaml/tree.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

constexpr double longest_passage = 3600; // seconds

class PassageReader {
  public:
    PassageReader(ScoreOptions const& options, std::string const& file) : options_(options), file_(file) {}

    Passage read(yaml::Node const& root) {
        yaml::map(root, worded("a passage"), "vowelway: 1");
        yaml::only_keys(root, "vowelway passage composer tempo language time key notes");
        auto const* version = root.find("vowelway");
        if (!version)
            throw yaml::error_at(root, worded("the format version is missing"),
                                 worded("begin the file with: vowelway: 1"));
        if (yaml::scalar(*version, worded("the format version")) != "1")
            throw yaml::error_at(*version, worded("format version {0} is not known", version->text),
                                 worded("this program reads vowelway: 1"));
        out_.tuning = options_.tuning;
        if (auto const* n = root.find("passage"))
            out_.title = yaml::scalar(*n, worded("the name of the passage"));
        if (auto const* n = root.find("composer")) out_.composer = yaml::scalar(*n, worded("the composer"));
        if (auto const* n = root.find("language")) out_.language = language_of(*n);
        if (auto const* n = root.find("time")) time_ = time_of(*n);
        if (auto const* n = root.find("key")) key_ = key_of(*n);
        beats_per_minute_ = default_tempo;
        if (auto const* n = root.find("tempo"))
            beats_per_minute_ = bounded_number(*n, worded("the tempo"), 10, 400);
        else
            out_.remarks.push_back(
                {Remark::Kind::assumed, worded("the passage gives no tempo; 72 beats a minute are assumed")});
        auto const* notes = root.find("notes");
        if (!notes)
            throw yaml::error_at(root, worded("the passage has no notes"),
                                 worded("add: notes: [{pitch: F4, duration: 1 s, vowel: a}]"));
        yaml::sequence(*notes, "notes", "- {pitch: F4, duration: 1 s, vowel: a}");
        shift_ = interval_for_key(options_.transpose_semitones.value_or(0), key_.fifths);
        for (auto const& item : notes->items) {
            ++number_;
            try {
                note(item);
                if (now_ * 60 / quarters_per_minute() > longest_passage)
                    throw yaml::error_at(item, worded("the passage is longer than an hour"),
                                         worded("check the durations before this one, or split the passage"));
            } catch (InputError& error) {
                throw error.at({file_, item.place.line, item.place.column,
                                worded("note {0} of the passage", std::to_string(number_))});
            }
        }
        require_sung_notes(out_.notes.size(), notes->place.file);
        if (out_.notes.empty())
            throw yaml::error_at(*notes, worded("the passage has only rests"),
                                 worded("add a note with a pitch"));
        build_staff(out_, written_, time_, {key_.fifths + shift_.fifths});
        return std::move(out_);
    }

  private:
    double quarters_per_minute() const { return beats_per_minute_ * 4 / time_.beat_type; }

    void note(yaml::Node const& item) {
        yaml::map(item, worded("a note"), "{pitch: F4, duration: 1 s, vowel: a}");
        if (auto const* rest = item.find("rest")) {
            yaml::only_keys(item, "rest");
            written_.push_back(
                {now_, length_of(*rest, quarters_per_minute(), time_.beat_type), std::nullopt, std::nullopt});
            now_ += written_.back().length;
            return;
        }
        yaml::only_keys(item, "pitch duration vowel syllable dynamic hummed");
        auto const* pitch = item.find("pitch");
        auto const* duration = item.find("duration");
        if (!pitch)
            throw yaml::error_at(item, worded("a note has no pitch"),
                                 worded("write {pitch: F4, duration: 1 s}, or {rest: 1 s} for a rest"));
        if (!duration)
            throw yaml::error_at(item, worded("a note has no duration"),
                                 worded("write duration: 1 s or duration: 2 beats"));
        auto const spelled =
            moved(yaml::placed(
                      *pitch, [&] { return parse_spelled_pitch(yaml::scalar(*pitch, worded("the pitch"))); }),
                  shift_);
        double const length = length_of(*duration, quarters_per_minute(), time_.beat_type);
        double const to_seconds = 60 / quarters_per_minute();
        double const bar = bar_length(time_);
        auto const index = static_cast<long>((now_ + 1e-9) / bar);
        SungNote sung{.pitch = options_.tuning.pitch(spelled),
                      .spelled = spelled,
                      .measure = std::to_string(index + 1),
                      .start = seconds(now_ * to_seconds),
                      .length = seconds(length * to_seconds)};
        sung.beat = 1 + std::max(0.0, now_ - static_cast<double>(index) * bar) * time_.beat_type / 4;
        if (auto const* n = item.find("syllable"))
            sung.syllables = syllables_of(yaml::scalar(*n, worded("the syllable")));
        if (auto const* n = item.find("hummed")) sung.hummed = hummed_of(*n);
        if (auto const* n = item.find("dynamic")) sung.dynamic = dynamic_of(*n);
        if (auto const* n = item.find("vowel")) {
            auto const vowel =
                yaml::placed(*n, [&] { return parse_vowel(yaml::scalar(*n, worded("the vowel"))); });
            if (sung.hummed)
                throw yaml::error_at(*n, worded("a hummed note has no vowel"),
                                     worded("leave out one of the two"));
            sung.typed_ipa = vowel.ipa();
            sung.vowel = SungVowel{.held = vowel, .before = {}, .after = {}, .origin = VowelOrigin::typed};
        }
        bool const named = !sung.syllables.empty() || sung.vowel || sung.hummed;
        sung.melisma = !named && !out_.notes.empty();
        if (sung.melisma) {
            sung.vowel = out_.notes.back().vowel;
            sung.hummed = out_.notes.back().hummed;
        }
        written_.push_back({now_, length, spelled, out_.notes.size()});
        now_ += length;
        out_.notes.push_back(std::move(sung));
    }

    ScoreOptions const& options_;
    std::string const& file_;
    Passage out_;
    TimeSignature time_;
    KeySignature key_;
    Interval shift_;
    std::vector<WrittenNote> written_;
    double beats_per_minute_ = default_tempo, now_ = 0;
    int number_ = 0;
};

} // namespace

Passage read_passage(yaml::Node const& root, std::string const& file, ScoreOptions const& options) {
    return PassageReader(options, file).read(root);
}

Passage read_passage_yaml(std::string const& text, std::string const& file, ScoreOptions const& options) {
    return read_passage(yaml::parse(text, file), file, options);
}

} // namespace vowelway::io
