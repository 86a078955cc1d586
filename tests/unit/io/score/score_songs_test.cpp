// SPDX-License-Identifier: MIT
// Real songs. The readings were taken by hand from the notation in each file, not from the program's output.
#include "support/source_dir.hpp"
#include "vowelway/io/score/read_score.hpp"
#include "vowelway/io/score/sung_parts.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

using namespace vowelway;
using namespace vowelway::io;

namespace {

std::filesystem::path const songs =
    std::filesystem::path(vowelway::test::source_dir()) / "tests/data/scores/lieder";

ScoreOptions choose(std::string part, int verse = 0) {
    ScoreOptions out;
    out.part = std::move(part);
    out.verse = verse;
    return out;
}

std::string words(Passage const& passage) {
    std::string out;
    for (auto const& note : passage.notes)
        for (auto const& syllable : note.syllables) {
            out += syllable.text;
            if (syllable.part == Syllable::Part::single || syllable.part == Syllable::Part::end) out += ' ';
        }
    return out;
}

bool remarked(Passage const& passage, std::string_view text) {
    return std::any_of(passage.remarks.begin(), passage.remarks.end(),
                       [&](Remark const& r) { return r.text.find(text) != std::string::npos; });
}

} // namespace

TEST_CASE("words join to a text, verse numbers and full stops under rests are no syllables") {
    auto const passage = read_score(songs / "cornelius_wiegenlied.mxl");
    CHECK(words(passage).starts_with(
        "Vöglein fliegt dem Nestchen zu, hat sich müd' geflogen; Schifflein sucht "));
    CHECK(passage.title == "Wiegenlied");
    CHECK(passage.composer == "Peter Cornelius");
    CHECK(passage.part == "Voice");
    CHECK(remarked(passage, "verse 1 of 3"));
    CHECK(words(read_score(songs / "cornelius_wiegenlied.mxl", choose("", 2))).size() > 100);
    CHECK_THROWS_AS(read_score(songs / "cornelius_wiegenlied.mxl", choose("", 4)), InputError);
}

TEST_CASE("a verse is followed from voice to voice on its staff") {
    // Soprano, bars 2 to 4: the words of the first voice go on in the second.
    auto const passage = read_score(songs / "brahms_magdalena.mxl", choose("soprano"));
    CHECK(words(passage).starts_with(
        "An dem österlichen Tag Maria Magdalena ging zu dem Grab; was fand sie in dem Grabe stehn? "));
    CHECK(read_score(songs / "brahms_magdalena.mxl", choose("4")).part == "Bass");
    CHECK_THROWS_WITH_AS(read_score(songs / "brahms_magdalena.mxl", choose("flute")),
                         doctest::Contains("1 \"Soprano\", 2 \"Alto\""), InputError);
}

TEST_CASE("every note of a song has its place on the staff, in time order") {
    for (auto const* name : {"brahms_magdalena.mxl", "cornelius_wiegenlied.mxl", "reichardt_vaters_klage.mxl",
                             "satie_omnibus.mxl", "tegner_betlehems_stjarna.mxl"}) {
        CAPTURE(name);
        auto const passage = read_score(songs / name);
        std::size_t next = 0;
        for (auto const& measure : passage.staff.measures) {
            double end = 0;
            for (auto const& event : measure.events) {
                CHECK(event.onset >= end - 1e-6);
                end = event.onset + event.length;
                CHECK(end <= measure.length + 1e-6);
                if (!event.sung) continue;
                CHECK(*event.sung < passage.notes.size());
                if (*event.sung == next)
                    ++next; // a fresh note; otherwise a tie or a grace note
                else
                    CHECK((*event.sung + 1 == next || event.grace));
            }
        }
        CHECK(next == passage.notes.size());
        for (std::size_t i = 1; i < passage.notes.size(); ++i)
            CHECK(passage.notes[i].start >=
                  passage.notes[i - 1].start + passage.notes[i - 1].length - seconds(1e-9));
    }
}

