// SPDX-License-Identifier: MIT
// Whole words in IPA and the lines of poems. Pronunciations: the public Wiktionary lexica in WikiPron's form
// (Lee et al. 2020) where a line says so; else handbooks of lyric diction, from memory: J. Adams for Italian,
// T. Grubb for French, T. Siebs for German.
#include "vowelway/diction/sung_text.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace vowelway;
using namespace vowelway::diction;

namespace {

std::string ipa(std::string_view text, Language language) {
    std::string out;
    for (auto const& line : sung_text(text, language).lines)
        for (auto const& word : line.words)
            out += (out.empty() ? "" : " ") + word.ipa + (word.joined ? "‿" : "");
    return out;
}

/// A note for each syllable; "|" is a rest of a second, "--" binds to the next syllable.
Passage passage_of(std::string_view text, std::string language) {
    Passage out;
    out.language = std::move(language);
    double now = 0;
    bool inside = false;
    while (!text.empty()) {
        auto const end = std::min(text.find(' '), text.size());
        auto piece = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (piece == "|") {
            now += 1;
            continue;
        }
        bool const open = piece.ends_with("--");
        if (open) piece.remove_suffix(2);
        using Part = Syllable::Part;
        SungNote note{.pitch = Pitch{hertz(440)},
                      .spelled = {},
                      .measure = "1",
                      .start = seconds(now),
                      .length = seconds(0.5)};
        note.syllables = {{std::string(piece),
                           inside ? (open ? Part::middle : Part::end) : (open ? Part::begin : Part::single)}};
        inside = open;
        now += 0.5;
        out.notes.push_back(std::move(note));
    }
    return out;
}

std::string lines(SungText const& text) {
    std::string out;
    for (auto const& line : text.lines) {
        if (!out.empty()) out += line.begins_stanza ? " // " : " / ";
        for (auto const& word : line.words) out += (&word == &line.words.front() ? "" : " ") + word.written;
        if (line.times > 1) out += " x" + std::to_string(line.times);
    }
    return out;
}

} // namespace

TEST_CASE("words in IPA with their consonants") {
    CHECK(ipa("dolce sospiro, cielo, giglio, ogni, bella, quando", Language::italian) ==
          "ˈdoltʃe soˈspiro ˈtʃɛlo ˈdʒiʎʎo ˈoɲɲi ˈbɛlla ˈkwando");
    CHECK(ipa("Agnus Dei, caeli, gratia, excelsis, pacem", Language::latin) ==
          "aɲus dɛi tʃɛli ɡratsia ɛkʃɛlsis patʃɛm");
    CHECK(ipa("niña cielo guitarra", Language::spanish) == "ˈniɲa ˈθjelo ɡiˈtara");
    CHECK(ipa("Ich liebe Frühling Mädchen Nacht Dunkel", Language::german) ==
          "ɪç ˈliːbə ˈfryːlɪŋ ˈmɛːtçən naxt ˈdʊŋkəl");
    CHECK(ipa("soleil montagne jeune", Language::french) == "sɔlɛj mɔ̃taɲə ʒœnə");
    CHECK(ipa("night singing thou", Language::english) == "naɪt ˈsɪŋɪŋ ðaʊ");
}

// Sounds: the IPA's illustrations of Finnish (Suomi et al. 2008), Hungarian (Szende), Czech (Dankovičová) and
// Polish (Jassem), Jones & Ward (1969) for Russian, Basbøll (2005), Elert (1995); from memory.
TEST_CASE("words in IPA in the languages by spelling and of the north") {
    CHECK(ipa("kukkulaa vettä", Language::finnish) == "ˈkukkulɑː ˈvettæ");
    CHECK(ipa("áldd bőséggel", Language::hungarian) == "aːld ˈbøːʃeːɡɡɛl");
    CHECK(ipa("v sadě srdce", Language::czech) == "v ˈsaɟɛ ˈsərtsɛ");
    CHECK(ipa("ręka gęś dąb wąż", Language::polish) == "ˈrɛŋka ɡɛ̃ɕ dɔmp vɔ̃ʃ");
    CHECK(ipa("помню гений сердце любовь", Language::russian) == "ˈpomnʲu ˈɡʲɛnʲij ˈsʲɛrtsɨ lʲuˈbof");
    CHECK(ipa("brede lille landet jeg", Language::danish) == "ˈbreːðə ˈlilə ˈlanəð jai");
    CHECK(ipa("sköna stjärna", Language::swedish) == "ˈɧøːna ˈɧæːrna");
    CHECK(ipa("wlad gwlad iaith", Language::welsh) == "wlaːd ɡwlaːd jaiθ");
    CHECK(ipa("onde tem terra", Language::portuguese) == "ˈõdʒi tẽi ˈtɛxa");
}

// Mistakes found by reading sheets over: Duden, Aussprachewörterbuch (2015); Fouché (1956); Wells, Longman
// Pronunciation Dictionary (2008), on -ed; DOP (desìo); from memory.
TEST_CASE("words that were wrong") {
    CHECK(ipa("seinem Himmelbett Magdalena warum Maria Wiesengrund", Language::german) ==
          "ˈzaɪnəm ˈhɪməlbɛt maɡdaˈleːna vaˈrʊm maˈriːa ˈviːzənɡrʊnt");
    CHECK(ipa("m'assieds rien", Language::french) == "masje rjɛ̃");
    CHECK(ipa("express'd kiss'd lov'd heav'n flow'r", Language::english) == "ɪksˈpɹɛst kɪst lʌvd hɛvn flaʊə");
    CHECK(ipa("desio", Language::italian) == "deˈzio");
    CHECK(ipa("dance father water fair", Language::american_english) == "dæns ˈfɑːðə ˈwɔːtə fɛ");
}

