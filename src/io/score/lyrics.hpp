// SPDX-License-Identifier: MIT
// What stands under a note, as syllables. Private to the library.
#pragma once

#include "vowelway/core/passage.hpp"

#include <optional>
#include <pugixml.hpp>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::io {

/// The name and the beginning of the ids of what we write into scores; nothing else is ever taken for ours.
inline constexpr std::string_view mark_name = "vowelway";

/// One <lyric>, read.
struct LyricText {
    std::vector<Syllable> syllables; ///< of the text; empty when it has no letter ("." or a lone "1.")
    std::vector<bool> typed_hyphen;  ///< parallel: the text ended in a hyphen typed by hand
    std::string raw;                 ///< the text as it stands, joined over elisions
    bool humming = false, laughing = false;
};

/// Reads a lyric: <elision> and, within a text, ‿ _ and blanks part syllables that share the note; verse
/// numbers in front ("1. ", "2.Der"), hyphens and extender lines typed by hand are taken off.
LyricText read_lyric(pugi::xml_node lyric);

/// "hm", "Mm", "mmm", "m": lips closed.
bool is_humming(std::string_view text);

/// The transcription without slashes or brackets if the text is IPA between them: "/a/", "[mi]".
std::optional<std::string> bracketed_ipa(std::string_view text);

/// Collects the texts of one lyric line and tells whether the line is phonetic.
class LineScript {
  public:
    void add(std::string_view text);
    /// True when every text is in slashes or brackets; or when all are made of IPA letters only and at least
    /// a third hold a letter that no spelling of the usual languages has.
    bool ipa() const;

  private:
    int texts_ = 0, bracketed_ = 0, ipa_only_ = 0, telling_ = 0;
};

} // namespace vowelway::io
