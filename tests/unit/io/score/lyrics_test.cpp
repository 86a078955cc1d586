// SPDX-License-Identifier: MIT
// Words under notes. Sources: MusicXML 4.0 (<lyric>, <elision>, <syllabic>, <extend>, <humming>); what
// singers make of verse numbers, hyphens typed by hand, refrains and rhythms that differ by verse is common
// practice, no source.
#include "vowelway/io/score/read_score.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>
#include <vector>

using namespace vowelway;
using namespace vowelway::io;
namespace fs = std::filesystem;

namespace {

Passage read(std::string const& music, ScoreOptions const& options = {}, std::string const& attributes = {}) {
    auto const path =
        fs::temp_directory_path() / ("vowelway_lyrics_" + std::to_string(::getpid()) + ".musicxml");
    std::ofstream(path, std::ios::binary)
        << "<score-partwise><part-list><score-part "
           "id=\"P1\"><part-name>Voice</part-name></score-part></part-list><part id=\"P1\">"
           "<measure number=\"1\"><attributes><divisions>2</divisions>"
        << attributes << "</attributes>" << music << "</measure></part></score-partwise>";
    struct Gone {
        fs::path const& path;
        ~Gone() { fs::remove(path); }
    } const gone{path};
    return read_score(path, options);
}

ScoreOptions verse(int number) {
    ScoreOptions out;
    out.verse = number;
    return out;
}

/// A quarter note; `lyrics` are whole <lyric> elements, or a text for verse 1.
std::string note(std::string const& lyrics, std::string const& voice = "1", char step = 'A') {
    auto const lyric = lyrics.empty() || lyrics.starts_with("<lyric")
                           ? lyrics
                           : "<lyric number=\"1\"><text>" + lyrics + "</text></lyric>";
    return std::string("<note><pitch><step>") + step +
           "</step><octave>4</octave></pitch><duration>2</duration><voice>" + voice + "</voice>" + lyric +
           "</note>";
}
std::string in_verse(int number, std::string const& text) {
    return "<lyric number=\"" + std::to_string(number) + "\"><text>" + text + "</text></lyric>";
}
std::string const rest = "<note><rest/><duration>2</duration><voice>1</voice></note>";

std::vector<std::string> texts(Passage const& passage) {
    std::vector<std::string> out;
    for (auto const& n : passage.notes) out.push_back(n.hummed ? "(hum)" : n.melisma ? "~" : n.text());
    return out;
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("what is printed with a syllable but not sung is taken off") {
    CHECK(texts(read(note("1. Der") + note("2.Die") + note("12) Das") + note("3. ") + note("7") +
                     note("2.5"))) == Texts{"Der", "Die", "Das", "~", "7", "2.5"});
    CHECK(texts(read(note("ex-") + note("press'd") + note("bel-") +
                     note("<lyric><syllabic>begin</syllabic><text>la-</text></lyric>") + note("-to"))) ==
          Texts{"ex-", "-press'd", "bel-", "-la-", "-to"});
    CHECK(texts(read(note("mur–") + note("mu") + note("la_") + note("dis ;") + note("« Ah !") + note("."))) ==
          Texts{"mur-", "-mu", "la", "dis ;", "« Ah !", "~"});
}

TEST_CASE("syllables that share a note are parted, however the tie is written") {
    for (auto const* text : {"tua e", "tua‿e", "tua_e", "tua\u00A0e", "tua\u202Fe"}) {
        CAPTURE(text);
        auto const passage = read(note(text));
        REQUIRE(passage.notes[0].syllables.size() == 2);
        CHECK(passage.notes[0].syllables[0].text == "tua");
        CHECK(passage.notes[0].syllables[1].text == "e");
    }
    // The ends of the whole belong to its neighbours: "-re‿a-" ends one word and begins another.
    auto const inner = read(note("<lyric><syllabic>middle</syllabic><text>re_a</text></lyric>"));
    CHECK(inner.notes[0].syllables[0].part == Syllable::Part::end);
    CHECK(inner.notes[0].syllables[1].part == Syllable::Part::begin);
    auto const elided = read(note("<lyric><syllabic>end</syllabic><text>no</text><elision>‿</"
                                  "elision><syllabic>begin</syllabic><text>in</text></lyric>"));
    CHECK(elided.notes[0].text() == "-no‿in-");
    // The same with a sign of a music font (SMuFL 1.4, lyricsElisionNarrow), as some programs write it.
    auto const sign = read(
        note("<lyric><syllabic>end</syllabic><text>no</text><text font-family=\"Leland Text\">\xEE\x95\x90"
             "</text><text>in</text></lyric>"));
    CHECK(sign.notes[0].text() == "-no‿in");
    // Two texts without <elision> are one syllable in two fonts.
    CHECK(read(note("<lyric><text>A</text><text>men</text></lyric>")).notes[0].syllables.size() == 1);
}

TEST_CASE("a sign of a music font among words is written in letters, or left out") {
    // SMuFL 1.4: dynamicPiano U+E520, dynamicFF U+E52F, noteheadBlack U+E0A4.
    auto const passage =
        read("<direction><direction-type><words>bien l\u00E9ger et \xEE\x94\xA0, \xEE\x94\xAF\xEE\x82\xA4"
             "</words></direction-type></direction>" +
             note("la"));
    REQUIRE(passage.staff.measures.at(0).texts.size() == 1);
    CHECK(passage.staff.measures[0].texts[0].text == "bien l\u00E9ger et p, ff");
}

TEST_CASE("humming and laughing") {
    CHECK(texts(read(note("Mm") + note("") + note("hm") + note("hmmm,") + note("m'a") + note("Mai") +
                     note("<lyric><humming/></lyric>"))) ==
          Texts{"(hum)", "(hum)", "(hum)", "(hum)", "m'a", "Mai", "(hum)"});
    auto const laughed = read(note("ha") + note("<lyric><laughing/></lyric>"));
    CHECK(laughed.notes[1].syllables.empty());
    CHECK_FALSE(laughed.notes[1].melisma);
}

TEST_CASE("a line in the phonetic alphabet gives the vowels, the text line stays") {
    auto const both = [](std::string const& text, std::string const& ipa) {
        return note(in_verse(1, text) + in_verse(2, ipa));
    };
    for (auto const& line : {std::vector<std::string>{"/maɪ̯n/", "/gə/", "/myt/"},
                             {"maɪ̯n", "ɡə", "myːt"},
                             {"[maɪ̯n]", "[ɡə]", "[myːt]"}}) {
        auto const passage = read(both("Mein", line[0]) + both("Ge", line[1]) + both("müt", line[2]));
        CAPTURE(line[0]);
        REQUIRE(passage.notes[0].typed_ipa);
        CHECK(*passage.notes[0].typed_ipa == "maɪ̯n");
        CHECK(passage.notes[2].typed_ipa->starts_with("my"));
        CHECK(passage.notes[0].text() == "Mein");
        CHECK(std::none_of(passage.remarks.begin(), passage.remarks.end(),
                           [](Remark const& r) { return r.text.find("verse") != std::string::npos; }));
    }
    // The only line may be phonetic; a single syllable may be typed so.
    CHECK(read(note("/a/") + note("/ɛ/")).notes[1].typed_ipa == "ɛ");
    auto const one = read(note("lo") + note("[ɔ]") + note("cielo"));
    CHECK_FALSE(one.notes[0].typed_ipa);
    CHECK(one.notes[1].typed_ipa == "ɔ");
    // Ordinary verses, Danish letters and all, are no phonetic line.
    CHECK_FALSE(read(both("blå", "sø") + both("hav", "æde")).notes[0].typed_ipa);
    CHECK_FALSE(read(note("la") + note("la")).notes[0].typed_ipa);
}

TEST_CASE("a refrain under the first verse is sung in the second, a rhythm of its own is not") {
    auto const two = [](std::string const& a, std::string const& b) {
        return note(in_verse(1, a) + in_verse(2, b));
    };
    auto const refrain = two("one", "two") + note("sing") + note("all") + note("this") + note("song");
    CHECK(texts(read(refrain, verse(2))) == Texts{"two", "sing", "all", "this", "song"});
    auto const rhythm = two("one", "two") + note("more") + two("end", "fin");
    CHECK(texts(read(rhythm, verse(2))) == Texts{"two", "~", "fin"});
    // An upbeat only the first verse has is silent in the second.
    auto const upbeat = rest + note("The") + two("one", "two");
    CHECK(texts(read(upbeat, verse(2))) == Texts{"two"});
    CHECK(texts(read(upbeat, verse(1))) == Texts{"The", "one"});
}

TEST_CASE("a second voice with the verse's own rhythm is followed, a second singer is not") {
    std::string const back = "<backup><duration>4</duration></backup>";
    // Verse 1 sings two quarters, verse 2 one half note in voice 2.
    std::string const half =
        "<note><pitch><step>G</step><octave>4</octave></pitch><duration>4</duration><voice>2</voice>" +
        in_verse(2, "long") + "</note>";
    auto const differs = note(in_verse(1, "a") + in_verse(2, "b")) +
                         note(in_verse(1, "c") + in_verse(2, "d")) + note("short") + note("notes") + back +
                         half;
    CHECK(texts(read(differs, verse(1))) == Texts{"a", "c", "short", "notes"});
    auto const second = read(differs, verse(2));
    CHECK(texts(second) == Texts{"b", "d", "long"});
    CHECK(second.notes[2].spelled.str() == "G4");
    // The staff shows what is sung.
    REQUIRE(second.staff.measures[0].events.size() == 3);
    CHECK(second.staff.measures[0].events[2].value == NoteValue::half);
    // Two singers on one staff, words for both.
    auto const duet = note("up") + note("here") + back + note("down", "2", 'F') + note("there", "2", 'F');
    CHECK(texts(read(duet)) == Texts{"up", "here"});
    ScoreOptions lower;
    lower.part = "Voice.2";
    CHECK(texts(read(duet, lower)) == Texts{"down", "there"});
}

TEST_CASE("a grace note with a syllable is sung before its note, one without is folded into it") {
    std::string const grace = "<note><grace/><pitch><step>B</step><octave>4</octave></pitch><voice>1</voice>";
    auto const sung = read(note("a") + grace + in_verse(1, "b") + "</note>" + note(""));
    REQUIRE(sung.notes.size() == 3);
    CHECK(sung.notes[1].grace);
    CHECK(sung.notes[1].spelled.str() == "B4");
    CHECK(in_seconds(sung.notes[1].length) == doctest::Approx(60.0 / 72 / 8));
    CHECK(in_seconds(sung.notes[1].start + sung.notes[1].length) ==
          doctest::Approx(in_seconds(sung.notes[2].start)));
    CHECK(in_seconds(sung.notes[2].start + sung.notes[2].length) == doctest::Approx(2 * 60.0 / 72));
    auto const folded = read(note("a") + grace + "</note>" + note("b"));
    CHECK(folded.notes.size() == 2);
    REQUIRE(folded.staff.measures[0].events.size() == 3);
    CHECK(folded.staff.measures[0].events[1].grace);
    CHECK(folded.staff.measures[0].events[1].sung == 1u);
}

TEST_CASE("a syllable under a rest goes to the note after it, if that has none") {
    std::string const rest_with =
        "<note><rest/><duration>2</duration><voice>1</voice>" + in_verse(1, "Tal") + "</note>";
    CHECK(texts(read(note("a") + rest_with + note("") + note("m'ha"))) == Texts{"a", "Tal", "m'ha"});
    auto const taken = read(note("a") + rest_with + note("b"));
    CHECK(texts(taken) == Texts{"a", "b"});
    CHECK(std::any_of(taken.remarks.begin(), taken.remarks.end(),
                      [](Remark const& r) { return r.text.find("left out") != std::string::npos; }));
}

TEST_CASE("cue notes and spoken notes are left out and said") {
    std::string const cue = "<note><cue/><pitch><step>B</step><octave>4</octave></pitch><duration>2</"
                            "duration><voice>1</voice></note>";
    std::string const spoken =
        "<note><unpitched/><duration>2</duration><voice>1</voice><lyric><text>Hey</text></lyric></note>";
    auto const passage = read(note("la") + cue + spoken);
    CHECK(texts(passage) == Texts{"la"});
    auto const said = [&](std::string_view text) {
        return std::any_of(passage.remarks.begin(), passage.remarks.end(),
                           [&](Remark const& r) { return r.text.find(text) != std::string::npos; });
    };
    CHECK(said("cue"));
    CHECK(said("without pitch"));
}

TEST_CASE("dynamics hold until the next, a hairpin moves evenly to the mark at its end") {
    auto const mark = [](std::string const& inside) {
        return "<direction><direction-type>" + inside + "</direction-type></direction>";
    };
    auto const p = mark("<dynamics><p/></dynamics>"), f = mark("<dynamics><f/></dynamics>");
    auto const swell = mark("<wedge type=\"crescendo\"/>"), stop = mark("<wedge type=\"stop\"/>");
    auto const passage =
        read(note("a") + p + note("a") + swell + note("a") + note("a") + note("a") + stop + f + note("a"));
    CHECK_FALSE(passage.notes[0].dynamic);
    double const expected[] = {-2, -2, -1, 0, 1}; // p is two steps below mezzo-forte, f one above
    for (std::size_t i = 1; i < 6; ++i) {
        CAPTURE(i);
        REQUIRE(passage.notes[i].dynamic);
        CHECK(*passage.notes[i].dynamic == doctest::Approx(expected[i - 1]));
    }
    // Nothing written at its end: one step is assumed.
    CHECK(*read(p + note("a") + swell + note("a") + stop + note("a")).notes[2].dynamic ==
          doctest::Approx(-1));
}

TEST_CASE("accidentals are set where the source has none: signature, bar line, octave") {
    auto const sharp = [](int octave) {
        return "<note><pitch><step>F</step><alter>1</alter><octave>" + std::to_string(octave) +
               "</octave></pitch><duration>2</duration></note>";
    };
    std::string const plain =
        "<note><pitch><step>F</step><octave>4</octave></pitch><duration>2</duration></note>";
    auto const passage = read(sharp(4) + sharp(4) + plain + sharp(5));
    auto const& events = passage.staff.measures[0].events;
    CHECK(events[0].heads[0].accidental == Accidental::sharp);
    CHECK_FALSE(events[1].heads[0].accidental);
    CHECK(events[2].heads[0].accidental == Accidental::natural);
    CHECK(events[3].heads[0].accidental == Accidental::sharp);
    auto const keyed = read(sharp(4) + plain, {}, "<key><fifths>1</fifths></key>");
    CHECK_FALSE(keyed.staff.measures[0].events[0].heads[0].accidental);
    CHECK(keyed.staff.measures[0].events[1].heads[0].accidental == Accidental::natural);
}
