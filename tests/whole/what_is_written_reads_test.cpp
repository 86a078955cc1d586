// SPDX-License-Identifier: MIT
// What is written can be read, and reads as what was written: random values, the same in every run.
#include "support/sample_plan.hpp"
#include "vowelway/diction/word_list.hpp"
#include "vowelway/io/audio/read_cues.hpp"
#include "vowelway/io/plan/read_targets.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/profile/write_profile.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/report/plan_report.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <random>

using namespace vowelway;

namespace {

class Random {
  public:
    explicit Random(unsigned seed) : engine_(seed) {}
    int whole(int low, int high) {
        return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1));
    }
    bool coin() { return whole(0, 1) == 1; }
    double real(double low, double high) { return low + (high - low) * whole(0, 100000) / 100000; }
    template <class T> T const& one(std::vector<T> const& of) {
        return of[static_cast<std::size_t>(whole(0, static_cast<int>(of.size()) - 1))];
    }
    /// What people and scoundrels write: signs of YAML, JSON and XML, quotes, blanks at the ends, all
    /// scripts.
    std::string text(int most) {
        static std::vector<std::string> const pieces{
            "a",  "B", "é",  "ɛ̃",  "ß",  "🎵", "\u202e", "\u00a0", "שׁ",    " ",    "  ",  "\"", "'",   ":",
            ": ", "#", " #", "\\", "{",  "}", "[",      "]",      ",",    "&",    "*",   "!",  "|",   ">",
            "%",  "@", "`",  "-",  "- ", "?", "<a>",    "&amp;",  "null", "true", "1e3", "~",  "\\n", "\t"};
        std::string out;
        for (int n = whole(0, most); n > 0; --n) out += one(pieces);
        return out;
    }
    std::string day() {
        return fmt::format("{:04}-{:02}-{:02}", whole(1900, 2100), whole(1, 12), whole(1, 28));
    }

  private:
    std::mt19937 engine_; // its numbers are the same everywhere (ISO C++, [rand.predef])
};

std::vector<std::string> const vowels{"i", "e", "ɛ", "a", "ɔ", "o", "u", "y", "ø", "ə", "ã", "ɛ̝", "uː"};

Resonance resonance(Random& random, double low, double high) {
    Resonance out;
    out.centre = hertz(std::round(random.real(low, high)));
    out.sd = hertz(std::round(random.real(5, 60)));
    if (random.coin()) out.bandwidth = hertz(std::round(random.real(30, 200)));
    return out;
}

Profile profile(Random& random) {
    Profile out;
    auto& s = out.singer;
    s.name = random.text(12);
    s.voice = random.one(std::vector<VoiceType>(all_voice_types.begin(), all_voice_types.end()));
    if (random.coin()) s.range = parse_pitch_range("B2..C5");
    if (random.coin()) s.tract_length = centimetres(std::round(random.real(130, 190)) / 10);
    s.provenance = {random.coin() ? Method::creak : Method::whisper, random.coin() ? random.day() : "",
                    random.text(20)};
    for (auto const& ipa : vowels) {
        if (random.coin() && !s.vowels.empty()) continue;
        VowelResonances v{
            parse_ipa(ipa), resonance(random, 200, 700), resonance(random, 900, 2400), {}, {}, false, {}};
        if (random.coin()) v.r3 = resonance(random, 2500, 3000);
        if (v.r3 && random.coin()) v.r4 = resonance(random, 3200, 4000);
        if (!s.find(v.vowel)) s.vowels.push_back(v);
    }
    for (int n = random.whole(0, 5); n > 0; --n)
        out.history.push_back({random.day(),
                               Method::creak,
                               parse_ipa(random.one(vowels)),
                               random.whole(1, 9),
                               resonance(random, 200, 700),
                               resonance(random, 900, 2400),
                               {},
                               {},
                               {},
                               random.text(20)});
    return out;
}

} // namespace

TEST_CASE("profiles: names, notes and numbers read as they were written") {
    Random random(1);
    int written = 0;
    for (int n = 0; n < 400; ++n) {
        auto const p = profile(random);
        auto const text = io::profile_text(p);
        CAPTURE(text);
        auto const back = io::parse_profile(text, "p.yaml");
        CHECK(back.singer.name == p.singer.name);
        CHECK(back.singer.provenance.note == p.singer.provenance.note);
        CHECK(back.singer.vowels.size() == p.singer.vowels.size());
        REQUIRE(back.history.size() == p.history.size());
        for (std::size_t i = 0; i < p.history.size(); ++i) {
            CHECK(back.history[i].note == p.history[i].note);
            CHECK(back.history[i].date == p.history[i].date);
            CHECK(in_hertz(back.history[i].r1.centre) == doctest::Approx(in_hertz(p.history[i].r1.centre)));
        }
        CHECK(io::profile_text(back) == text);
        ++written;
    }
    CHECK(written == 400);
}

