// SPDX-License-Identifier: MIT
#include "io/score/lyrics.hpp"

#include "core/text.hpp"
#include "core/utf8.hpp"
#include "io/score/xml_source.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

using Syllabic = Syllable::Part;

constexpr char32_t undertie = U'‿', no_break = U'\u00A0', narrow_no_break = U'\u202F', en_dash = U'–';

bool parts_syllables(char32_t c) {
    return c == U' ' || c == U'_' || c == undertie || c == no_break || c == narrow_no_break || c == U'\t' ||
           c == U'\n' || c == U'\r';
}

bool is_hyphen(char32_t c) { return c == U'-' || c == U'\u2010' || c == U'\u2011'; }

/// Letters and digits; anything beyond ASCII that is not punctuation counts as a letter.
bool is_letter(char32_t c) {
    if (c < 0x80) return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    bool const sign = (c >= 0x80 && c <= 0xBF && c != U'ª' && c != U'º') || c == U'×' || c == U'÷';
    bool const punctuation = c >= 0x2000 && c <= 0x2BFF;
    bool const symbol =
        (c >= 0xE000 && c <= 0xF8FF) || (c >= 0x1D100 && c <= 0x1D1FF) || (c >= 0x3000 && c <= 0x303F);
    return !sign && !punctuation && !symbol;
}

std::u32string decode(std::string_view text) {
    std::u32string out;
    while (auto const c = utf8::eat(text)) out += *c;
    return out;
}

std::string encode(std::u32string_view text) {
    std::string out;
    for (char32_t c : text) out += utf8::encode(c);
    return out;
}

bool has_letter(std::u32string_view text) { return std::any_of(text.begin(), text.end(), is_letter); }

/// Takes "1. ", "2.", "3) " off the front; a number alone stays only if something else follows.
void drop_verse_number(std::u32string& text) {
    std::size_t i = 0;
    while (i < text.size() && parts_syllables(text[i])) ++i;
    auto const digits = i;
    while (i < text.size() && text[i] >= U'0' && text[i] <= U'9') ++i;
    if (i == digits || i - digits > 2 || i == text.size()) return;
    if (text[i] != U'.' && text[i] != U')' && text[i] != U':') return;
    ++i;
    if (i < text.size() && text[i] >= U'0' && text[i] <= U'9') return;
    while (i < text.size() && parts_syllables(text[i])) ++i;
    text.erase(0, i);
}

struct Piece {
    std::u32string text;
    Syllabic part = Syllabic::single;
    bool typed_hyphen = false;
};

/// The pieces of one <text> between blanks and ties; signs without a letter go with their neighbour.
std::vector<Piece> pieces_of(std::u32string const& text, Syllabic whole) {
    std::vector<Piece> out;
    std::u32string pending; // an opening sign waits for its word
    for (std::size_t i = 0; i <= text.size();) {
        auto end = i;
        while (end < text.size() && !parts_syllables(text[end])) ++end;
        std::u32string const word = text.substr(i, end - i);
        i = end + 1;
        if (word.empty()) continue;
        if (!has_letter(word)) {
            bool const dash = word.size() == 1 && (is_hyphen(word[0]) || word[0] == en_dash);
            if (dash && !out.empty() && is_hyphen(word[0]))
                out.back().typed_hyphen = true;
            else if (dash)
                continue;
            else if (out.empty())
                pending += word + U' ';
            else
                out.back().text += U' ' + word;
            continue;
        }
        out.push_back({pending + word, Syllabic::single, false});
        pending.clear();
    }
    for (std::size_t i = 0; i < out.size(); ++i) {
        bool const joined_before = i == 0 && (whole == Syllabic::middle || whole == Syllabic::end);
        bool const joined_after =
            i + 1 == out.size() && (whole == Syllabic::begin || whole == Syllabic::middle);
        out[i].part = joined_before && joined_after ? Syllabic::middle
                      : joined_before               ? Syllabic::end
                      : joined_after                ? Syllabic::begin
                                                    : Syllabic::single;
    }
    for (auto& piece : out) {
        auto& t = piece.text;
        while (t.size() > 1 && (is_hyphen(t.back()) || (t.back() == en_dash && is_letter(t[t.size() - 2])))) {
            t.pop_back();
            piece.typed_hyphen = true;
        }
        if (piece.typed_hyphen)
            piece.part = piece.part == Syllabic::single || piece.part == Syllabic::begin ? Syllabic::begin
                                                                                         : Syllabic::middle;
        if (t.size() > 1 && (is_hyphen(t.front()) || t.front() == en_dash) && is_letter(t[1])) {
            t.erase(0, 1);
            if (piece.part == Syllabic::single)
                piece.part = Syllabic::end;
            else if (piece.part == Syllabic::begin)
                piece.part = Syllabic::middle;
        }
    }
    return out;
}

Syllabic part_of(std::string_view syllabic) {
    return syllabic == "begin"    ? Syllabic::begin
           : syllabic == "middle" ? Syllabic::middle
           : syllabic == "end"    ? Syllabic::end
                                  : Syllabic::single;
}

