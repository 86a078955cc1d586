// SPDX-License-Identifier: MIT
// Words that songs are full of, with their stress and quality where the synthesiser's dictionary errs or is
// silent. Private to the layer. Source: B. Migliorini, C. Tagliavini, P. Fiorelli, DOP, from memory.
#pragma once

#include <string_view>

namespace vowelway::diction {

// Grave: open, acute: closed.
inline constexpr std::string_view italian_words[] = {
    "éd",       "òd",       "élla",      "égli",     "ritièn",    "sostièn",  "convièn",   "mantièn",
    "divièn",   "sovvièn",  "abbandóno", "accènti",  "accènto",   "adòra",    "adórno",    "adòro",
    "affètti",  "affètto",  "agnèllo",   "allór",    "allóra",    "altèra",   "altèro",    "altróve",
    "amór",     "amóre",    "amorósa",   "amoróso",  "ancèlla",   "ancór",    "ancóra",    "anèlo",
    "apèrto",   "appéna",   "ardór",     "ardóre",   "aréna",     "ascólta",  "ascólto",   "ascóso",
    "aspètta",  "aspètto",  "atróce",    "auròra",   "bandièra",  "bèi",      "bèl",       "bèlla",
    "bèlle",    "bèllo",    "bèn",       "bène",     "bióndo",    "bisógno",  "bócca",     "buòna",
    "buòno",    "candéla",  "catène",    "cavalièr", "cènto",     "céra",     "cèrta",     "cèrto",
    "ché",      "chiède",   "chièdo",    "chiòma",   "chiòme",    "cièco",    "cièl",      "cièlo",
    "cól",      "colèi",    "cólla",     "colómba",  "cóme",      "cón",      "confòrto",  "contènta",
    "contènto", "còr",      "còre",      "còro",     "córte",     "còsa",     "còse",      "cospètto",
    "costèi",   "créde",    "crédo",     "cróce",    "crudél",    "crudéle",  "cuòre",     "dèa",
    "déi",      "dél",      "délla",     "délle",    "déllo",     "dèo",      "desèrto",   "desìi",
    "desìo",    "devòto",   "difètto",   "dilètta",  "dilètto",   "dimòra",   "dòglia",    "dólce",
    "dólci",    "dolór",    "dolóre",    "dònna",    "dònne",     "dóno",     "donzèlla",  "dóve",
    "é",        "èco",      "effètto",   "èrba",     "erède",     "éssa",     "ésso",      "estrèma",
    "estrèmo",  "etèrna",   "etèrno",    "favèlla",  "féde",      "fedél",    "fedéle",    "feróce",
    "fèrro",    "fièle",    "fièra",     "fièro",    "fiór",      "fióre",    "fióri",     "fòco",
    "fòglia",   "fòglie",   "fóndo",     "fónte",    "fòro",      "fórse",    "fòrte",     "fòrza",
    "fósse",    "fósti",    "fratèllo",  "frónte",   "fuòco",     "fuòr",     "fuòri",     "gèlo",
    "gème",     "gènte",    "ginòcchio", "giòco",    "giòia",     "giórni",   "giórno",    "giòva",
    "giòve",    "gòde",     "gòdo",      "grèco",    "guèrra",    "ignòto",   "immòto",    "impèro",
    "implòra",  "infèrno",  "insième",   "intórno",  "invèrno",   "lamènto",  "lavóro",    "légge",
    "lèi",      "lènta",    "lènto",     "lètto",    "lòco",      "lòde",     "lòtta",     "lusinghièra",
    "madònna",  "mé",       "méco",      "mèglio",   "méntre",    "mercé",    "mercéde",   "mièle",
    "mistèro",  "móglie",   "mólta",     "mólto",    "momènto",   "móndo",    "mónte",     "mòre",
    "mòri",     "mòro",     "mòrta",     "mòrte",    "mòrto",     "mòto",     "muòve",     "nascóso",
    "né",       "néi",      "nél",       "nélla",    "nélle",     "néllo",    "néro",      "nói",
    "nòia",     "nóme",     "nón",       "nòta",     "nòto",      "nòtte",    "nòve",      "novèlla",
    "nuòva",    "nuòvo",    "ó",         "òcchi",    "òcchio",    "òde",      "oggètto",   "ómbra",
    "ómbre",    "ónda",     "ónde",      "onór",     "onóre",     "ór",       "óra",       "óre",
    "orgòglio", "òro",      "orrór",     "orróre",   "òrto",      "óve",      "paròla",    "pastór",
    "pastóre",  "péna",     "péne",      "pènsa",    "pensièr",   "pensièri", "pensièro",  "pènso",
    "pér",      "perdóno",  "perfètto",  "pèrla",    "pèrso",     "pètti",    "pètto",     "piède",
    "piègo",    "pietósa",  "pietóso",   "piòve",    "pòca",      "pòco",     "pòi",       "pómpa",
    "pónte",    "pòrta",    "pòrte",     "pòrto",    "pòsa",      "prèga",    "preghièra", "prègo",
    "prèsso",   "prèsto",   "primavèra", "procèlla", "pròde",     "profóndo", "pròva",     "quéi",
    "quél",     "quélla",   "quéllo",    "quésta",   "quéste",    "quésti",   "quésto",    "rèa",
    "règge",    "remòto",   "rèo",       "riède",    "ripòsa",    "ripòso",   "rispètto",  "ristòro",
    "ritórno",  "rómpe",    "ròsa",      "ròse",     "rubèlla",   "schièra",  "sciòlto",   "scòglio",
    "sé",       "séco",     "sède",      "sèi",      "sèmpre",    "séno",     "sènte",     "sènti",
    "sènto",    "sènza",    "séra",      "seréna",   "seréno",    "sèrra",    "sèrvo",     "sevèro",
    "siède",    "signór",   "signóra",   "signóre",  "sincèro",   "sòglia",   "sógni",     "sógno",
    "sól",      "sóla",     "sóle",      "sólo",     "sónno",     "sóno",     "sonòra",    "sonòro",
    "sorèlla",  "sòrte",    "spavènto",  "spème",    "splendóre", "spòglia",  "spòsa",     "spòso",
    "stélla",   "stélle",   "stólto",    "suòi",     "suòno",     "supèrba",  "supèrbo",   "suprèma",
    "suprèmo",  "té",       "téco",      "téla",     "tèma",      "tèmpi",    "tèmpo",     "tenóre",
    "tèrra",    "tesòr",    "tesòro",    "tètto",    "tièn",      "tièni",    "tócca",     "tómba",
    "tormènti", "tormènto", "tòrto",     "trómba",   "tròno",     "tròva",    "tròvo",     "tuòi",
    "tuòno",    "tuttóra",  "uòmo",      "véde",     "védo",      "véggio",   "véggo",     "veléno",
    "vélo",     "velóce",   "vénne",     "vènti",    "vènto",     "véra",     "vérde",     "vergógna",
    "véro",     "vèrso",    "vezzósa",   "vezzóso",  "vièn",      "vièni",    "viòla",     "vóce",
    "vóci",     "vòglia",   "vòglio",    "vói",      "volentièr", "vòlge",    "vòlgi",     "vòlta",
    "vólto",    "vóto",     "vuòto",     "zèlo",
};

} // namespace vowelway::diction
