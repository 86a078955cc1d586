// SPDX-License-Identifier: MIT
// German stems whose vowel the synthesiser often mistakes inside compounds. Private to the layer.
// Source: Duden, Das Aussprachewoerterbuch (2015), from memory.
#pragma once

#include <string_view>

namespace vowelway::diction {

/// Letters of a stem (ä ö ü ß as A O U S) and the vowel of its first vowel letter. A stem that ends in "|" must not
/// be followed by the letter after it.
struct GermanStem {
    std::string_view letters, vowel;
    std::string_view unless_followed_by = {}; ///< letters that make it another stem
};

inline constexpr GermanStem german_stems[] = {
    // u, long
    {"fuS", "u"}, {"gruS", "u"}, {"muSe", "u"}, {"buch", "u", "t"}, {"tuch", "u"}, {"such", "u", "t"}, {"blut", "u"}, {"mut", "u", "tzs"},
    {"gut", "u", "tas"}, {"hut", "u", "tz"}, {"schul", "u", "dtz"}, {"ruf", "u", "f"}, {"tum", "u", "mpu"}, {"blum", "u"}, {"kuch", "u"}, {"fluch", "u", "t"},
    {"zug", "u"}, {"flug", "u"}, {"krug", "u"}, {"wut", "u"}, {"ruhm", "u"}, {"ufer", "u"}, {"jugend", "u"}, {"tugend", "u"}, {"stuf", "u"},
    {"natur", "a"}, {"besuch", "e"}, {"bruder", "u"}, {"ruder", "u"}, {"trug", "u"}, {"wuch", "u"}, {"kuh", "u"}, {"schuh", "u"},
    {"strass", "aː"}, {"fuss", "u"}, {"gruss", "u"}, {"gross", "o"}, {"stoss", "o"}, {"bloss", "o"}, {"sUss", "y"}, {"grUss", "y"}, {"fUss", "y"}, {"grOss", "ø"},
    // u, short
    {"sucht", "ʊ"}, {"kurs", "ʊ"}, {"guS", "ʊ"}, {"schuS", "ʊ"}, {"schluS", "ʊ"}, {"fluS", "ʊ"}, {"nuS", "ʊ"}, {"kuS", "ʊ"}, {"durst", "ʊ"},
    {"wurst", "ʊ"}, {"brust", "ʊ"}, {"lust", "ʊ"}, {"luft", "ʊ"}, {"schutz", "ʊ"}, {"umh", "ʊ"}, {"burg", "ʊ"},
    // ü, long
    {"grUn", "y", "d"}, {"bUch", "y", "s"}, {"tUch", "y", "t"}, {"blUt", "y"}, {"gUt", "y", "t"}, {"hUt", "y", "t"}, {"sUS", "y"}, {"fUS", "y"},
    {"grUS", "y"}, {"zUg", "y"}, {"tUr", "y", "km"}, {"drUs", "y"}, {"Ubel", "y"}, {"wUst", "y"}, {"trUb", "y"}, {"rUhm", "y"}, {"fUr", "y", "csdt"},
    {"brUder", "y"}, {"schUler", "y"}, {"kUhl", "y"}, {"gefUhl", "e"}, {"fUhl", "y"}, {"frUh", "y"}, {"blUh", "y"}, {"mUh", "y"}, {"lUg", "y"},
    // o, long and short
    {"rot", "o", "t"}, {"tot", "o", "t"}, {"not", "o", "t"}, {"boot", "o"}, {"hoch", "o", "z"}, {"groS", "o"}, {"schoS", "o"}, {"stoS", "o"},
    {"bloS", "o"}, {"trost", "o"}, {"kloster", "o"}, {"mond", "o"}, {"lob", "o"}, {"los", "o", "s"}, {"mikro", "i"}, {"wort", "ɔ"}, {"vor", "o", "rw"},
    // ö, long
    {"schOn", "ø"}, {"grOS", "ø"}, {"hOr", "ø", "cn"}, {"stOr", "ø"}, {"bOs", "ø"}, {"lOs", "ø", "s"}, {"rOt", "ø"}, {"nOt", "ø"}, {"hOch", "ø"},
    {"kOnig", "ø"}, {"trOst", "ø"}, {"klOster", "ø"}, {"vOg", "ø"}, {"krOn", "ø"}, {"strOm", "ø"}, {"mOg", "ø"}, {"tOn", "ø"}, {"trOs", "ø"},
    // e, long
    {"weg", "e", "g"}, {"erd", "e"}, {"pferd", "e"}, {"herd", "e"}, {"schwert", "e"}, {"wert", "e"}, {"werd", "e"}, {"erst", "e", "aieouUOA"}, {"leb", "e"},
    {"geb", "e", "rleuaoioOUA"}, {"heb", "e", "r"}, {"seh", "e"}, {"geh", "e", "iouaeOUAl"}, {"mehr", "e"}, {"lehr", "e"}, {"wehr", "e"}, {"kehr", "e"},
    {"nehm", "e"}, {"zehn", "e"}, {"sehn", "e"}, {"fehl", "e"}, {"segen", "e"}, {"regen", "e"}, {"regn", "e"}, {"schnee", "e"}, {"seel", "e"}, {"see", "e"},
    {"ehr", "e"}, {"ewig", "e"}, {"edel", "e"}, {"elend", "e"}, {"schwer", "e"}, {"ster", "ɐ", "abcdefghijklmnopqrtuvwxyz"},
    {"gegen", "e"}, {"leg", "e"}, {"lese", "e"}, {"gebung", "e"}, {"general", "e"}, {"beton", "e"}, {"element", "e"}, {"elefant", "e"},
    // e, short and open, where a compound hides it
    {"herz", "ɛ"}, {"werk", "ɛ"}, {"welt", "ɛ"}, {"test", "ɛ"}, {"fest", "ɛ"}, {"recht", "ɛ"}, {"berg", "ɛ"}, {"sterb", "ɛ"}, {"scherz", "ɛ"},
    {"setz", "ɛ"}, {"stell", "ɛ"}, {"steck", "ɛ"}, {"schmerz", "ɛ"}, {"feld", "ɛ"}, {"geld", "ɛ"}, {"held", "ɛ"}, {"hell", "ɛ"}, {"quell", "ɛ"},
    {"schenk", "ɛ"}, {"denk", "ɛ"}, {"engel", "ɛ"}, {"ende", "ɛ", "rnmst"}, {"entz", "ɛ"}, {"mensch", "ɛ"}, {"spende", "ɛ"}, {"zettel", "ɛ"}, {"kerker", "ɛ"},
    {"perl", "ɛ"}, {"kerz", "ɛ"}, {"merk", "ɛ"}, {"terr", "ɛ"}, {"germ", "ɛ"}, {"pers", "ɛ"}, {"perf", "ɛ"}, {"perm", "ɛ"}, {"perz", "ɛ"}, {"term", "ɛ"},
    {"enz", "ɛ"}, {"ekt", "ɛ"}, {"ensi", "ɛ"}, {"enti", "ɛ"}, {"ental", "ɛ"}, {"entar", "ɛ"}, {"ment", "ɛ"}, {"nerv", "ɛ"}, {"lerch", "ɛ"}, {"fels", "ɛ"},
    {"sender", "ɛ"}, {"expert", "ɛ"}, {"pert", "ɛ"}, {"erker", "ɛ"}, {"erfolg", "ɛ"}, {"ergi", "ɛ"}, {"ernte", "ɛ"}, {"kern", "ɛ"}, {"ext", "ɛ"},
    {"becken", "ɛ"}, {"ex", "ɛ"},
    // i
    {"vierz", "ɪ"}, {"viert", "ɪ"}, {"wider", "i"}, {"kritik", "i"},
};

} // namespace vowelway::diction
