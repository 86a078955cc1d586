// SPDX-License-Identifier: MIT
// From written words to sung vowels: what is held on each syllable, and what passes before and after it.
// Rules, sources and accuracy: docs/diction.md.
// Threads: any number at once; the synthesiser, one for the process, takes words one at a time.
#pragma once

#include "vowelway/core/passage.hpp"
#include "vowelway/core/sung_word.hpp"
#include "vowelway/diction/language.hpp"
#include "vowelway/diction/word_list.hpp"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::diction {

/// Words that were read, so that a word is read once however often and by whatever function it is asked for.
/// Belongs to one set of the other options. Not for several threads at once.
class WordsRead {
  public:
    WordsRead();
    ~WordsRead();
    WordsRead(WordsRead const&) = delete;
    WordsRead& operator=(WordsRead const&) = delete;
    struct Kept;
    Kept& kept() { return *kept_; } ///< for the layer itself

  private:
    std::unique_ptr<Kept> kept_;
};

struct DictionOptions {
    std::optional<Language> language; ///< nothing: the passage's own, else guessed and said
    WordList words;                   ///< the teacher's pronunciations
    bool r_colour = false; ///< English: keep the r in the vowel (ɝ, ɚ, ɔ˞) instead of the neutral stage vowel
    WordsRead* read = nullptr; ///< nothing: every call reads its words anew
};

/// Every word of a text, in order; each piece between blanks that holds a letter or a digit is one word.
/// Texts up to 1 MiB; longer ones throw InputError. Bytes that are not UTF-8 throw it too.
std::vector<SungWord> transcribe(std::string_view text, Language language,
                                 DictionOptions const& options = {});

/// Fills SungNote::vowel of every note that has, or continues, a syllable. In order of precedence: IPA typed
/// for the note, the word list, the rules of the language, the synthesiser. Never throws for a text it cannot
/// match: such syllables get the most probable vowel, VowelOrigin::guessed and a remark. Sets
/// Passage::language and adds remarks for the language chosen and the words guessed.
void set_vowels(Passage& passage, DictionOptions const& options = {});

/// How the written syllables and the transcription of a passage agreed, after set_vowels.
struct Alignment {
    std::size_t syllables = 0; ///< written under notes, hummed and typed ones left out
    std::size_t certain = 0;   ///< of them, not guessed
};
Alignment alignment(Passage const& passage);

} // namespace vowelway::diction
