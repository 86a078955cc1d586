// SPDX-License-Identifier: MIT
#include "vowelway/diction/sing_words.hpp"

#include <doctest/doctest.h>

#include <initializer_list>
#include <string>

using namespace vowelway;
using namespace vowelway::diction;

namespace {

using Part = Syllable::Part;

// "glo- ri- a": a note for each piece; a hyphen binds it to the next, "_" joins two syllables on one note,
// "~" is a melisma note, "/a/" is typed IPA under the syllable before it.
Passage passage(std::string_view text, std::string language) {
    Passage out;
    out.language = std::move(language);
    bool inside = false;
    while (!text.empty()) {
        auto const end = text.find(' ');
        auto piece = text.substr(0, end);
        if (piece.starts_with('/')) {
            out.notes.back().typed_ipa = std::string(piece);
        } else {
            SungNote note{Pitch{hertz(440)}, {}, "1", 1, {}, {}, false, false, {}, {}, {}, {}, false};
            if (piece == "~") {
                note.melisma = true;
            } else {
                while (!piece.empty()) {
                    auto const joint = piece.find('_');
                    auto one = piece.substr(0, joint);
                    bool const open = one.ends_with('-');
                    if (open) one.remove_suffix(1);
                    note.syllables.push_back({std::string(one), inside
                                                                    ? (open ? Part::middle : Part::end)
                                                                    : (open ? Part::begin : Part::single)});
                    inside = open;
                    if (joint == std::string_view::npos) break;
                    piece.remove_prefix(joint + 1);
                }
            }
            out.notes.push_back(std::move(note));
        }
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return out;
}

std::string show(std::vector<Vowel> const& vowels) {
    std::string out;
    for (auto const& v : vowels) out += v.quality().ipa();
    return out;
}

// "i>a" : i passes into a; "a<i": out of it.
std::string sung(Passage const& p) {
    std::string out;
    for (auto const& note : p.notes) {
        if (!out.empty()) out += ' ';
        if (!note.vowel) {
            out += note.hummed ? "hum" : "-";
            continue;
        }
        if (!note.vowel->before.empty()) out += show(note.vowel->before) + ">";
        out += note.vowel->held.quality().ipa();
        if (!note.vowel->after.empty()) out += "<" + show(note.vowel->after);
    }
    return out;
}

std::string sung(std::string_view text, std::string language) {
    auto p = passage(text, std::move(language));
    set_vowels(p);
    return sung(p);
}

} // namespace

TEST_CASE("syllables of a word are joined and get one vowel each") {
    CHECK(sung("dol- ce so- spi- ro", "it") == "o e o i o");
    CHECK(sung("Lie- be", "de") == "i ə");
    CHECK(sung("ros- es", "en") == "o<ʊ ɪ");
    CHECK(sung("here- af- ter", "en") == "ɪ<ə ɑ ə");
}

TEST_CASE("a glide that gets a note of its own becomes a vowel") {
    CHECK(sung("glo- ria", "it") == "ɔ i>a");
    CHECK(sung("glo- ri- a", "it") == "ɔ i a");
    CHECK(sung("Na- ti- on", "de") == "a i o");
}

TEST_CASE("vowels that share a note meet: the stressed or more sonorous is held, the others pass") {
    CHECK(sung("mi- o", "it") == "i o");
    CHECK(sung("mio", "it") == "i<o");
    CHECK(sung("mia", "it") == "i<a");
    CHECK(sung("do- ve_an- dar", "it") == "o e>a a");
    CHECK(sung("da_un fre- mi- to", "it") == "a<u ɛ i o");
    CHECK(sung("più_a- mor", "it") == "i>u<a o");
    CHECK(sung("bel- le_â- me", "fr") == "ɛ ɑ œ");
}

TEST_CASE("a word without a vowel leans on the word it shares a note with") {
    CHECK(sung("w_ko- ło", "pl") == "ɔ ɔ");
}

TEST_CASE("French e muet is a syllable where the score sets one") {
    CHECK(sung("rê- ve", "fr") == "ɛ œ");
    CHECK(sung("rêve", "fr") == "ɛ");
    CHECK(sung("fa- ci- le- ment", "fr") == "a i œ ɑ̃");
    CHECK(sung("vi- e", "fr") == "i œ");
}

TEST_CASE("an English -ed with a note of its own is sung") {
    CHECK(sung("bless- ed", "en") == "ɛ ɪ");
    CHECK(sung("heav'n", "en") == "ɛ<ə");
    CHECK(sung("Heav'n's", "en") == "ɛ<ə");
    CHECK(sung("don't", "en") == "o<ʊ");
}

TEST_CASE("a melisma carries the vowel, the glide out of it comes on its last note") {
    CHECK(sung("ai ~ ~", "it") == "a a a<i");
    CHECK(sung("pia- ~ no", "it") == "i>a a o");
}

TEST_CASE("typed IPA and the teacher's list win over the rules, humming has no vowel") {
    CHECK(sung("so- /ɑ/ spi- ro", "it") == "ɑ i o");
    CHECK(sung("so- /mjɛ/ spi- ro", "it") == "i>ɛ i o");
    CHECK(sung("mm ~ a", "it") == "hum hum a");
    auto p = passage("so- spi- ro", "it");
    DictionOptions options;
    options.words.add("sospiro", "sɔ.spi.ra");
    set_vowels(p, options);
    CHECK(sung(p) == "ɔ i a");
    CHECK(p.notes.front().vowel->origin == VowelOrigin::override_);
}

TEST_CASE("what does not fit is guessed, marked and said once, nothing throws") {
    auto p = passage("dol- l ce", "it");
    set_vowels(p);
    CHECK(p.notes[1].vowel->origin == VowelOrigin::guessed);
    auto q = passage("a- b- c- d- e xyz- ~ 12 -- - '", "it");
    CHECK_NOTHROW(set_vowels(q));
    auto twice = passage("pst pst pst", "it");
    set_vowels(twice);
    std::size_t guessed = 0;
    for (auto const& remark : twice.remarks) guessed += remark.kind == Remark::Kind::guessed;
    CHECK(guessed == 1);
}

TEST_CASE("the language is chosen and said with its evidence, and alignment counts what is certain") {
    auto p = passage("che fa- rò sen- za la mia vi- ta", "");
    set_vowels(p);
    CHECK(p.language == "it");
    REQUIRE_FALSE(p.remarks.empty());
    CHECK(p.remarks.front().text.find("Italian") != std::string::npos);
    CHECK(alignment(p).syllables == 9);
    CHECK(alignment(p).certain == 9);
}

TEST_CASE("a language without rules is left to the synthesiser and said to be a guess") {
    auto p = passage("de nacht", "nl");
    set_vowels(p);
    CHECK(p.notes[0].vowel.has_value());
    CHECK(p.remarks.back().kind == Remark::Kind::guessed);
}

// As typed under notes, common practice, no source: a glide with a note of its own becomes its vowel.
TEST_CASE("syllables of the newer languages find their vowels") {
    CHECK(sung("his- tó- ri- a", "pt") == "i ɔ i a");
    CHECK(sung("cw- mwl gwlad dy- nion", "cy") == "ʊ ʊ a ə i>ɔ");
    CHECK(sung("E- lo- hei- nu", "he") == "ɛ ɔ ɛ<i u");
    CHECK(sung("Al- li- lu- i- ya", "cu") == "a i u i i>a");
    CHECK(sung("stjär- na", "sv") == "æ a");
}
