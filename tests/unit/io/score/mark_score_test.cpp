// SPDX-License-Identifier: MIT
// The marked score: nothing lost, nothing changed, valid against the published schema of MusicXML 4.0.
#include "support/source_dir.hpp"
#include "vowelway/io/score/mark_score.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <sstream>
#include <string>
#include <unistd.h>
#include <vector>
#include <zip.h>

using namespace vowelway;
using namespace vowelway::io;
namespace fs = std::filesystem;

namespace {

fs::path const data = fs::path(vowelway::test::source_dir()) / "tests/data";

struct Folder {
    fs::path path = fs::temp_directory_path() / ("vowelway_marks_" + std::to_string(::getpid()));
    Folder() { fs::create_directories(path); }
    ~Folder() { fs::remove_all(path); }
};

std::string bytes_of(fs::path const& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Name and bytes of every member, in order, unpacked by libzip.
std::vector<std::pair<std::string, std::string>> members(fs::path const& file) {
    std::vector<std::pair<std::string, std::string>> out;
    auto* archive = zip_open(file.c_str(), ZIP_RDONLY, nullptr);
    REQUIRE(archive);
    for (zip_int64_t i = 0; i < zip_get_num_entries(archive, 0); ++i) {
        zip_stat_t stat;
        zip_stat_index(archive, static_cast<zip_uint64_t>(i), 0, &stat);
        std::string content(stat.size, '\0');
        auto* member = zip_fopen_index(archive, static_cast<zip_uint64_t>(i), 0);
        zip_fread(member, content.data(), content.size());
        zip_fclose(member);
        out.emplace_back(stat.name, content);
    }
    zip_discard(archive);
    return out;
}

/// The score's text, out of its archive if it has one.
std::string text_of(fs::path const& file) {
    if (file.extension() != ".mxl") return bytes_of(file);
    for (auto const& [name, content] : members(file))
        if (!name.starts_with("META-INF") && !name.ends_with('/')) return content;
    return {};
}

ScoreMarks some_marks(Passage const& passage, std::string const& ipa = "ɑ̝ː") {
    ScoreMarks out;
    out.heading = "Demo singer & classical <technique>\na caution: \"stop when it hurts\"";
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        ScoreMark mark{i, {}, {}};
        if (!passage.notes[i].melisma) mark.ipa = ipa;
        if (i % 10 == 0) mark.words = "open toward a";
        out.notes.push_back(mark);
    }
    return out;
}

/// What is ours, taken out by a means of its own: the marks' text form, not the program's parser.
std::string stripped(std::string const& text) {
    static std::regex const ours(
        R"((<lyric [^>]*name="vowelway"[^>]*><syllabic>[a-z]*</syllabic><text>[^<]*</text></lyric>|)"
        R"(<direction [^>]*id="vowelway-([A-Za-z0-9_.]+-)?[0-9.]+"[^>]*><direction-type><words[^>]*>[^<]*</words></direction-type>)"
        R"((<voice>[^<]*</voice>)?(<staff>[^<]*</staff>)?</direction>|)"
        R"(<credit [^>]*id="vowelway-[A-Za-z0-9_.-]+"[^>]*><credit-type>[a-z]+</credit-type><credit-words[^>]*>[^<]*</credit-words></credit>)\s*)",
        std::regex::optimize);
    return std::regex_replace(text, ours, "");
}

bool valid(fs::path const& file) {
    auto const schema = data / "musicxml_schema";
    auto const command = "XML_CATALOG_FILES='" + (schema / "catalog.xml").string() +
                         "' xmllint --nonet --noout --schema '" + (schema / "musicxml.xsd").string() + "' '" +
                         file.string() + "' >/dev/null 2>&1";
    auto const status = std::system(command.c_str());
    REQUIRE_MESSAGE(WEXITSTATUS(status) != 127, "xmllint is missing: apt-get install libxml2-utils");
    return status == 0;
}

std::vector<fs::path> scores() {
    std::vector<fs::path> out;
    for (auto const* folder : {"lieder", "suite"})
        for (auto const& entry : fs::directory_iterator(data / "scores" / folder)) {
            auto const extension = entry.path().extension();
            if (extension != ".xml" && extension != ".musicxml" && extension != ".mxl") continue;
            if (entry.path().filename().string().starts_with("32ad")) continue; // not well-formed
            out.push_back(entry.path());
        }
    REQUIRE(out.size() > 30);
    return out;
}

} // namespace

