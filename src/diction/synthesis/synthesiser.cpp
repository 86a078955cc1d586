// SPDX-License-Identifier: MIT
#include "diction/synthesis/synthesiser.hpp"

#include "core/late_library.hpp"
#include "core/memory.hpp"
#include "core/utf8.hpp"
#include "diction/synthesis/recording.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <espeak-ng/espeak_ng.h>
#include <espeak-ng/speak_lib.h>

#include <mutex>

namespace vowelway::diction {

namespace {
std::mutex in_use;
Said* recorded = nullptr; // guarded by in_use

/// The functions that are used, loaded with the synthesiser: its libraries of sound devices cost a process
/// that needs no words a third of its start.
struct Espeak {
    decltype(&::espeak_ng_InitializePath) set_path;
    decltype(&::espeak_ng_Initialize) initialize;
    decltype(&::espeak_ng_Terminate) terminate;
    decltype(&::espeak_ng_SetVoiceByName) set_voice;
    decltype(&::espeak_TextToPhonemes) to_phonemes;
};

Espeak load() {
    require_memory(64); // without it the library ends the process
    LateLibrary const from("libespeak-ng.so.1", LateLibrary::from_package("libespeak-ng1"));
    Espeak e{};
    from.bind(e.set_path, "espeak_ng_InitializePath");
    from.bind(e.initialize, "espeak_ng_Initialize");
    from.bind(e.terminate, "espeak_ng_Terminate");
    from.bind(e.set_voice, "espeak_ng_SetVoiceByName");
    from.bind(e.to_phonemes, "espeak_TextToPhonemes");
    return e;
}

Espeak const& espeak() {
    static Espeak const functions = load();
    return functions;
}

// The voice named "en" is the British one: the neutral stage pronunciation starts from its standard.
std::string voice_name(Language language) {
    switch (language) {
    case Language::norwegian:
        return "nb";
    case Language::portuguese:
        return "pt-br";
    case Language::american_english:
        return "en-us";
    case Language::german_latin:
        return "la";
    case Language::church_slavonic: // numbers alone are asked
        return "ru";
    default:
        return std::string(tag(language));
    }
}

bool greek(Language language) { return language == Language::greek; }
bool cyrillic(Language language) {
    return language == Language::russian || language == Language::ukrainian ||
           language == Language::bulgarian;
}

// Letters of the language's own script, digits and apostrophes. Others make the library load a second
// language and read memory it has freed (seen with version 1.51).
std::string own_letters(std::string_view word, Language language) {
    std::string out;
    while (!word.empty()) {
        auto const c = utf8::eat(word);
        if (!c) {
            word.remove_prefix(1);
            continue;
        }
        bool const latin = (*c >= U'a' && *c <= U'z') || (*c >= 0xDF && *c <= 0x24F && *c != 0xF7);
        bool const own = greek(language)      ? *c >= 0x370 && *c < 0x400
                         : cyrillic(language) ? *c >= 0x400 && *c < 0x530
                                              : latin;
        if (own || *c == U'\'' || (*c >= U'0' && *c <= U'9')) out += utf8::encode(*c);
    }
    return out;
}

} // namespace

Recording::Recording(Said& into) {
    std::lock_guard const lock(in_use);
    recorded = &into;
}

Recording::~Recording() {
    std::lock_guard const lock(in_use);
    recorded = nullptr;
}

Synthesiser& Synthesiser::instance() {
    static Synthesiser one;
    return one;
}

Synthesiser::Synthesiser() {
    // Not espeak_Initialize: it prepares an output too, and that looks for the sound server and makes a
    // folder in the user's home whatever the mode.
    espeak().set_path(nullptr);
    if (espeak().initialize(nullptr) != ENS_OK)
        throw InputError(worded("the pronunciation data of espeak-ng cannot be found"),
                         worded("install the package espeak-ng-data, or set ESPEAK_DATA_PATH to the folder "
                                "that holds espeak-ng-data"));
}

Synthesiser::~Synthesiser() { espeak().terminate(); }

std::string Synthesiser::ipa(std::string_view word, Language language) {
    constexpr std::size_t longest = 400;
    std::lock_guard const lock(in_use);
    auto const voice = voice_name(language);
    if (voice != voice_) {
        if (espeak().set_voice(voice.c_str()) != ENS_OK)
            throw InputError(worded("espeak-ng has no voice for {0}", to_string(language)),
                             worded("install the whole espeak-ng-data, or type the vowels in a word list"));
        voice_ = voice;
    }
    auto const text = own_letters(word.substr(0, longest), language);
    std::string out;
    bool const letters = text.find_first_not_of('\'') != std::string::npos;
    void const* rest = letters ? text.c_str() : nullptr;
    constexpr int ipa_mode = 0x02;
    while (rest) {
        if (auto const* found = espeak().to_phonemes(&rest, espeakCHARS_UTF8, ipa_mode)) {
            if (!out.empty()) out += ' ';
            out += found;
        }
    }
    if (recorded) (*recorded)[std::string(tag(language)) + " " + std::string(word)] = out;
    return out;
}

} // namespace vowelway::diction
