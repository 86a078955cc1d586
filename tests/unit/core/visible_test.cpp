// SPDX-License-Identifier: MIT
#include "core/visible.hpp"

#include "core/xml.hpp"

#include <doctest/doctest.h>

#include <string>

using vowelway::visible;

TEST_CASE("what acts on a terminal or turns words round is written out, all else stays") {
    // Controls of ISO/IEC 6429 (C0, DEL, C1) and of direction (Unicode Standard Annex 9).
    CHECK(visible("a\x1b[2Jb") == "a\\u{1b}[2Jb");
    CHECK(visible("\a\b\x7f") == "\\u{7}\\u{8}\\u{7f}");
    CHECK(visible("\u009b31m") == "\\u{9b}31m"); // a control sequence in one character
    CHECK(visible("\u202eevil\u202c") == "\\u{202e}evil\\u{202c}");
    CHECK(visible("\u2066a\u2069") == "\\u{2066}a\\u{2069}");
    CHECK(visible("one\u2028two\u2029") == "one\\u{2028}two\\u{2029}");
    CHECK(visible("cut\rover") == "cut\\u{d}over");
    CHECK(visible(std::string("\0", 1)) == "\\u{0}");
    CHECK(visible("am\xff"
                  "e\xc3") == "am\\xffe\\xc3");
    for (std::string const plain : {"", "amore", "a\tb\nc\r\n", "ɛ̃ ɔ ʏ ♯ 𝅘𝅥𝅯 שלום", "\u200e\u200d"})
        CHECK(visible(plain) == plain);
}

TEST_CASE("text for XML is UTF-8 without what XML 1.0 forbids") {
    CHECK(vowelway::escaped_for_xml("<a & \"b\">\x01\xfe\n") == "&lt;a &amp; &quot;b&quot;&gt;\\u{1}\\xfe\n");
}
