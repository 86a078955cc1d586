// SPDX-License-Identifier: MIT
// A passage written by hand: YAML in, notes and a plain staff out.
#include "core/text.hpp"
#include "io/score/passage_staff.hpp"
#include "io/score/score_bounds.hpp"
#include "io/score/score_reading.hpp"
#include "io/score/timeline.hpp"
#include "yaml/tree.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace vowelway::io {

namespace {

constexpr double longest_note = 600;     // seconds; past it a unit was mistaken
constexpr double longest_passage = 3600; // seconds

double bounded_number(yaml::Node const& node, std::string_view what, double least, double most) {
    auto text = text::trim(yaml::scalar(node, what));
    auto const value = text::eat_number(text);
    if (!value || !text.empty() || *value < least || *value > most)
        throw yaml::error_at(node, std::string(what) + " is \"" + node.text + "\"",
                             "write a number from " + std::to_string(std::lround(least)) + " to " +
                                 std::to_string(std::lround(most)));
    return *value;
}

/// "1 s", "500 ms", "2 beats", as quarter notes at the tempo. A beat is the time signature's lower number.
double length_of(yaml::Node const& node, double per_minute, int beat_type) {
    auto text = text::trim(yaml::scalar(node, "a duration"));
    auto const value = text::eat_number(text);
    auto const unit = text::trim(text);
    auto const wrong = [&](std::string const& what) {
        return yaml::error_at(node, what, "write a duration above 0 with its unit: 1.5 s, 500 ms or 2 beats");
    };
    if (!value) throw wrong("\"" + node.text + "\" is not a duration");
    if (!(*value > 0)) throw wrong("the duration \"" + node.text + "\" is not above 0");
    double quarters = 0;
    if (unit == "s")
        quarters = *value * per_minute / 60;
    else if (unit == "ms")
        quarters = *value / 1000 * per_minute / 60;
    else if (unit == "beat" || unit == "beats")
        quarters = *value * 4 / beat_type;
    else if (unit.empty())
        throw wrong("the duration \"" + node.text + "\" has no unit");
    else
        throw wrong("\"" + std::string(unit) + "\" is not a unit of duration");
    if (quarters * 60 / per_minute > longest_note)
        throw wrong("\"" + node.text + "\" is longer than ten minutes");
    if (quarters < 1.0 / 256) throw wrong("\"" + node.text + "\" is too short to sing");
    return quarters;
}

/// "mi-", "-a", "sol": hyphens tell the place in the word; ‿ _ or a blank joins two syllables on one note.
std::vector<Syllable> syllables_of(std::string_view text) {
    std::vector<Syllable> out;
    auto const add = [&](std::string_view word) {
        word = text::trim(word);
        bool const goes_on = word.ends_with('-'), continues = word.starts_with('-');
        while (word.ends_with('-')) word.remove_suffix(1);
        while (word.starts_with('-')) word.remove_prefix(1);
        if (word.empty()) return;
        using Part = Syllable::Part;
        out.push_back({std::string(word), goes_on && continues ? Part::middle
                                          : goes_on            ? Part::begin
                                          : continues          ? Part::end
                                                               : Part::single});
    };
    while (!text.empty()) {
        std::size_t cut = text.size(), skip = 0;
        for (std::string_view sign : {"‿", "_", " ", "\u00A0"})
            if (auto const at = text.find(sign); at < cut) {
                cut = at;
                skip = sign.size();
            }
        add(text.substr(0, cut));
        text.remove_prefix(std::min(text.size(), cut + skip));
    }
    return out;
}

double dynamic_of(yaml::Node const& node) {
    static constexpr std::array<std::pair<std::string_view, double>, 8> levels{
        {{"ppp", -4}, {"pp", -3}, {"p", -2}, {"mp", -1}, {"mf", 0}, {"f", 1}, {"ff", 2}, {"fff", 3}}};
    auto const& text = yaml::scalar(node, "the dynamic");
    for (auto const& [name, level] : levels)
        if (name == text) return level;
    throw yaml::error_at(node, "\"" + text + "\" is not a dynamic", "write ppp, pp, p, mp, mf, f, ff or fff");
}

TimeSignature time_of(yaml::Node const& node) {
    TimeSignature time;
    auto text = text::trim(yaml::scalar(node, "the time signature"));
    auto const beats = text::eat_number(text);
    bool const slash = text::eat(text, "/");
    auto const type = text::eat_number(text);
    bool const whole = beats && type && *beats == std::floor(*beats) && *type == std::floor(*type);
    if (!whole || !slash || !text.empty() || *beats < 1 || *beats > 64 || *type < 1 || *type > 16 ||
        (static_cast<int>(*type) & (static_cast<int>(*type) - 1)) != 0)
        throw yaml::error_at(node, "\"" + node.text + "\" is not a time signature",
                             "write it as 3/4 or 6/8 (lower number at most 16)");
    time.beats = std::to_string(static_cast<int>(*beats));
    time.beat_type = static_cast<int>(*type);
    return time;
}

/// "D major", "f# minor", "Eb".
KeySignature key_of(yaml::Node const& node) {
    static constexpr std::string_view line_of_fifths = "FCGDAEB";
    auto const& whole = yaml::scalar(node, "the key");
    auto text = text::trim(whole);
    auto const wrong = [&] {
        return yaml::error_at(node, "\"" + whole + "\" is not a key",
                              "write it as C major, F# minor or Eb major");
    };
    if (text.empty()) throw wrong();
    auto const letter = line_of_fifths.find(static_cast<char>(text.front() & ~0x20));
    if (letter == std::string_view::npos) throw wrong();
    text.remove_prefix(1);
    int fifths = static_cast<int>(letter) - 1;
    if (text::eat(text, "#") || text::eat(text, "♯"))
        fifths += 7;
    else if (text::eat(text, "b") || text::eat(text, "♭"))
        fifths -= 7;
    text = text::trim(text);
    if (text == "minor")
        fifths -= 3;
    else if (text != "major" && !text.empty())
        throw wrong();
    if (std::abs(fifths) > 7) throw wrong();
    return {fifths};
}

std::string language_of(yaml::Node const& node) {
    auto const& text = yaml::scalar(node, "the language");
    auto const tag = text.substr(0, text.find('-'));
    bool const letters = std::all_of(tag.begin(), tag.end(), [](char c) { return c >= 'a' && c <= 'z'; });
    if (!letters || tag.size() < 2 || tag.size() > 3)
        throw yaml::error_at(node, "\"" + text + "\" is not a language",
                             "write its code: it, la, de, fr, en, es");
    return tag;
}

class PassageReader {
  public:
    PassageReader(ScoreOptions const& options, std::string const& file) : options_(options), file_(file) {}

