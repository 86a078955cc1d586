// SPDX-License-Identifier: MIT
// The synthesiser of a page is whatever the page brings: `pronounce(word, language)`, given to the module,
// answers the IPA of a word as espeak-ng writes it, with stress marks.
#include "diction/synthesis/synthesiser.hpp"
#include "page/synthesiser.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <emscripten/emscripten.h>

#include <cstdlib>

// The IPA in memory of its own, or null when the page cannot tell.
// clang-format off
EM_JS(char*, vowelway_pronounce, (char const* word, std::size_t size, char const* language), {
    const ipa = Module["pronounce"] && Module["pronounce"](
        new TextDecoder().decode(HEAPU8.slice(word, word + size)), UTF8ToString(language));
    if (typeof ipa !== "string") return 0;
    const bytes = new TextEncoder().encode(ipa);
    const at = _malloc(bytes.length + 1);
    HEAPU8.set(bytes, at);
    HEAPU8[at + bytes.length] = 0;
    return at;
})
// clang-format on

namespace vowelway::page {

namespace {
Unanswered* collecting = nullptr; // the module has one thread
}

Unanswered::Unanswered() : outer_(collecting) { collecting = this; }
Unanswered::~Unanswered() { collecting = outer_; }
Unanswered* Unanswered::current() { return collecting; }

} // namespace vowelway::page

namespace vowelway::diction {

Synthesiser::Synthesiser() = default;
Synthesiser::~Synthesiser() = default;

Synthesiser& Synthesiser::instance() {
    static Synthesiser one;
    return one;
}

std::string Synthesiser::ipa(std::string_view word, Language language) {
    char* const said = vowelway_pronounce(word.data(), word.size(), std::string(tag(language)).c_str());
    if (auto* const unanswered = page::Unanswered::current(); !said && unanswered) {
        unanswered->add(word);
        return "a";
    }
    if (!said)
        throw InputError(worded("no rule says how \"{0}\" is pronounced", word),
                         worded("load the synthesiser, or add the word's pronunciation to the words"));
    std::string out = said;
    std::free(said);
    return out;
}

} // namespace vowelway::diction
