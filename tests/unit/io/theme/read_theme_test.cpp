// SPDX-License-Identifier: MIT
#include "vowelway/io/theme/read_theme.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::io;

namespace {
std::string message(std::string const& lines) {
    try {
        parse_theme("vowelway: 1\ntheme: mine\n" + lines, "t.yaml");
    } catch (InputError const& error) {
        return error.what();
    }
    return "";
}
bool says(std::string const& text, std::string const& part) { return text.find(part) != std::string::npos; }
} // namespace

TEST_CASE("the themes that come with the program can be read, name themselves and can be read on paper") {
    REQUIRE(theme_names().size() >= 3);
    for (auto const& name : theme_names()) {
        CAPTURE(name);
        auto const t = find_theme(name);
        CHECK(t.name == name);
        CHECK_FALSE(t.description.empty());
        CHECK(unreadable(t).empty());
        CHECK(unreadable(t.grey()).empty());
    }
    CHECK(find_theme("large").size > 1);
}

TEST_CASE("the file of the usual theme says what the program does without one") {
    auto const file = find_theme("paper");
    Theme const usual;
    CHECK(file.name == usual.name);
    for (std::size_t i = 0; i < ink_count; ++i)
        CHECK_MESSAGE(file.colors[i] == usual.colors[i], std::string(to_string(static_cast<Ink>(i))));
    CHECK(file.text.name == usual.text.name);
    CHECK(file.music.name == usual.music.name);
    CHECK(file.size == usual.size);
}

TEST_CASE("a theme of one's own: what is left out is as usual") {
    auto const t = parse_theme(
        "vowelway: 1\ntheme: mine\ncolours: {modify: \"#aa0000\"}\ntext: Gentium\nsize: 1.25\n", "t.yaml");
    CHECK(t[Ink::modify] == Color::hex(0xaa0000));
    CHECK(t[Ink::text] == Theme{}[Ink::text]);
    CHECK(t.text.name == "Gentium");
    CHECK(t.text.place.line == 4); // for the message when it is not installed
    CHECK(t.music.name == "Noto Music");
    CHECK(t.size == 1.25);
}

TEST_CASE("what is wrong with a theme is said with its place and how to mend it") {
    CHECK(says(message("colors: {}\n"), "t.yaml:3:1: unknown key \"colors\""));
    CHECK(says(message("colours: {pink: \"#ff0000\"}\n"), "t.yaml:3:11: unknown key \"pink\""));
    CHECK(says(message("colours: {soft: red}\n"), "t.yaml:3:17: \"red\" is not a colour"));
    CHECK(says(message("colours:\n  soft: #123456\n"), "put it in quotes"));
    CHECK(says(message("colours: {soft: \"#999999\"}\n"),
               "t.yaml:3:17: soft cannot be read on the paper: their contrast is 2.8"));
    CHECK(says(message("colours: {paper: \"#000000\"}\n"), "t.yaml:3:18: text cannot be read on the paper"));
    CHECK(says(message("colours: {paper: \"#000000\"}\n"), "make text lighter"));
    CHECK(says(message("colours: [1]\n"), "t.yaml:3"));
    CHECK(says(message("size: 0.5\n"), "t.yaml:3:7: the size is \"0.5\""));
    CHECK(says(message("size: 2\n"), "from 1 to 1.6"));
    CHECK(says(message("size: big\n"), "from 1 to 1.6"));
    CHECK(says(message("text: \"\"\n"), "t.yaml:3:7: the font has no name"));
    CHECK_THROWS_AS(parse_theme("theme: mine\n", "t.yaml"), InputError);
    CHECK_THROWS_AS(parse_theme("vowelway: 1\n", "t.yaml"), InputError);
    CHECK_THROWS_AS(find_theme("no such theme"), InputError);
}
