// SPDX-License-Identifier: MIT
// Endings that tell stress and quality in Italian, where the synthesiser's dictionary does not know the word.
// Private to the layer. Sources: M. Dardano, P. Trifone, Grammatica italiana (1985), on the vowels of suffixes and
// learned compounds; common practice of Italian diction; both from memory. Each was checked on the tuning half of
// an open lexicon and kept where it mends more than it spoils.
#pragma once

#include <string_view>

namespace vowelway::diction {

// The accented letter is stressed; grave open, acute closed.
inline constexpr std::string_view stress_endings[] = {
    // learned compounds stressed on the joint
    "òlogo", "òloga", "òlogi", "òloghi", "òloghe", "ògrafo", "ògrafa", "ògrafi", "ògrafe", "òfilo", "òfila", "òfili", "òfobo", "òfoba",
    "òfobi", "òmetro", "òmetri", "òfago", "òfagi", "òfaga", "òcrate", "òpoli", "òfono", "òfoni", "ògeno", "ògena", "ògeni", "ògene",
    "òmane", "òstrofe", "òstrofo", "ìvoro", "ìvora", "ìvori", "ìvore", "ìfero", "ìfera", "ìferi", "ìgero", "ìgeri", "ìfugo",
    // and on their ending
    "logìa", "logìe", "grafìa", "grafìe", "fonìa", "archìa", "archìe", "sofìa", "terapìa", "terapìe", "patìa", "patìe", "nomìa",
    "scopìa", "fobìa", "fobìe", "metrìa", "metrìe", "megalìa", "tomìa", "trofìa", "algìa", "algìe", "erìa", "erìe",
    // infinitives in -ére, and verbs in -ere stressed on the stem
    "volére", "potére", "dovére", "sapére", "avére", "tenére", "vedére", "godére", "valére", "dolére", "parére", "piacére", "tacére",
    "giacére", "rimanére", "cadére", "sedére", "córrere", "córrono", "èggono", "èggere", "èndono", "èndere", "scéndere", "scéndono",
    "véndere", "véndono", "òlgere", "òlgono",
    // suffixes
    "ìssimo", "ìssima", "ìssimi", "ìssime", "àbile", "ìbile", "àbili", "ìbili", "évole", "évoli", "évolmente", "évolménte",
};

// Quality alone, where that letter is the stressed one.
inline constexpr std::string_view quality_endings[] = {
    "tèca",   "tèche",  "émmo",  "sètte", "mèzzo", "mèzzi",  "prèzzo", "pèzzo",  "pèzzi", "òlgo", "òlga", "òlge", "òlgi",  "nòve",
    "pórre",  "iósa",   "iósi",  "ióse",  "ióso",  "uósa",   "uósi",   "uóse",   "uóso",  "òglia", "òglie", "tòrio", "tòria",
    "èdro",   "èdri",   "èdra",  "èdre",  "òscia", "òscio",  "òsce",   "òsci",   "èco",   "èca",  "èchi", "èche", "ècano", "èma",  "èmi",
    "òbo",    "òba",    "òbi",   "pròva", "pròvo", "tròva",  "tròvo",  "tròvi",  "òto",   "òta",  "òti",  "òte",  "vóto",  "vóti", "èmpo",
    "èmpi",   "èmpio",  "vènga", "vèngo", "vèngano", "tènga", "tèngo",  "mèzza",  "mèzze", "plòso", "plòsa", "plòse", "plòsi", "cède", "cèdo",
    "cèda",   "cèdi",   "cèdono", "cèdere", "éva",   "évi",    "évo",    "évano",  "lèva",  "lèvi", "lèvo", "ièva", "ièvi",  "ièvo", "brèvi",
    "grèvi",  "pórsi",  "córso", "córsa", "córsi", "ógna",   "ógno",   "ógni",   "ógnano", "ógnino", "ónco", "ónca", "ónchi", "óncano",
    "gésse",  "césse",  "désse", "géste", "céste", "éna",    "éno",    "éni",    "énano", "scèna", "ièno", "ièna", "ièni",  "trèno", "trèni",
    "oscèno", "alièno", "òe",    "èa",    "èo",    "èe",     "òa",
    "ór",     "còr",    "suòr",  "ón",    "ièr",
    "uòlo",   "uòla",   "uòre",  "uòri",  "uògo",  "uòco",   "uòi",    "uòmo",   "ònica", "ònico", "fréddo",
};

// o and e are open before one consonant group and one of these: "lògica", "poètico", "cèntrica".
inline constexpr std::string_view opening_suffixes[] = {"ico", "ica", "ici", "iche", "ide", "idi", "ideo"};

} // namespace vowelway::diction