    Passage read(yaml::Node const& root) {
        yaml::map(root, "a passage", "vowelway: 1");
        yaml::only_keys(root, "vowelway passage composer tempo language time key notes");
        auto const* version = root.find("vowelway");
        if (!version)
            throw yaml::error_at(root, "the format version is missing", "begin the file with: vowelway: 1");
        if (yaml::scalar(*version, "the format version") != "1")
            throw yaml::error_at(*version, "format version " + version->text + " is not known",
                                 "this program reads vowelway: 1");
        out_.tuning = options_.tuning;
        if (auto const* n = root.find("passage")) out_.title = yaml::scalar(*n, "the name of the passage");
        if (auto const* n = root.find("composer")) out_.composer = yaml::scalar(*n, "the composer");
        if (auto const* n = root.find("language")) out_.language = language_of(*n);
        if (auto const* n = root.find("time")) time_ = time_of(*n);
        if (auto const* n = root.find("key")) key_ = key_of(*n);
        beats_per_minute_ = default_tempo;
        if (auto const* n = root.find("tempo"))
            beats_per_minute_ = bounded_number(*n, "the tempo", 10, 400);
        else
            out_.remarks.push_back(
                {Remark::Kind::assumed, "the passage gives no tempo; 72 beats a minute are assumed"});
        auto const* notes = root.find("notes");
        if (!notes)
            throw yaml::error_at(root, "the passage has no notes",
                                 "add: notes: [{pitch: F4, duration: 1 s, vowel: a}]");
        yaml::sequence(*notes, "notes", "- {pitch: F4, duration: 1 s, vowel: a}");
        shift_ = interval_for_key(options_.transpose_semitones, key_.fifths);
        for (auto const& item : notes->items) {
            ++number_;
            try {
                note(item);
                if (now_ * 60 / quarters_per_minute() > longest_passage)
                    throw yaml::error_at(item, "the passage is longer than an hour",
                                         "check the durations before this one, or split the passage");
            } catch (InputError& error) {
                throw error.at({file_, item.place.line, item.place.column,
                                "note " + std::to_string(number_) + " of the passage"});
            }
        }
        require_sung_notes(out_.notes.size(), notes->place.file);
        if (out_.notes.empty())
            throw yaml::error_at(*notes, "the passage has only rests", "add a note with a pitch");
        build_staff(out_, written_, time_, {key_.fifths + shift_.fifths});
        return std::move(out_);
    }

