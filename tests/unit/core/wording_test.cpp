// SPDX-License-Identifier: MIT
#include "vowelway/core/wording.hpp"

#include "vowelway/core/passage.hpp"

#include <doctest/doctest.h>

using namespace vowelway;

namespace {

/// English again at the end of a test, whatever happens.
struct English {
    ~English() { set_wording({}); }
};

} // namespace

TEST_CASE("English is said where no wording was set") {
    CHECK(wording_language() == "en");
    CHECK(worded("bar {0}, beat {1}", std::string("12"), 3) == "bar 12, beat 3");
    CHECK(reworded("hold") == "hold");
}

TEST_CASE("a wording puts the same pieces where its language wants them, what it lacks stays English") {
    English const after;
    set_wording({"de", {{"{0} of {1}", "bei {1}: {0}"}, {"hold", "halten"}}});
    CHECK(wording_language() == "de");
    CHECK(worded("{0} of {1}", "eins", 2) == "bei 2: eins");
    CHECK(reworded(to_word("hold")) == "halten");
    CHECK(worded("{0} more", 3) == "3 more");
    set_wording({});
    CHECK(reworded("hold") == "hold");
}

TEST_CASE("a piece with braces of its own is no place") {
    CHECK(worded("part \"{0}\"", "a{1}b{0}") == "part \"a{1}b{0}\"");
}

TEST_CASE("places are compared as a set") {
    CHECK(same_places("{0} to {1}", "von {1} bis {0}, ja {1}"));
    CHECK_FALSE(same_places("{0} to {1}", "bis {1}"));
    CHECK_FALSE(same_places("to", "bis {0}"));
}

TEST_CASE("what core itself says follows the wording") {
    English const after;
    Passage passage;
    passage.transposed = -12;
    CHECK(transposition_of(passage) == "sung an octave lower than written");
    set_wording({"de",
                 {{"sung {0} than written", "gesungen {0} als notiert"},
                  {"an octave", "eine Oktave"},
                  {"{0} lower", "{0} tiefer"}}});
    CHECK(transposition_of(passage) == "gesungen eine Oktave tiefer als notiert");
}
