// SPDX-License-Identifier: MIT
// The letter-to-sound rules of the system's speech synthesiser, without any sound. Private to the layer.
#pragma once

#include "diction/words/letters.hpp"
#include "vowelway/diction/language.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::diction {

/// The synthesiser is one per process and not made for threads: calls are serialised.
class Synthesiser {
  public:
    /// Started at first use. Throws InputError when its data cannot be found.
    static Synthesiser& instance();

    /// IPA of a word (UTF-8), with stress marks. Texts are cut at 400 bytes.
    std::string ipa(std::string_view word, Language language);

    Synthesiser(Synthesiser const&) = delete;
    Synthesiser& operator=(Synthesiser const&) = delete;

  private:
    Synthesiser();
    ~Synthesiser();
    std::string voice_;
};

/// The word as the synthesiser is to read it: of a single letter the accent is left out ("ô" would be named,
/// not sounded).
std::string spoken(std::vector<Letter> const& word);

} // namespace vowelway::diction