  private:
    double quarters_per_minute() const { return beats_per_minute_ * 4 / time_.beat_type; }

    void note(yaml::Node const& item) {
        yaml::map(item, "a note", "{pitch: F4, duration: 1 s, vowel: a}");
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
            throw yaml::error_at(item, "a note has no pitch",
                                 "write {pitch: F4, duration: 1 s}, or {rest: 1 s} for a rest");
        if (!duration)
            throw yaml::error_at(item, "a note has no duration", "write duration: 1 s or duration: 2 beats");
        auto const spelled = moved(
            yaml::placed(*pitch, [&] { return parse_spelled_pitch(yaml::scalar(*pitch, "the pitch")); }),
            shift_);
        double const length = length_of(*duration, quarters_per_minute(), time_.beat_type);
        double const to_seconds = 60 / quarters_per_minute();
        double const bar = bar_length(time_);
        auto const index = static_cast<long>((now_ + 1e-9) / bar);
        SungNote sung{.pitch = options_.tuning.pitch(spelled),
                      .spelled = spelled,
                      .measure = std::to_string(index + 1),
                      .start = seconds(now_ * to_seconds),
                      .length = seconds(length * to_seconds),
                      .syllables = {},
                      .typed_ipa = {},
                      .dynamic = {},
                      .vowel = {}};
        sung.beat = 1 + std::max(0.0, now_ - static_cast<double>(index) * bar) * time_.beat_type / 4;
        if (auto const* n = item.find("syllable"))
            sung.syllables = syllables_of(yaml::scalar(*n, "the syllable"));
        if (auto const* n = item.find("hummed")) sung.hummed = yes(*n);
        if (auto const* n = item.find("dynamic")) sung.dynamic = dynamic_of(*n);
        if (auto const* n = item.find("vowel")) {
            auto const vowel = yaml::placed(*n, [&] { return parse_vowel(yaml::scalar(*n, "the vowel")); });
            if (sung.hummed)
                throw yaml::error_at(*n, "a hummed note has no vowel", "leave out one of the two");
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

    static bool yes(yaml::Node const& node) {
        auto const& text = yaml::scalar(node, "hummed");
        if (text != "true" && text != "false")
            throw yaml::error_at(node, "hummed is \"" + text + "\"", "write true or false");
        return text == "true";
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

Passage read_passage_yaml(std::string const& text, std::string const& file, ScoreOptions const& options) {
    return PassageReader(options, file).read(yaml::parse(text, file));
}

} // namespace vowelway::io
