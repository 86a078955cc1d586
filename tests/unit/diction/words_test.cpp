// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::diction;

namespace {

// "a.mo.re" style: nuclei of every word in dictionary notation, words separated by " | ".
std::string nuclei(std::string_view text, Language language) {
    std::string out;
    for (auto const& word : transcribe(text, language)) {
        if (!out.empty()) out += " | ";
        for (auto const& s : word.syllables) {
            if (&s != &word.syllables.front()) out += ' ';
            out += s.optional ? "(" + s.ipa + ")" : s.ipa;
        }
    }
    return out;
}

std::string syllables(std::string_view text, Language language) {
    std::string out;
    for (auto const& word : transcribe(text, language)) {
        if (!out.empty()) out += ' ';
        for (auto const& s : word.syllables) out += (&s == &word.syllables.front() ? "" : "-") + s.text;
    }
    return out;
}

std::string held(std::string_view text, Language language, DictionOptions const& options = {}) {
    std::string out;
    for (auto const& word : transcribe(text, language, options))
        for (auto const& s : word.syllables) out += (out.empty() ? "" : " ") + s.vowel.held.quality().ipa();
    return out;
}

} // namespace

// DOP: dólce, sospìro, cuòre, pietà, più; è open, é closed when written.
TEST_CASE("Italian: stress and the quality of e and o, glides, letters that only spell") {
    CHECK(nuclei("dolce sospiro", Language::italian) == "o e | o i o");
    CHECK(nuclei("cuore", Language::italian) == "ɔ e");
    CHECK(nuclei("pietà più ciel perché è", Language::italian) == "e a | u | ɛ | e e | ɛ");
    CHECK(nuclei("mio figlia aura mai", Language::italian) == "i o | i a | au̯ a | ai̯");
    CHECK(nuclei("lògica geologi", Language::italian) == "ɔ i a | e ɔ o i");
    CHECK(syllables("dolce sospiro figlia questo l'alma", Language::italian) ==
          "dol-ce so-spi-ro fi-glia que-sto l'al-ma");
}

// DOP: perché, né, nél, élla are closed; older prints write è for all of them. dilètto, petto (pètto) are
// open though -etto as a suffix is closed.
TEST_CASE("Italian: words that songs are full of, and older accents") {
    CHECK(nuclei("perchè nè caffè", Language::italian) == "e e | e | a ɛ");
    CHECK(nuclei("nel ella petto diletto boschetto", Language::italian) == "e | e a | ɛ o | i ɛ o | o e o");
    CHECK(nuclei("amor cor ritien stuol", Language::italian) == "a o | ɔ | i ɛ | ɔ");
}

// Liber Usualis: ae and oe are one vowel; au is one syllable with a held; ti-a, De-us, glo-ri-a stay apart.
TEST_CASE("Latin in the Italian manner") {
    CHECK(nuclei("cælum caelum coelum", Language::latin) == "e u | e u | e u");
    CHECK(nuclei("lauda Deus gloria", Language::latin) == "au̯ a | e u | o i a");
    CHECK(nuclei("quoniam alleluia eius", Language::latin) == "o i a | a e u a | e u");
    CHECK(nuclei("grātia cui", Language::latin) == "a i a | ui̯");
    CHECK(held("domine", Language::latin) == "ɔ i ɛ");
}

// RAE, Ortografía 2010: diphthongs, triphthongs, hiatus by the written accent.
TEST_CASE("Spanish: glides and hiatus") {
    CHECK(nuclei("cielo país reina buey", Language::spanish) == "e o | a i | ei̯ a | ei̯");
    CHECK(nuclei("quiero guerra agüita averiguáis", Language::spanish) == "e o | e a | a i a | a e i ai̯");
    CHECK(nuclei("corazón", Language::spanish) == "o a o");
}

// Siebs: -en and -e with ə, -er with ɐ, diphthongs ae ao ɔø as three notations of ai au eu.
TEST_CASE("German: endings, prefixes, compounds") {
    CHECK(held("Liebe", Language::german) == "i ə");
    CHECK(held("Vater", Language::german) == "a ɐ");
    CHECK(held("Gesang", Language::german) == "ə a");
    CHECK(held("Verlust", Language::german) == "ɛ ʊ");
    CHECK(held("Sehnsucht", Language::german) == "e ʊ");
    CHECK(held("Blütenstaub", Language::german) == "y ə a");
    CHECK(held("der Weg", Language::german) == "e e");
    CHECK(held("süssen Füße", Language::german) == "y ə y ə");
    CHECK(held("Tagesablauf", Language::german) == "a ə a a");
}

// Grubb: nasal vowels, mute e as a syllable the score may set, glides.
TEST_CASE("French: nasal vowels, glides, last and inner e") {
    CHECK(nuclei("rêve", Language::french) == "ɛ (ə)");
    CHECK(nuclei("enfant bien", Language::french) == "ɑ̃ ɑ̃ | ɛ̃");
    CHECK(nuclei("nuit", Language::french) == "i");
    CHECK(nuclei("étoile", Language::french) == "e a (ə)");
    CHECK(nuclei("facilement", Language::french) == "a i ə ɑ̃");
    CHECK(nuclei("aiment", Language::french) == "ɛ (ə)");
    CHECK(held("rêve", Language::french) == "ɛ œ");
}

// Adams: no r after vowels on the stage; "night" is held on its first part.
TEST_CASE("English: neutral stage pronunciation, r colour as an option") {
    CHECK(nuclei("night", Language::english) == "aɪ̯");
    CHECK(held("go", Language::english) == "o");
    CHECK(held("heart", Language::english) == "ɑ");
    CHECK(held("one a once", Language::english) == "ʌ ə ʌ");
    CHECK(held("dance and land", Language::english) == "ɑ æ æ");
    DictionOptions coloured;
    coloured.r_colour = true;
    CHECK(held("heart", Language::english, coloured) == "ɑ˞");
    CHECK(held("very", Language::english, coloured) == held("very", Language::english));
}

TEST_CASE("one word for each piece of text that has letters, as it was written") {
    auto const words = transcribe("«Amor», l’alma — 12 …", Language::italian);
    REQUIRE(words.size() == 3);
    CHECK(words[0].word == "Amor");
    CHECK(words[1].word == "l’alma");
    CHECK(words[1].syllables.size() == 2);
    CHECK(words[2].word == "12");
    std::string joined;
    for (auto const& s : words[1].syllables) joined += s.text;
    CHECK(joined == words[1].word);
}

TEST_CASE("a text that cannot be read is refused with a remedy; one without vowels is said to be doubtful") {
    CHECK_THROWS_AS(transcribe("\xff\xfe", Language::italian), InputError);
    CHECK_THROWS_AS(transcribe(std::string(5 << 20, 'a'), Language::italian), InputError);
    CHECK_THROWS_AS(transcribe(std::string(1000, 'a'), Language::italian), InputError);
    auto const words = transcribe("pst", Language::italian);
    REQUIRE(words.size() == 1);
    CHECK(words[0].guessed);
}

TEST_CASE("the teacher's word list wins") {
    DictionOptions options;
    options.words.add("Sospiro", "sɔ.spi.rɔ");
    auto const words = transcribe("sospiro, SOSPIRO", Language::italian, options);
    REQUIRE(words.size() == 2);
    for (auto const& word : words) {
        REQUIRE(word.syllables.size() == 3);
        CHECK(word.syllables[0].ipa == "ɔ");
        CHECK(word.syllables[0].vowel.origin == VowelOrigin::override_);
    }
    CHECK_THROWS_AS(options.words.add("x", "pst"), InputError);
}
