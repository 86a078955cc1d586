// SPDX-License-Identifier: MIT
// Bad scores: each is refused with the file, the line, the bar, what is wrong and how to mend it.
#include "vowelway/io/score/read_score.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>
#include <vector>
#include <zip.h>

using namespace vowelway;
using namespace vowelway::io;
namespace fs = std::filesystem;

namespace {

struct File {
    fs::path path;
    File(std::string const& extension, std::string_view bytes)
        : path(fs::temp_directory_path() / ("vowelway_bad_" + std::to_string(::getpid()) + extension)) {
        std::ofstream(path, std::ios::binary) << bytes;
    }
    ~File() { fs::remove(path); }
};

/// A score of one bar around the given music.
std::string score(std::string const& music, std::string const& attributes = "<divisions>1</divisions>") {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<score-partwise "
           "version=\"4.0\">\n<part-list><score-part id=\"P1\"><part-name>Voice</part-name>"
           "</score-part></part-list>\n<part id=\"P1\">\n<measure number=\"7\">\n<attributes>" +
           attributes + "</attributes>\n" + music + "\n</measure>\n</part>\n</score-partwise>\n";
}

std::string note(std::string const& inside) { return "<note>" + inside + "</note>"; }
std::string const c4 = "<pitch><step>C</step><octave>4</octave></pitch>";

/// The error a file gives; fails when there is none.
InputError error_of(std::string const& extension, std::string_view bytes) {
    File const file(extension, bytes);
    try {
        read_score(file.path);
    } catch (InputError const& error) {
        CHECK(error.place().file.starts_with(file.path.string()));
        CHECK_FALSE(error.wrong().empty());
        CHECK_FALSE(error.remedy().empty());
        return error;
    }
    FAIL("no error");
    return InputError("", "");
}

void refused(std::string const& extension, std::string_view bytes, std::string_view wrong, int line = 0,
             std::string_view musical = "") {
    auto const error = error_of(extension, bytes);
    CAPTURE(error.what());
    CHECK(error.wrong().find(wrong) != std::string::npos);
    if (line > 0) CHECK(error.place().line == line);
    CHECK(error.place().musical == musical);
}

std::string archive(std::vector<std::pair<std::string, std::string>> const& members) {
    auto const path = fs::temp_directory_path() / ("vowelway_zip_" + std::to_string(::getpid()));
    fs::remove(path);
    auto* zip = zip_open(path.c_str(), ZIP_CREATE, nullptr);
    for (auto const& [name, content] : members)
        zip_file_add(zip, name.c_str(), zip_source_buffer(zip, content.data(), content.size(), 0),
                     ZIP_FL_ENC_UTF_8);
    REQUIRE(zip_close(zip) == 0);
    std::ifstream in(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    fs::remove(path);
    return bytes;
}

std::string container(std::string const& path) {
    return "<container><rootfiles><rootfile full-path=\"" + path + "\"/></rootfiles></container>";
}

} // namespace

TEST_CASE("files that are not scores") {
    refused(".xml", "", "empty");
    refused(".musicxml", "\x01\x02\x03\x04", "not XML");
    refused(".txt", "la la la", "no pitch");
    refused(".doc", "la la la", "neither MusicXML");
    refused(".mxl", "la la la", "not a zip archive");
    refused(".xml", "<html><body/></html>", "<html>", 1);
    refused(".xml", std::string_view("<score-partwise>\n\0</score-partwise>", 35), "binary", 2);
    refused(".xml", "<?xml version=\"1.0\"?>\n<score-partwise>\n\xFF\xFE\n</score-partwise>", "not UTF-8", 3);
    refused(".xml", "<?xml version=\"1.0\" encoding=\"Klingon\"?><score-partwise/>", "Klingon", 1);
    refused(".xml", "<?xml version=\"1.0\" encoding=\"UTF-16\"?><score-partwise/>", "UTF-16", 1);
    CHECK_THROWS_AS(read_score("/no/such/score.xml"), InputError);
    CHECK_THROWS_AS(read_score(fs::temp_directory_path()), InputError);
}

// First bytes and lines as the formats' own specifications print them (from memory): Standard MIDI Files 1.0,
// ISO 32000, PNG, MEI 5, ABC 2.1, Humdrum, LilyPond's manual, the MNX draft of the W3C.
TEST_CASE("other formats are known by their content, whatever they are called") {
    for (auto const* extension : {".xml", ".mxl", ".txt", ".bin"}) {
        refused(extension, std::string_view("MThd\0\0\0\6\0\1\0\2\1\xE0MTrk", 18), "MIDI");
        refused(extension, "%PDF-1.7\n%\xE2\xE3", "PDF");
        refused(extension, std::string_view("\x89PNG\r\n\x1A\n\0\0\0\rIHDR", 16), "picture");
        refused(extension, std::string_view("RIFF\x24\0\0\0WAVEfmt ", 16), "recording");
        refused(extension,
                "<?xml version=\"1.0\"?>\n<!-- a -->\n<mei xmlns=\"http://www.music-encoding.org/ns/mei\"/>",
                "MEI");
        refused(extension, "X:1\nT:A tune\nM:4/4\nK:C\nCDEF|\nw:la la\n", "ABC");
        refused(extension, "\\version \"2.24.0\"\n\\relative c' { c4 d e f }\n", "LilyPond");
        refused(extension, "!!!OTL: A song\n**kern\t**text\n4c\tla\n*-\t*-\n", "kern");
        refused(extension, "{\"mnx\": {\"version\": 1}, \"global\": {}}", "MNX");
        refused(extension, "<!DOCTYPE html>\n<html><body/></html>", "<html>");
    }
    refused(".txt", std::string_view("\1\2\3SCORE\0\0\0\0", 12), "own file");
}

TEST_CASE("XML that is cut, crossed, hostile or endless") {
    auto const whole = score(note(c4 + "<duration>4</duration>"));
    for (std::size_t length = 1; length + 3 < whole.size(); ++length) {
        CAPTURE(length);
        error_of(".xml", std::string_view(whole).substr(0, length));
    }
    refused(".xml", "<score-partwise>\n<part>\n</score-partwise>\n</part>", "not well-formed", 3);
    refused(".xml",
            "<!DOCTYPE score-partwise [\n<!ENTITY a \"aaaaaaaaaa\">\n<!ENTITY b "
            "\"&a;&a;&a;&a;\">\n]>\n<score-partwise>&b;</score-partwise>",
            "defines entities", 2);
    std::string deep;
    for (int i = 0; i < 100000; ++i) deep += "<a>";
    refused(".xml", deep, "nested more than 64", 1);
    std::string many = "<score-partwise>";
    for (int i = 0; i <= most_score_elements; ++i) many += "<a/>";
    refused(".xml", many + "</score-partwise>", "more than 4000000 elements");
}

TEST_CASE("times and pitches that cannot be name their bar and line") {
    for (auto const* duration : {"0", "-1", "nan", "inf", "1e99", "one", "", "99999999"}) {
        CAPTURE(duration);
        auto const error = error_of(".xml", score(note(c4 + "<duration>" + duration + "</duration>")));
        CHECK(error.place().musical == "bar 7");
        CHECK(error.place().line == 7);
    }
    for (auto const* divisions : {"0", "-4", "nan", "x"}) {
        CAPTURE(divisions);
        auto const error = error_of(".xml", score(note(c4 + "<duration>1</duration>"),
                                                  "<divisions>" + std::string(divisions) + "</divisions>"));
        CHECK(error.place().musical == "bar 7");
        CHECK(error.place().line == 6);
    }
    refused(".xml", score(note(c4)), "no duration", 7, "bar 7");
    refused(".xml", score(note("<duration>1</duration>")), "neither pitch nor rest", 7, "bar 7");
    auto const pitch = [](std::string const& inside) {
        return score(note("<pitch>" + inside + "</pitch><duration>1</duration>"));
    };
    refused(".xml", pitch("<step>H</step><octave>4</octave>"), "not a step", 7, "bar 7");
    refused(".xml", pitch("<step>C</step>"), "no octave", 7, "bar 7");
    refused(".xml", pitch("<step>C</step><octave>11</octave>"), "octave 11", 7, "bar 7");
    refused(".xml", pitch("<step>C</step><alter>9</alter><octave>4</octave>"), "alteration", 7, "bar 7");
    refused(".xml", score("<sound tempo=\"-3\"/>" + note(c4 + "<duration>1</duration>")), "tempo", 7,
            "bar 7");
    refused(".xml",
            score(note(c4 + "<duration>1</duration>"),
                  "<divisions>1</divisions><time><beats>0</beats><beat-type>4</beat-type></time>"),
            "time signature 0/4", 6, "bar 7");
    refused(".xml", score(note(c4 + "<duration>1</duration>"), "<key><fifths>99</fifths></key>"), "99 fifths",
            6, "bar 7");
    refused(".xml", score(note("<rest/><duration>4</duration>")), "no notes to sing");
    refused(".xml", "<score-partwise><part-list/></score-partwise>", "no parts");
    std::string crowd;
    for (int i = 0; i <= most_bar_events; ++i) crowd += note(c4 + "<duration>1</duration>");
    refused(".xml", score(crowd), "more than 5000 notes and rests", 7, "bar 7");
}

TEST_CASE("archives that are no compressed score") {
    auto const good = score(note(c4 + "<duration>4</duration>"));
    {
        File const file(".mxl",
                        archive({{"META-INF/container.xml", container("a/song.xml")}, {"a/song.xml", good}}));
        CHECK(read_score(file.path).notes.size() == 1);
    }
    refused(".mxl", archive({{"song.xml", good}}), "no META-INF/container.xml");
    refused(".mxl", archive({{"META-INF/container.xml", container("other.xml")}, {"song.xml", good}}),
            "\"other.xml\", which is not in the archive");
    for (auto const* path : {"../song.xml", "/etc/passwd", "a/../../song.xml", "C:song.xml", "..\\song.xml"})
        refused(".mxl", archive({{"META-INF/container.xml", container(path)}, {"song.xml", good}}),
                "points outside the archive");
    refused(".mxl", archive({{"META-INF/container.xml", "<container/>"}, {"song.xml", good}}),
            "no <rootfile");
    refused(".mxl", archive({{"META-INF/container.xml", "<container"}, {"song.xml", good}}), "breaks off");
    // 65 MiB of blanks pack into some 65 kB.
    refused(".mxl",
            archive({{"META-INF/container.xml", container("song.xml")},
                     {"song.xml", std::string(65u << 20, ' ')}}),
            "unpacks to more than 64 MiB");
    auto const whole = archive({{"META-INF/container.xml", container("song.xml")}, {"song.xml", good}});
    for (std::size_t length = 4; length < whole.size(); length += 7) {
        CAPTURE(length);
        error_of(".mxl", std::string_view(whole).substr(0, length));
    }
    // An error in the score inside names both.
    auto const error = error_of(
        ".mxl", archive({{"META-INF/container.xml", container("song.xml")}, {"song.xml", score(note(c4))}}));
    CHECK(error.place().file.ends_with(".mxl/song.xml"));
    CHECK(error.place().line == 7);
}

TEST_CASE("a file on the disk larger than the bound is not read") {
    File const file(".xml", "<");
    fs::resize_file(file.path, 200u << 20); // a hole: takes no room
    try {
        read_score(file.path);
        FAIL("read");
    } catch (InputError const& error) {
        CHECK(error.wrong() == "the file is larger than 64 MiB");
    }
}

TEST_CASE("other encodings are read") {
    auto const text = score(note(c4 + "<duration>4</duration><lyric><text>la</text></lyric>"));
    std::string utf16 = "\xFF\xFE";
    for (char c : text.substr(text.find("?>") + 2)) utf16 += {c, '\0'};
    File const file(".xml", utf16);
    CHECK(read_score(file.path).notes.front().text() == "la");
    File const marked(".musicxml", "\xEF\xBB\xBF" + text);
    CHECK(read_score(marked.path).notes.front().text() == "la");
}

TEST_CASE("a damaged name of the encoding is refused") {
    // XML 1.0 (fifth edition), production 81: EncName ::= [A-Za-z] ([A-Za-z0-9._] | '-')*. The system's
    // converter would take some of these.
    auto const text = score(note(c4 + "<duration>4</duration><lyric><text>la</text></lyric>"));
    auto const rest = text.substr(text.find("?>"));
    for (std::string const damaged : {"encoding=\"\xff=ISO-8859-1\"", "encoding\xff=\"ISO-8859-1\"",
                                      "encoding=\"\"", "encoding=\"8859-1\"", "encoding=\"ISO 8859\""}) {
        CAPTURE(damaged);
        CHECK_THROWS_WITH_AS(parse_score("<?xml version=\"1.0\" " + damaged + rest, "x.musicxml"),
                             doctest::Contains("damaged"), InputError);
    }
    CHECK(parse_score("<?xml version=\"1.0\" encoding = 'ISO-8859-1'" + rest, "x.musicxml").notes.size() ==
          1);
}

TEST_CASE("an XML declaration that does not end is refused") {
    // XML 1.0 (fifth edition), production 23: XMLDecl ::= '<?xml' VersionInfo EncodingDecl? SDDecl? S? '?>'.
    // What stands in the score may look like the rest of it.
    auto const text =
        score(note(c4 + "<duration>4</duration><lyric><text>encoding=\"latin1\"</text></lyric>"));
    auto const rest = text.substr(text.find("?>") + 2);
    CHECK_THROWS_WITH_AS(parse_score("<?xml version=\"1.0\"" + rest + "<?end?>", "x.musicxml"),
                         doctest::Contains("does not end"), InputError);
    for (std::string const damaged :
         {"<?xml verencoding=\"ISO-8859-1\"sion=\"1.0\" encoding=\"UTF-8\"?>",
          "<?xml version=\"1.0\"encoding=\"UTF-8\"?>", "<?xml encoding=\"UTF-8\" encoding=\"latin1\"?>",
          "<?xmlversion=\"1.0\"?>", "<?xml version=1.0?>"}) {
        CAPTURE(damaged);
        CHECK_THROWS_WITH_AS(parse_score(damaged + rest, "x.musicxml"), doctest::Contains("damaged"),
                             InputError);
    }
    for (std::string const good : {"<?xml version=\"encoding\" encoding=\"UTF-8\"?>",
                                   "<?xml version='1.0' standalone='no' ?>", "<?xml encoding=\"UTF-8\"?>",
                                   "<?xml version=\"1.0\"\n encoding = \"ISO-8859-1\" standalone=\"yes\"?>"})
        CHECK(parse_score(good + rest, "x.musicxml").notes.size() == 1);
}

TEST_CASE("requests that cannot be met") {
    File const file(".xml", score(note(c4 + "<duration>4</duration><lyric><text>la</text></lyric>")));
    ScoreOptions options;
    options.transpose_semitones = 100;
    CHECK_THROWS_AS(read_score(file.path, options), InputError);
    options.transpose_semitones = std::nan("");
    CHECK_THROWS_AS(read_score(file.path, options), InputError);
    options = {};
    options.verse = -2;
    CHECK_THROWS_AS(read_score(file.path, options), InputError);
    options = {};
    options.part = "Voice.2";
    CHECK_THROWS_AS(read_score(file.path, options), InputError);
}