// A man's part in the treble clef sounds an octave lower (common practice, no source).
TEST_CASE("a man sings a song in the treble clef an octave lower, a woman as written") {
    auto const song = songs / "reichardt_vaters_klage.mxl";
    ScoreOptions options;
    auto const written = read_score(song, options);
    CHECK(written.transposed == 0);
    CHECK(written.transposed_why.empty());
    for (auto const voice : {VoiceType::bass, VoiceType::baritone, VoiceType::tenor}) {
        CAPTURE(to_string(voice));
        options.voice = voice;
        options.transpose_semitones.reset();
        auto const lower = read_score(song, options);
        CHECK(lower.transposed == -12);
        CHECK(lower.transposed_why == "a man's part in the treble clef");
        REQUIRE(lower.notes.size() == written.notes.size());
        CHECK(lower.notes[0].spelled.key_number() == written.notes[0].spelled.key_number() - 12);
        CHECK(lower.staff.measures[0].clef->octave_change == -1);
        REQUIRE_FALSE(lower.remarks.empty());
        CHECK(lower.remarks[0].text.find("an octave lower than written") != std::string::npos);
        options.transpose_semitones = 0;
        CHECK(read_score(song, options).transposed == 0);
        CHECK_FALSE(remarked(read_score(song, options), "octave"));
    }
    options.transpose_semitones.reset();
    for (auto const voice : {VoiceType::soprano, VoiceType::mezzo, VoiceType::alto}) {
        CAPTURE(to_string(voice));
        options.voice = voice;
        CHECK(read_score(song, options).transposed == 0);
    }
}

TEST_CASE("small notes, chords and tempi are told as they are") {
    auto const passage = read_score(songs.parent_path() / "own/small_notes_and_tempi.musicxml");
    auto const pitch = [&](std::size_t i) { return passage.notes.at(i).spelled.str(); };
    REQUIRE(passage.notes.size() == 7);
    CHECK(pitch(3) == "G5"); // of a chord the highest
    CHECK(pitch(4) == "A5"); // the full-size note beside a small one, with the words written there
    CHECK(passage.notes[4].text() == "four");
    CHECK(pitch(5) == "F4"); // not the small one
    CHECK(pitch(6) == "A4");
    CHECK(remarked(passage, "2 chords in the line: the highest note of each is taken"));
    CHECK(remarked(passage, "1 chord in the line: not its highest note is taken"));
    // What is meant to sound counts more than a mark, of whatever part; it is taken for the bar before too.
    CHECK(in_seconds(passage.notes[2].length) == doctest::Approx(2 * 60.0 / 198));
    CHECK(in_seconds(passage.notes[0].length) == doctest::Approx(2 * 60.0 / 198));
    CHECK(in_seconds(passage.notes[6].length) == doctest::Approx(1));
    CHECK(remarked(passage, "the first tempo in numbers stands in bar 2"));
}

TEST_CASE("repeats, endings, jumps and verses are followed as they are sung") {
    auto const score = songs.parent_path() / "own/verses_and_jumps.musicxml";
    auto const all = read_score(score, choose("", every_verse));
    std::string sung;
    for (auto const& note : all.notes) sung += note.measure + " " + note.text() + "; ";
    // Read by hand: bars 1 to 3, from 2 with the second words and ending, da capo, last ending, to the coda.
    CHECK(sung == "1 ah; 2 one; 3 first; 2 (2nd time) two; 4 next; 5 far; 6 back; 1 (2nd time) ah; "
                  "2 (3rd time) one; 4 (2nd time) next; 5 (2nd time) far; 7 end; ");
    CHECK(all.verse == "all");
    CHECK(remarked(all, "12 bars, of 7 printed"));
    // The slow tempo of bar 5 ends with the da capo, and comes again.
    CHECK(in_seconds(all.notes[6].length) == doctest::Approx(4));
    CHECK(in_seconds(all.notes[7].length) == doctest::Approx(2));
    CHECK(in_seconds(all.notes[9].length) == doctest::Approx(2));
    CHECK(in_seconds(all.notes[10].length) == doctest::Approx(4));
    REQUIRE(all.staff.measures.size() == 12);
    CHECK(all.staff.measures[3].number == "2 (2nd time)");
    CHECK_FALSE(all.staff.measures[2].repeat_ends); // it was followed
    REQUIRE(all.staff.measures[7].key.has_value());
    CHECK(all.staff.measures[7].key->fifths == 0); // back from two sharps

    auto const printed = read_score(score);
    CHECK(printed.notes.size() == 7);
    CHECK(printed.staff.measures[2].repeat_ends);
    CHECK(remarked(printed, "with its repeats and verses the music has 12 bars, of 7 printed"));
}

