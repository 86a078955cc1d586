// SPDX-License-Identifier: MIT
// What a reader is told, in another language than English. The sentences stand in the sources in English,
// where they are said; a table of another language has its sentence for each (profiles/wordings,
// io/wording/read_wording.hpp). Without a table everything is English: no locale and no environment is ever
// looked at here.
#pragma once

#include <array>
#include <concepts>
#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace vowelway {

/// The sentences of one language, by the English ones.
struct Wording {
    std::string language; ///< its code: "de"
    std::map<std::string, std::string, std::less<>> sentences;
};

/// From now on everything is said in this language; what it lacks, in English. An empty one is English. Kept
/// to the end of the program, so a view that reworded() gave stays valid. Safe beside threads that speak;
/// what is half said may then be said in both.
void set_wording(Wording wording);

/// The code of the language that is spoken: "en" where none was set.
std::string_view wording_language();

/// Whether the places {0} .. {9} of both are the same, each in any order and any number.
bool same_places(std::string_view english, std::string_view other);

namespace detail {

/// Whether {0} to {count - 1} all stand in it, and no other.
consteval bool uses_places(std::string_view english, std::size_t count) {
    for (std::size_t n = 0; n < 10; ++n) {
        char const place[] = {'{', static_cast<char>('0' + n), '}', 0};
        if ((english.find(place) != std::string_view::npos) != (n < count)) return false;
    }
    return true;
}
void wrong_places(); // not constant: names the fault where a sentence does not compile

/// What is put into a sentence: a text or a whole number. Other numbers are written by who knows how finely.
class Piece {
  public:
    Piece(std::convertible_to<std::string_view> auto const& text) : text_(std::string_view(text)) {}
    Piece(std::integral auto number) : text_(std::to_string(number)) {}
    std::string const& text() const { return text_; }

  private:
    std::string text_;
};

std::string filled(std::string_view english, Piece const* pieces, std::size_t count);

} // namespace detail

/// An English sentence with `Count` places; it does not compile with others.
template <std::size_t Count> class Sentence {
  public:
    consteval Sentence(char const* english) : english_(english) {
        if (!detail::uses_places(english, Count)) detail::wrong_places();
    }
    constexpr std::string_view english() const { return english_; }

  private:
    std::string_view english_;
};

/// A sentence in the language that is spoken: worded("bar {0}, beat {1}", bar, beat).
template <class... Pieces> std::string worded(Sentence<sizeof...(Pieces)> english, Pieces const&... pieces) {
    std::array<detail::Piece, sizeof...(Pieces)> const list{detail::Piece(pieces)...};
    return detail::filled(english.english(), list.data(), list.size());
}

/// Marks an English text that reworded() will say later: names in tables and of kinds.
consteval std::string_view to_word(char const* english) { return english; }

/// A text in the language that is spoken; itself where the table does not know it.
std::string_view reworded(std::string_view english);

} // namespace vowelway