/// Letters of the IPA that the spelling of no usual language of song has.
bool telling(char32_t c) {
    constexpr std::u32string_view letters =
        U"ɑɐɒɓʙɕɖɗəɘɚɛɜɝɞɟʄɡɠɢʛɥʜɨɪʝɭɬɫɮʟɱɯɰɲɳɴɵɸɹɺɻɽɾʀʁʂʃʈʉʊʋⱱʌɣɤʍʎʏʐʑʒʔʕʡʢθχˈˌːˑ";
    return letters.find(c) != std::u32string_view::npos;
}

bool ipa_letter(char32_t c) {
    constexpr std::u32string_view others = U"æœøðŋçβħ.ˑ‿ˈˌ()ː -ʰʲʷˠˤ˞|";
    return telling(c) || (c >= U'a' && c <= U'z') || others.find(c) != std::u32string_view::npos ||
           (c >= 0x300 && c <= 0x36F) || c == U'\u00E3' || c == U'\u00F5' ||
           c == U'\u1EBD'; // ã õ ẽ in one code
}

/// Some programs write the tie between two vowels as a text of its own, with a sign of a music font
/// (SMuFL 1.4: lyricsElisionNarrow, lyricsElision, lyricsElisionWide).
bool is_elision_sign(std::u32string_view text) {
    return text.size() == 1 && text.front() >= 0xE550 && text.front() <= 0xE552;
}

} // namespace

LyricText read_lyric(pugi::xml_node lyric) {
    LyricText out;
    out.humming = static_cast<bool>(lyric.child("humming"));
    out.laughing = static_cast<bool>(lyric.child("laughing"));
    struct Chunk {
        std::u32string text;
        std::optional<Syllabic> part;
    };
    std::vector<Chunk> chunks;
    std::optional<Syllabic> syllabic;
    bool elided = true;
    for (auto const& child : lyric.children()) {
        std::string_view const name = child.name();
        if (name == "syllabic")
            syllabic = part_of(trimmed(child));
        else if (name == "elision")
            elided = true;
        else if (name == "text") {
            auto text = decode(child.child_value());
            if (is_elision_sign(text)) {
                elided = true;
                continue;
            }
            if (elided || chunks.empty())
                chunks.push_back({std::move(text), syllabic});
            else
                chunks.back().text += text; // two <text> without <elision> are one syllable in two fonts
            elided = false;
            syllabic.reset();
        }
    }
    for (std::size_t i = 0; i < chunks.size(); ++i) {
        auto& chunk = chunks[i];
        if (i > 0) out.raw += "‿";
        out.raw += encode(chunk.text);
        if (i == 0) drop_verse_number(chunk.text);
        Syllabic part = chunk.part.value_or(Syllabic::single);
        // One <syllabic> for an elision of several texts tells of its outer ends.
        bool const only_first =
            chunks.size() > 1 &&
            std::none_of(chunks.begin() + 1, chunks.end(), [](Chunk const& c) { return c.part.has_value(); });
        if (only_first) {
            Syllabic const whole = chunks.front().part.value_or(Syllabic::single);
            bool const before = i == 0 && (whole == Syllabic::middle || whole == Syllabic::end);
            bool const after =
                i + 1 == chunks.size() && (whole == Syllabic::middle || whole == Syllabic::begin);
            part = before && after ? Syllabic::middle
                   : before        ? Syllabic::end
                   : after         ? Syllabic::begin
                                   : Syllabic::single;
        }
        for (auto& piece : pieces_of(chunk.text, part)) {
            out.syllables.push_back({encode(piece.text), piece.part});
            out.typed_hyphen.push_back(piece.typed_hyphen);
        }
    }
    return out;
}

bool is_humming(std::string_view text) {
    auto const letters = decode(text);
    std::u32string bare;
    for (char32_t c : letters) {
        if (c == U'\'' || c == U'’') return false; // m' before a vowel
        if (is_letter(c)) bare += c < 0x80 ? (c | 0x20) : c;
    }
    std::size_t i = !bare.empty() && bare[0] == U'h' ? 1 : 0;
    if (i == bare.size()) return false;
    return std::all_of(bare.begin() + static_cast<std::ptrdiff_t>(i), bare.end(),
                       [](char32_t c) { return c == U'm'; });
}

std::optional<std::string> bracketed_ipa(std::string_view text) {
    text = text::trim(text);
    if (text.size() < 3) return std::nullopt;
    bool const slashes = text.front() == '/' && text.back() == '/';
    bool const brackets = text.front() == '[' && text.back() == ']';
    if (!slashes && !brackets) return std::nullopt;
    auto const inside = text.substr(1, text.size() - 2);
    if (inside.find_first_of("/[]0123456789") != std::string_view::npos) return std::nullopt;
    return std::string(inside);
}

void LineScript::add(std::string_view text) {
    text = text::trim(text);
    if (text.empty()) return;
    ++texts_;
    if (bracketed_ipa(text)) ++bracketed_;
    auto const letters = decode(text);
    ipa_only_ += std::all_of(letters.begin(), letters.end(), ipa_letter) ? 1 : 0;
    telling_ += std::any_of(letters.begin(), letters.end(), telling) ? 1 : 0;
}

bool LineScript::ipa() const {
    if (texts_ == 0) return false;
    return bracketed_ == texts_ || (ipa_only_ == texts_ && 3 * telling_ >= texts_);
}

} // namespace vowelway::io
