// SPDX-License-Identifier: MIT
#include "diction/synthesiser.hpp"

#include "vowelway/core/error.hpp"

#include <espeak-ng/espeak_ng.h>
#include <espeak-ng/speak_lib.h>

#include <mutex>

namespace vowelway::diction {

namespace {
std::mutex in_use;

// The British voice, whose standard the neutral stage pronunciation starts from, is named "en".
std::string voice_name(Language language) { return language == Language::norwegian ? "nb" : std::string(tag(language)); }
} // namespace

Synthesiser& Synthesiser::instance() {
    static Synthesiser one;
    return one;
}

Synthesiser::Synthesiser() {
    // Retrieval mode opens no sound device; the flag keeps the library from ending the program.
    if (espeak_Initialize(AUDIO_OUTPUT_RETRIEVAL, 0, nullptr, espeakINITIALIZE_DONT_EXIT) < 0)
        throw InputError("the pronunciation data of espeak-ng cannot be found",
                         "install the package espeak-ng-data, or set ESPEAK_DATA_PATH to the folder that holds espeak-ng-data");
}

Synthesiser::~Synthesiser() { espeak_Terminate(); }

std::string Synthesiser::ipa(std::string_view word, Language language) {
    constexpr std::size_t longest = 400;
    std::lock_guard const lock(in_use);
    auto const voice = voice_name(language);
    if (voice != voice_) {
        if (espeak_ng_SetVoiceByName(voice.c_str()) != ENS_OK)
            throw InputError("espeak-ng has no voice for " + std::string(to_string(language)),
                             "install the whole espeak-ng-data, or type the vowels in a word list");
        voice_ = voice;
    }
    std::string const text(word.substr(0, longest));
    std::string out;
    void const* rest = text.c_str();
    constexpr int ipa_mode = 0x02;
    while (rest) {
        if (auto const* found = espeak_TextToPhonemes(&rest, espeakCHARS_UTF8, ipa_mode)) {
            if (!out.empty()) out += ' ';
            out += found;
        }
    }
    return out;
}

} // namespace vowelway::diction
