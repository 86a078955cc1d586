// SPDX-License-Identifier: MIT
// The native synthesiser for the module under test: pronounce LANGUAGE WORD prints the IPA.
#include "diction/synthesis/synthesiser.hpp"
#include "vowelway/diction/language.hpp"

#include <cstdio>

int main(int count, char** arguments) {
    if (count != 3) return 2;
    auto const language = vowelway::diction::parse_language(arguments[1]);
    if (!language) return 2;
    std::fputs(vowelway::diction::Synthesiser::instance().ipa(arguments[2], *language).c_str(), stdout);
}
