// SPDX-License-Identifier: MIT
#include "core/utf8.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/passage.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;

TEST_CASE("a place names what is known of it") {
    CHECK(Place{"song.xml", 12, 3, "bar 4"}.str() == "song.xml:12:3, bar 4");
    CHECK(Place{"song.xml", 12, 0, ""}.str() == "song.xml:12");
    CHECK(Place{"song.xml", 0, 0, "bar 4"}.str() == "song.xml, bar 4");
    CHECK(Place{"", 12, 3, ""}.str() == "line 12:3");
    CHECK(Place{}.str().empty());
}

TEST_CASE("an error says where, what, how to mend it, and on the way to what") {
    InputError error("the note has no pitch", "give it one");
    CHECK(std::string(error.what()) == "the note has no pitch\n  give it one");
    error.at({"", 0, 0, "bar 4"}).at({"song.xml", 12, 3, "bar 9"}); // what is known is kept
    error.during("while reading the song");
    CHECK(std::string(error.what()) ==
          "song.xml:12:3, bar 4: the note has no pitch\n  give it one\nwhile reading the song");
    CHECK(error.place().musical == "bar 4");
}

// RFC 3629: overlong forms, surrogates and bytes above U+10FFFF are not UTF-8.
TEST_CASE("UTF-8 is read strictly") {
    for (std::string const good : {"", "a", "é", "ɛ", "𝄪", "\u0303", "\U0010FFFF"}) CHECK(utf8::valid(good));
    for (std::string const bad : {"\x80", "\xC3", "\xC0\x80", "\xE0\x80\x80", "\xED\xA0\x80",
                                  "\xF4\x90\x80\x80", "\xF0\x80\x80\x80", "a\xFF", "\xC3\x28"})
        CHECK_FALSE(utf8::valid(bad));
    for (char32_t const c :
         {U'a', U'é', U'ɛ', U'𝄪', U'\x7F', U'\x80', U'\x7FF', U'\x800', U'\xFFFF', U'\x10000'}) {
        auto const bytes = utf8::encode(c);
        std::string_view view = bytes;
        CHECK(utf8::eat(view) == c);
        CHECK(view.empty());
    }
}

TEST_CASE("a sung note's text is printed with its hyphens and elisions") {
    SungNote note{Pitch{440_Hz}, {}, "1", 1, {}, {}, false, false, {}, {}, {}, {}, false};
    CHECK(note.text().empty());
    note.syllables = {{"mi", Syllable::Part::begin}};
    CHECK(note.text() == "mi-");
    note.syllables = {{"a", Syllable::Part::end}};
    CHECK(note.text() == "-a");
    note.syllables = {{"a", Syllable::Part::end}, {"i", Syllable::Part::begin}};
    CHECK(note.text() == "-a‿i-");
    note.syllables = {{"sol", Syllable::Part::single}};
    CHECK(note.text() == "sol");

    Passage passage;
    CHECK_THROWS_AS(compass(passage), InputError);
    passage.notes = {note, note};
    passage.notes[1].pitch = Pitch{220_Hz};
    auto const [low, high] = compass(passage);
    CHECK(in_hertz(low.frequency()) == 220);
    CHECK(in_hertz(high.frequency()) == 440);
}