TEST_CASE("profiles grow by any measurement and stay readable") {
    Random random(2);
    auto text = io::profile_text(profile(random));
    auto entries = io::parse_profile(text, "p.yaml").history.size();
    for (int n = 0; n < 60; ++n) {
        Measurement m{random.day(),
                      random.coin() ? Method::whisper : Method::creak,
                      parse_ipa(random.one(vowels)).quality(),
                      random.whole(1, 9),
                      resonance(random, 200, 700),
                      resonance(random, 900, 2400),
                      {},
                      {},
                      {},
                      random.text(20)};
        text = io::with_measurement(text, "p.yaml", m);
        auto const back = io::parse_profile(text, "p.yaml");
        CHECK(back.history.size() > entries);
        CHECK(back.history.back().note == m.note);
        CHECK(back.history.back().date == m.date);
        entries = back.history.size();
    }
}

TEST_CASE("plans: the targets that are written are the targets that are read") {
    Random random(3);
    for (int n = 0; n < 60; ++n) {
        auto plan = sample::song_plan();
        double longest = 0;
        for (auto& note : plan.notes) {
            if (!note.decision) continue;
            note.decision->target.r1.centre = hertz(10 * random.whole(20, 90));
            note.decision->target.r2.centre = hertz(10 * random.whole(100, 250));
            note.decision->why = random.text(10);
            longest = std::max(longest, in_seconds(plan.passage.notes[note.note].length));
        }
        plan.singer.name = random.text(10);
        plan.passage.title = random.text(10);
        for (auto& note : plan.passage.notes)
            for (auto& syllable : note.syllables) syllable.text = random.text(4);
        auto const targets = io::parse_plan_targets(report::plan_json(plan), "plan.json");
        REQUIRE_FALSE(targets.empty());
        double sung = 0, decided = 0;
        for (auto const& target : targets) {
            sung += in_seconds(target.sung);
            bool const there = std::any_of(plan.notes.begin(), plan.notes.end(), [&](auto const& note) {
                return note.decision && std::abs(in_hertz(note.decision->target.r1.centre - target.r1)) < 6 &&
                       std::abs(in_hertz(note.decision->target.r2.centre - target.r2)) < 6;
            });
            CHECK(there);
        }
        for (auto const& note : plan.notes)
            if (note.decision) decided += in_seconds(plan.passage.notes[note.note].length);
        CHECK(sung == doctest::Approx(decided).epsilon(0.01));
        CHECK(in_seconds(targets.front().sung) >= longest - 0.01);
    }
}

TEST_CASE("passages, words and cues, written as the documents say, read as written") {
    Random random(4);
    std::vector<std::string> const pitches{"C3", "F♯4", "B♭3", "A4", "E5", "D2"};
    for (int n = 0; n < 60; ++n) {
        std::string passage = "vowelway: 1\npassage: test\ntempo: 60\nnotes:\n", cues,
                    words = "vowelway: 1\nwords:\n";
        std::vector<std::string> sung;
        std::vector<double> lengths;
        double now = 0;
        for (int k = random.whole(1, 20); k > 0; --k) {
            sung.push_back(random.one(pitches));
            lengths.push_back(random.whole(1, 40) / 10.0);
            passage += fmt::format("  - {{pitch: {}, duration: {} s, vowel: {}}}\n", sung.back(),
                                   lengths.back(), random.one(vowels));
            cues += fmt::format("{:.2f} {:.2f} a\n", now, now + lengths.back());
            words += fmt::format("  word{}x: {}\n", std::string(static_cast<std::size_t>(k), 'y'),
                                 random.one(vowels));
            now += lengths.back() + 0.5;
        }
        auto const read = io::parse_score(passage, "p.yaml");
        REQUIRE(read.notes.size() == sung.size());
        auto const spans = io::parse_cues(cues, "c.txt");
        REQUIRE(spans.size() == sung.size());
        CHECK(diction::parse_word_list(words, "w.yaml").size() == sung.size());
        for (std::size_t i = 0; i < sung.size(); ++i) {
            CHECK(read.notes[i].spelled.str() == parse_spelled_pitch(sung[i]).str());
            CHECK(in_seconds(read.notes[i].length) == doctest::Approx(lengths[i]));
            CHECK(in_seconds(spans[i].span.end - spans[i].span.start) ==
                  doctest::Approx(lengths[i]).epsilon(0.02));
        }
    }
}