TEST_CASE("a song of verses without repeat signs is sung once for each, 1 may stand for 1 and 2") {
    auto const verses = read_score(songs / "cornelius_wiegenlied.mxl", choose("", every_verse));
    // Two endings, "1.u.2." and "3.": three verses (read by hand).
    CHECK(remarked(verses, "48 bars, of 17 printed")); // 16, 16, 15 and the other ending
    CHECK(words(verses).find("Vöglein fliegt") == 0);
    CHECK(verses.notes.back().measure == "12 (3rd time)");
    CHECK(read_score(songs / "satie_omnibus.mxl", choose("", every_verse)).notes.size() >
          5 * read_score(songs / "satie_omnibus.mxl").notes.size());
}

namespace {

std::vector<ScorePart> parts_of(std::filesystem::path const& file) {
    std::ifstream in(file, std::ios::binary);
    return sung_parts({std::istreambuf_iterator<char>(in), {}}, file.string());
}

std::string listed(std::vector<ScorePart> const& parts) {
    std::string out;
    for (auto const& p : parts)
        out += p.wish + (p.lowest ? " low" : "") + " " + p.name + ": " + std::string(to_string(p.voice)) +
               (p.named ? ", named" : "") + (p.words ? ", words" : "") + "\n";
    return out;
}

/// A score of parts without accompaniment, each its name and its bars.
std::string score_of(std::vector<std::pair<std::string, std::string>> const& parts) {
    std::string list, music;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto const id = "P" + std::to_string(i + 1);
        list += "<score-part id=\"" + id + "\"><part-name>" + parts[i].first + "</part-name></score-part>";
        music += "<part id=\"" + id + "\">" + parts[i].second + "</part>";
    }
    return "<score-partwise version=\"4.0\"><part-list>" + list + "</part-list>" + music +
           "</score-partwise>";
}

std::string note(std::string const& pitch, int voice, int staff, std::string const& word = {}) {
    return "<note><pitch><step>" + pitch.substr(0, 1) + "</step><octave>" + pitch.substr(1) +
           "</octave></pitch><duration>1</duration><voice>" + std::to_string(voice) +
           "</voice><type>quarter</type><staff>" + std::to_string(staff) + "</staff>" +
           (word.empty() ? "" : "<lyric><syllabic>single</syllabic><text>" + word + "</text></lyric>") +
           "</note>";
}

} // namespace

TEST_CASE("the parts of a choir are found, with who sings them") {
    CHECK(listed(parts_of(songs.parent_path() / "own/old_hundredth.musicxml")) ==
          "1 Soprano: soprano, named, words\n2 Alto: alto, named\n3 Tenor: tenor, named\n"
          "4 Bass: bass, named, words\n");
    CHECK(listed(parts_of(songs / "brahms_magdalena.mxl")) ==
          "1 Soprano: soprano, named, words\n2 Alto: alto, named, words\n3 Tenor: tenor, named, words\n"
          "4 Bass: bass, named, words\n");
    // A song with piano has one line; a piano is not sung.
    CHECK(listed(parts_of(songs / "cornelius_wiegenlied.mxl")) == "1 Voice: soprano, words\n");
}

