// SPDX-License-Identifier: MIT
// Languages whose spelling tells every vowel. Private to the layer.
#pragma once

#include "diction/words/rules.hpp"

namespace vowelway::diction {

/// Finnish, Hungarian, Czech, Polish: vowels by the spelling alone. Sources: Suomi, Toivanen & Ylitalo,
/// Finnish Sound Structure (2008); T. Szende, "Hungarian", and J. Dankovicova, "Czech", in the Handbook of
/// the IPA (1999); W. Jassem, "Polish", J. IPA 33 (2003); all from memory.
Sounds regular(Word const& word, Language language);

/// Russian: vowels by the spelling, by which of them is stressed as the synthesiser has it; weak vowels as in
/// the sung standard (o as a; e, я as ɪ). Source: D. Jones and D. Ward, The Phonetics of Russian (1969), from
/// memory.
Sounds russian(Word const& word);

} // namespace vowelway::diction