TEST_CASE("a word is read once where what was read is handed on") {
    WordsRead read;
    DictionOptions options;
    options.read = &read;
    CHECK(transcribe("Wiesengrund", Language::german, options).front().syllables.size() == 3);
    WordList other;
    other.add("Wiesengrund", "a.e");
    options.words = other; // of no effect on what is kept: one set of options each
    CHECK(transcribe("Wiesengrund", Language::german, options).front().syllables.size() == 3);
    options.read = nullptr;
    CHECK(transcribe("Wiesengrund", Language::german, options).front().syllables.size() == 2);
}

TEST_CASE("French liaison, elision, and what keeps words apart") {
    CHECK(ipa("les amours", Language::french) == "lez‿ amur");
    CHECK(ipa("les héros", Language::french) == "le ero");
    CHECK(ipa("un homme", Language::french) == "œ̃n‿ ɔmə");
    CHECK(ipa("belle âme", Language::french) == "bɛl‿ ɑmə");
    CHECK(ipa("belle, âme", Language::french) == "bɛlə ɑmə"); // a stop
    CHECK(ipa("et on", Language::french) == "e ɔ̃");
}

TEST_CASE("o in French, as lyric diction has it") {
    CHECK(ipa("joli soleil moment notre votre", Language::french) == "ʒɔli sɔlɛj mɔmɑ̃ nɔtrə vɔtrə");
    CHECK(ipa("rose chose repose mot trop émotion", Language::french) == "rozə ʃozə rəpozə mo tro emosjɔ̃");
    CHECK(ipa("aurore; aube; vœu; deux", Language::french) == "ɔrɔrə obə vø dø");
}

TEST_CASE("German in old spelling") {
    CHECK(ipa("todt bey muß Athem in's", Language::german) == "toːt baɪ mʊs ˈaːtəm ɪns");
    CHECK(ipa("Röslein hinweg weg zart Bart Magd Art", Language::german) ==
          "ˈrøːslaɪn hɪnˈvɛk vɛk tsaːrt baːrt maːkt aːrt");
    CHECK(ipa("groß fließt", Language::german) == "ɡroːs fliːst"); // ß stays after a long vowel
}

TEST_CASE("English words of the set BATH, and the verb live") {
    CHECK(ipa("dancing enchanted passing lasting ask aunt live", Language::english) ==
          "ˈdɑːnsɪŋ ɪnˈtʃɑːntɪd ˈpɑːsɪŋ ˈlɑːstɪŋ ɑːsk ɑːnt lɪv");
    CHECK(ipa("passion and romance", Language::english).find("ɑː") == std::string::npos); // not all of them
}

TEST_CASE("the lines of a poem are found from capitals, stops, rests and rhyme") {
    auto const text =
        passage_of("Oh viens la fleur fa-- née | Meurt sous le re-- gard du so-- leil, | Et de tris-- te la "
                   "ter-- re | En-- tre dans son som-- meil. | En-- tre dans son som-- meil.",
                   "fr");
    auto const sheet = sung_text(text);
    CHECK(lines(sheet) ==
          "Oh viens la fleur fanée / Meurt sous le regard du soleil, / Et de triste la terre / Entre "
          "dans son sommeil. x2");
    CHECK(sheet.lines_guessed);
    // German nouns begin with capitals within a line.
    CHECK(lines(sung_text(passage_of(
              "Ich träumt in sei-- nem Schat-- ten | So man-- chen sü-- ßen Traum; | Ich schnitt in "
              "sei-- ne Rin-- de | So man-- ches lie-- be Wort.",
              "de"))) == "Ich träumt in seinem Schatten / So manchen süßen Traum; / Ich schnitt in "
                         "seine Rinde / So manches liebe Wort.");
}

TEST_CASE("lines that are given stay, and the key has only the signs of the text") {
    auto const sheet = sung_text("La luna\nbianca\n\nmuore", Language::italian);
    CHECK(lines(sheet) == "La luna / bianca // muore");
    CHECK(!sheet.lines_guessed);
    std::string signs;
    for (auto const& sign : sheet.key) signs += sign.sign + " ";
    CHECK(signs.find("ŋ ") != std::string::npos); // bianca
    CHECK(signs.find("ʃ") == std::string::npos);
    CHECK(signs.find("ʒ") == std::string::npos);
}

TEST_CASE("a close vowel leads into the next in one syllable of a word list") {
    DictionOptions options;
    options.words.add("panier", "pa.nie");
    auto const word = transcribe("panier", Language::french, options).front();
    REQUIRE(word.syllables.size() == 2);
    CHECK(word.syllables[1].vowel.held.ipa() == "e");
    auto notes = passage_of("pa-- nier", "fr");
    set_vowels(notes);
    CHECK(notes.notes[1].vowel->held.ipa() == "e"); // the note holds the vowel, not the glide
}