TEST_CASE("two voices on a staff are two lines, and so are chords, four without names are a mixed choir") {
    auto const back = [](int n) { return "<backup><duration>" + std::to_string(n) + "</duration></backup>"; };
    auto const begin =
        std::string("<measure number=\"1\"><attributes><divisions>1</divisions><staves>2</staves>"
                    "</attributes>");
    // A hymn on two staves, the words under the first voice only.
    auto const hymn = begin + note("D5", 1, 1, "let") + note("E5", 1, 1, "us") + back(2) + note("F4", 2, 1) +
                      note("G4", 2, 1) + back(2) + note("A3", 5, 2) + note("B3", 5, 2) + back(2) +
                      note("D3", 6, 2) + note("E3", 6, 2) + "</measure>";
    CHECK(listed(sung_parts(score_of({{"", hymn}}), "hymn.musicxml")) ==
          "1.1 Soprano: soprano, words\n1.2 Alto: alto\n1.3 Tenor: tenor\n1.4 Bass: bass\n");
    ScoreOptions options = choose("1.3");
    options.transpose_semitones = 0;
    CHECK(parse_score(score_of({{"", hymn}}), "hymn.musicxml", options).notes[1].spelled.str() == "B3");
    // Chords in the sopranos, an alto in an instrument's name's company.
    auto chord = note("E4", 1, 1);
    chord.insert(6, "<chord/>");
    auto const divided = begin + note("C5", 1, 1, "la") + chord + "</measure>";
    auto const cello = begin + note("C3", 1, 1) + "</measure>";
    CHECK(listed(sung_parts(score_of({{"Sopranos", divided}, {"Violoncello", cello}}), "x.musicxml")) ==
          "1 Sopranos 1: soprano, named, words\n1 low Sopranos 2: soprano, named, words\n");
    options = choose("1");
    options.lowest = true;
    CHECK(parse_score(score_of({{"Sopranos", divided}}), "x.musicxml", options).notes[0].spelled.str() ==
          "E4");
    CHECK_THROWS_AS(sung_parts(score_of({{"Violoncello", cello}}), "x.musicxml"), InputError);
}

TEST_CASE("a part without words takes those of the part it sings with") {
    auto const file = songs.parent_path() / "own/old_hundredth.musicxml";
    auto const soprano = read_score(file, choose("Soprano")), bass = read_score(file, choose("Bass"));
    auto alto = read_score(file, choose("Alto"));
    REQUIRE(words(alto).empty());
    auto const taken = borrow_words(alto, {&soprano, &bass}, Wanting::everywhere);
    CHECK(taken.from == &soprano);
    CHECK(taken.syllables == 32);
    CHECK(words(alto) == words(soprano));
    CHECK_FALSE(remarked(alto, "has no words"));
    // Half a bar later they do not sing together.
    auto late = read_score(file, choose("Alto"));
    for (auto& n : late.notes) n.start += seconds(0.4);
    CHECK(borrow_words(late, {&soprano}, Wanting::everywhere).from == nullptr);
    // A line whose words stand under another for two bars takes them there only, another tune keeps its own.
    auto gaps = read_score(file, choose("Bass"));
    for (std::size_t i = 5; i < 30; ++i) {
        gaps.notes[i].syllables.clear();
        gaps.notes[i].melisma = true;
    }
    gaps.notes[0].syllables[0].text = "Let";
    CHECK(borrow_words(gaps, {&soprano}, Wanting::gaps).syllables == 24); // bars 2 to 7; bar 8 has words
    CHECK(gaps.notes[0].syllables[0].text == "Let");
    CHECK(gaps.notes[5].text() == soprano.notes[5].text());
    auto sung = read_score(file, choose("Bass"));
    sung.notes[2].syllables.clear();
    CHECK(borrow_words(sung, {&soprano}, Wanting::gaps).syllables == 0);
}

TEST_CASE("three lines of one part, beside a piano, are three") {
    // Massenet's chorus, bar 30 in its score: "Voi-" on C5, A4 and F4.
    auto const file = songs.parent_path() / "parts/massenet_choeur_des_pastorales.mxl";
    auto const parts = parts_of(file);
    REQUIRE(parts.size() == 3);
    std::string first;
    for (auto const& part : parts) {
        auto const line = read_score(file, choose(part.wish));
        auto const at = std::find_if(line.notes.begin(), line.notes.end(),
                                     [](SungNote const& note) { return note.measure == "30"; });
        REQUIRE(at != line.notes.end());
        first += at->spelled.str() + " ";
    }
    CHECK(first == "C5 A4 F4 ");
}
