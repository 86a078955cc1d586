// SPDX-License-Identifier: MIT
// English words with the broad a of the British standard: "fast", "dance". Private to the layer.
// Source: J. C. Wells, Accents of English (1982), the lexical set BATH; from memory.
#pragma once

#include <string_view>

namespace vowelway::diction {

/// The first a of `letters` is ɑ, unless one of the letters `unless` follows.
struct BroadA {
    std::string_view letters, unless = {};
};

inline constexpr BroadA broad_a[] = {
    {"after"},       {"craft"},       {"draft"},        {"raft"},        {"shaft"},       {"daft"},
    {"graft"},       {"haft"},        {"waft"},         {"fast"},        {"last", "i"},   {"past", "irey"},
    {"cast", "iro"}, {"vast"},        {"mast", "iou"},  {"blast", "o"},  {"nast", "iu"},  {"ghast"},
    {"bast", "ai"},  {"basket"},      {"casket"},       {"task"},        {"mask"},        {"flask"},
    {"bask"},        {"clasp"},       {"grasp"},        {"gasp"},        {"rasp"},        {"class", "i"},
    {"glass"},       {"grass"},       {"pass", "aieo"}, {"brass", "ie"}, {"path", "eo"},  {"bath", "ou"},
    {"lath", "e"},   {"chance"},      {"dance"},        {"lance", "t"},  {"glance"},      {"france"},
    {"trance"},      {"prance"},      {"advanc"},       {"enhanc"},      {"branch", "i"}, {"blanch"},
    {"avalanch"},    {"plant", "a"},  {"grant"},        {"chant", "e"},  {"slant"},       {"command"},
    {"demand"},      {"slander"},     {"example"},      {"sample"},      {"rather"},      {"father"},
    {"answer"},      {"advantag"},    {"disaster"},     {"plaster"},     {"staff"},       {"chaff"},
    {"quaff"},       {"graph", "io"}, {"can't"},        {"shan't"},      {"calf"},        {"half"},
    {"laugh"},       {"draught"},     {"dancin"},       {"glancin"},     {"lancin"},      {"entranc"},
    {"chanced"},     {"chancing"},    {"pranc"},        {"enchant"},     {"chanted"},     {"passing"},
    {"passed"},      {"passes"},      {"lasting"},      {"aunt"},
};

} // namespace vowelway::diction