TEST_CASE("with our marks taken out, a marked score has its bytes back, marked again it is the same") {
    Folder const folder;
    for (auto const& file : scores()) {
        CAPTURE(file);
        auto const before = text_of(file);
        auto const passage = read_score(file);
        auto const marked = folder.path / file.filename();
        write_marked_score(file, {}, some_marks(passage), marked);
        auto const after = text_of(marked);
        CHECK(after.size() > before.size());
        bool const same = stripped(after) == before && without_marks(after, "marked") == before;
        CHECK(same);
        // Reading it again gives the same music.
        auto const again = read_score(marked);
        REQUIRE(again.notes.size() == passage.notes.size());
        CHECK(again.notes.back().text() == passage.notes.back().text());
        CHECK(again.remarks == passage.remarks);
        // Other marks replace these.
        auto const other = folder.path / ("other_" + file.filename().string());
        write_marked_score(marked, {}, some_marks(passage, "u"), other);
        CHECK(text_of(other).find("ɑ̝ː") == std::string::npos);
        bool const same_other = stripped(text_of(other)) == before;
        CHECK(same_other);
        write_marked_score(other, {}, some_marks(passage), other);
        bool const repeatable = bytes_of(other) == bytes_of(marked);
        CHECK(repeatable);
    }
}

TEST_CASE("a marked score is valid against the schema of MusicXML 4.0 where the source was") {
    // Source: W3C Music Notation Community Group, MusicXML 4.0, musicxml.xsd.
    Folder const folder;
    int checked = 0;
    for (auto const& file : scores()) {
        CAPTURE(file);
        auto const plain = folder.path / "plain.musicxml", marked = folder.path / "marked.musicxml";
        std::ofstream(plain, std::ios::binary) << text_of(file);
        if (!valid(plain)) continue;
        ++checked;
        write_marked_score(file, {}, some_marks(read_score(file)), marked);
        CHECK(valid(marked));
    }
    CHECK(checked > 25);
}

TEST_CASE("a compressed score stays compressed, its other members untouched") {
    Folder const folder;
    auto const file = data / "scores/suite/90a-Compressed-MusicXML.mxl";
    auto const before = members(file);
    REQUIRE(before.size() > 2); // it carries pictures
    write_marked_score(file, {}, some_marks(read_score(file)), folder.path / "marked.mxl");
    auto const after = members(folder.path / "marked.mxl");
    REQUIRE(after.size() == before.size());
    int changed = 0;
    for (std::size_t i = 0; i < before.size(); ++i) {
        CHECK(after[i].first == before[i].first);
        changed += after[i].second != before[i].second ? 1 : 0;
    }
    CHECK(changed == 1);
}

TEST_CASE("the destination's extension chooses the form") {
    Folder const folder;
    auto const plain = data / "scores/suite/61a-Lyrics.xml";
    auto const marks = some_marks(read_score(plain));
    write_marked_score(plain, {}, marks, folder.path / "new.mxl");
    CHECK(stripped(text_of(folder.path / "new.mxl")).empty() == false);
    CHECK(read_score(folder.path / "new.mxl").notes.size() == 11);
    write_marked_score(folder.path / "new.mxl", {}, marks, folder.path / "back.musicxml");
    CHECK(stripped(bytes_of(folder.path / "back.musicxml")) == bytes_of(plain));
    CHECK_THROWS_AS(write_marked_score(plain, {}, marks, folder.path / "no/such/folder.xml"), InputError);
}

TEST_CASE("the marks hang on the note that is sung, in the order the schema wants") {
    Folder const folder;
    auto const file = data / "scores/suite/61d-Lyrics-Melisma.xml"; // its second note is a chord
    ScoreMarks marks;
    marks.notes.push_back({1, "ɛ", "jaw a little"});
    write_marked_score(file, {}, marks, folder.path / "marked.xml");
    auto const text = bytes_of(folder.path / "marked.xml");
    // The direction stands before the chord's first note, the lyric is the last thing in that note.
    std::regex const wanted(
        R"(<direction placement="above" id="vowelway-2"><direction-type><words[^>]*>jaw a little</words></direction-type></direction>\s*<note>)"
        R"([\s\S]*?<step>A</step>[\s\S]*?<lyric number="2" name="vowelway"><syllabic>single</syllabic><text>ɛ</text></lyric>\s*</note>)");
    CHECK(std::regex_search(text, wanted));
    // Long words stand in two lines, the lower one first, so that they do not run over the next mark.
    marks.notes = {{1, "ɛ", "tongue much lower, jaw open, above your range"}};
    write_marked_score(file, {}, marks, folder.path / "long.xml");
    std::regex const in_two(
        R"(id="vowelway-2\.3">.*>above your range<[\s\S]*id="vowelway-2\.2">.*>jaw open,<[\s\S]*)"
        R"(id="vowelway-2">.*>tongue much lower,<)");
    CHECK(std::regex_search(bytes_of(folder.path / "long.xml"), in_two));
    CHECK(valid(folder.path / "long.xml"));
    CHECK(stripped(bytes_of(folder.path / "long.xml")) == bytes_of(file));
    marks.notes.front().note = 999;
    CHECK_THROWS_AS(write_marked_score(file, {}, marks, folder.path / "marked.xml"), std::out_of_range);
}

