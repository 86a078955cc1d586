// SPDX-License-Identifier: MIT
#include "vowelway/core/passage.hpp"
#include "vowelway/diction/language.hpp"

#include <doctest/doctest.h>

using namespace vowelway;
using namespace vowelway::diction;

TEST_CASE("languages have tags and names") {
    CHECK(parse_language("it") == Language::italian);
    CHECK(parse_language("de-AT") == Language::german);
    CHECK(parse_language("French") == Language::french);
    CHECK(parse_language("PL") == Language::polish);
    CHECK_FALSE(parse_language("xx").has_value());
    CHECK_FALSE(parse_language("").has_value());
    CHECK(tag(Language::spanish) == "es");
    CHECK(has_diction_rules(Language::spanish));
    CHECK_FALSE(has_diction_rules(Language::dutch));
    CHECK(parse_language("en-US") == Language::american_english);
    CHECK(parse_language("en_us") == Language::american_english);
    CHECK(parse_language("en-GB") == Language::english);
    CHECK(parse_language("la-DE") == Language::german_latin);
    CHECK(parse_language("Church Slavonic") == Language::church_slavonic);
    CHECK(main_language(Language::american_english) == Language::english);
}

// First lines of hymns, folk songs and poems in the public domain.
TEST_CASE("a text is recognised by its function words and letters") {
    struct Line {
        Language language;
        char const* text;
    };
    for (auto const& [language, text] : {
             Line{Language::italian, "Caro mio ben, credimi almen, senza di te languisce il cor"},
             Line{Language::latin, "Pange lingua gloriosi corporis mysterium sanguinisque pretiosi"},
             Line{Language::german, "Ich weiß nicht, was soll es bedeuten, dass ich so traurig bin"},
             Line{Language::french,
                  "Au clair de la lune, mon ami Pierrot, prête-moi ta plume pour écrire un mot"},
             Line{Language::english, "O my luve is like a red, red rose that's newly sprung in June"},
             Line{Language::spanish, "En la noche dichosa, en secreto, que nadie me veía"},
             Line{Language::swedish, "Du gamla, du fria, du fjällhöga nord, du tysta, du glädjerika sköna"},
             Line{Language::portuguese, "Minha terra tem palmeiras, onde canta o sabiá; as aves que aqui "
                                        "gorjeiam não gorjeiam como lá"},
             Line{Language::polish,
                  "Litwo! Ojczyzno moja! ty jesteś jak zdrowie; ile cię trzeba cenić, ten tylko się dowie"},
             Line{Language::danish, "Der er et yndigt land, det står med brede bøge nær salten østerstrand"},
             Line{Language::norwegian,
                  "Ja, vi elsker dette landet, som det stiger frem, furet, værbitt over vannet, "
                  "med de tusen hjem. Elsker, elsker det og tenker på vår far og mor"},
             Line{Language::welsh, "Mae hen wlad fy nhadau yn annwyl i mi, gwlad beirdd a chantorion"},
             Line{Language::finnish,
                  "Oi maamme, Suomi, synnyinmaa, soi sana kultainen! Ei laaksoa, ei kukkulaa"},
             Line{Language::hungarian,
                  "Isten, áldd meg a magyart jó kedvvel, bőséggel, nyújts feléje védő kart"},
             Line{Language::czech, "Kde domov můj, voda hučí po lučinách, bory šumí po skalinách"},
             Line{Language::russian, "Я помню чудное мгновенье: передо мной явилась ты"},
             Line{Language::hebrew, "Shema Yisrael Adonai Eloheinu Adonai echad"},
             Line{Language::church_slavonic, "Gospodi, pomilui. Slava Ottsu i Synu i Sviatomu Dukhu"},
         }) {
        CAPTURE(text);
        auto const guess = guess_language(text);
        CHECK(guess.language == language);
        CHECK(guess.evidence.find("words speak for it") != std::string::npos);
    }
}

TEST_CASE("what cannot be trusted is said") {
    CHECK_FALSE(caution(Language::italian));
    CHECK(caution(Language::dutch).value().find("no diction rules") != std::string::npos);
    CHECK(caution(Language::hebrew).value().find("never compared") != std::string::npos);
    for (int i = 0; i <= static_cast<int>(last_language); ++i) {
        auto const language = static_cast<Language>(i);
        CAPTURE(to_string(language));
        CHECK(parse_language(tag(language)) == language);
        if (!has_diction_rules(language)) CHECK(trust(language).right == 0);
    }
}

TEST_CASE("without evidence the guess is Italian and says so") {
    auto const guess = guess_language("");
    CHECK(guess.language == Language::italian);
    CHECK_FALSE(guess.sure);
    CHECK_FALSE(guess.evidence.empty());
    Passage named;
    named.language = "fr";
    CHECK(guess_language(named).language == Language::french);
    CHECK(guess_language(named).sure);
}