// MusicXML 4.0, <credit>: what an engraver prints on a page; where there is none, many take the title from
// <work-title> or <movement-title> themselves, and cease to when a credit is put in.
TEST_CASE("a score without credits keeps its title and composer beside our heading, another keeps its own") {
    Folder const folder;
    auto const put = [&](char const* name, std::string const& text) {
        std::ofstream(folder.path / name, std::ios::binary) << text;
        return folder.path / name;
    };
    auto const bare = put("bare.musicxml", R"(<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <movement-title>An &amp; evening song</movement-title>
  <identification><creator type="composer">Nobody</creator></identification>
  <part-list><score-part id="P1"><part-name>Voice</part-name></score-part></part-list>
  <part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>
    <note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration><type>whole</type>
      <lyric><syllabic>single</syllabic><text>la</text></lyric></note></measure></part>
</score-partwise>)");
    ScoreMarks marks;
    marks.heading = "first line\nsecond line";
    marks.notes.push_back({0, "ɛ", ""});
    auto const out = folder.path / "marked.musicxml";
    write_marked_score(bare, {}, marks, out);
    auto const text = bytes_of(out);
    for (char const* wanted :
         {"id=\"vowelway-heading-1\"", ">first line<", "id=\"vowelway-heading-2\"", ">second line<",
          "<credit-type>title</credit-type>", ">An &amp; evening song<", ">Nobody</credit-words>"})
        CHECK_MESSAGE(text.find(wanted) != std::string::npos, wanted);
    CHECK(valid(out));
    CHECK(without_marks(text, "marked.musicxml") == bytes_of(bare));
    // With a credit of its own: only the heading.
    auto with_credit = bytes_of(bare);
    with_credit.insert(with_credit.find("<part-list>"),
                       "<credit page=\"1\"><credit-words>Evening</credit-words></credit>");
    auto const own = put("own.musicxml", with_credit);
    write_marked_score(own, {}, marks, out);
    CHECK(bytes_of(out).find("vowelway-title") == std::string::npos);
    CHECK(bytes_of(out).find("vowelway-heading-2") != std::string::npos);
}

TEST_CASE("marks of one part leave those of another") {
    Folder const folder;
    auto const hymn = data / "scores/own/old_hundredth.musicxml";
    auto const mark = [&](fs::path const& from, char const* part, char const* ipa, std::string const& who,
                          fs::path const& to) {
        ScoreOptions options;
        options.part = part;
        ScoreMarks marks;
        marks.heading = who + "\nhow to read";
        for (std::size_t i = 0; i < 3; ++i) marks.notes.push_back({i, ipa, "words"});
        write_marked_score(from, options, marks, to);
    };
    auto const count = [&](fs::path const& file, std::string const& text) {
        auto const all = bytes_of(file);
        std::size_t n = 0;
        for (auto at = all.find(text); at != all.npos; at = all.find(text, at + 1)) ++n;
        return n;
    };
    auto const one = folder.path / "one.musicxml", two = folder.path / "two.musicxml",
               three = folder.path / "three.musicxml";
    mark(hymn, "Soprano", "ɛ", "first singer", one);
    mark(one, "Alto", "ɔ", "second singer", two);
    CHECK(count(two, ">ɛ<") == 3);
    CHECK(count(two, ">ɔ<") == 3);
    CHECK(count(two, "<direction placement=\"above\" id=\"vowelway-P1-") == 3);
    CHECK(count(two, "<direction placement=\"above\" id=\"vowelway-P2-") == 3);
    CHECK(count(two, ">first singer<") == 1);
    CHECK(count(two, ">second singer<") == 1);
    CHECK(count(two, ">how to read<") == 1);
    CHECK(valid(two));
    // The soprano anew: her old marks and heading go, the alto's stay.
    mark(two, "Soprano", "u", "third singer", three);
    CHECK(count(three, ">ɛ<") == 0);
    CHECK(count(three, ">u<") == 3);
    CHECK(count(three, ">ɔ<") == 3);
    CHECK(count(three, ">first singer<") == 0);
    CHECK(count(three, ">second singer<") == 1);
    CHECK(count(three, ">how to read<") == 1);
    CHECK(without_marks(bytes_of(three), "three") == bytes_of(hymn));
    // In the other order the same marks stand.
    mark(hymn, "Alto", "ɔ", "second singer", one);
    mark(one, "Soprano", "u", "third singer", two);
    CHECK(count(two, "name=\"vowelway\"") == 6);
    CHECK(valid(two));
}

TEST_CASE("a score in another encoding is marked in UTF-8") {
    Folder const folder;
    std::string text = bytes_of(data / "scores/suite/61a-Lyrics.xml");
    auto const at = text.find("UTF-8");
    REQUIRE(at != std::string::npos);
    text.replace(at, 5, "ISO-8859-1");
    text.replace(text.find("Tra</text>"), 3, "Tr\xE4"); // a with dieresis
    auto const file = folder.path / "latin1.xml";
    std::ofstream(file, std::ios::binary) << text;
    auto const passage = read_score(file);
    CHECK(passage.notes.front().text() == "Trä-");
    write_marked_score(file, {}, some_marks(passage), folder.path / "marked.xml");
    auto const marked = read_score(folder.path / "marked.xml");
    CHECK(marked.notes.front().text() == "Trä-");
    CHECK(bytes_of(folder.path / "marked.xml").find("encoding=\"UTF-8\"") != std::string::npos);
}
